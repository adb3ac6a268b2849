export { cli } from '../cli/index.ts';
