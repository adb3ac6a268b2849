export { inner as probe } from '../src/engine/geometry/inner.ts';
