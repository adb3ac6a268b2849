export { command } from '../cli/index.ts';
