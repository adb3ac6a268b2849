export { threads } from './node.ts';
