export { anything } from './utils.ts';
