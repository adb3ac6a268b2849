export { worker } from '../worker/index.ts';
