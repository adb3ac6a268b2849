export { scene } from '../render/index.ts';
