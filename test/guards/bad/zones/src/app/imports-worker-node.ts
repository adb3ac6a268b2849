export { threads } from '../worker/node.ts';
