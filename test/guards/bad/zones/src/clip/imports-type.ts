export type { Scene } from '../render/index.ts';
