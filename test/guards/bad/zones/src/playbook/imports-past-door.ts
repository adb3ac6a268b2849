export { inner } from '../engine/geometry/inner.ts';
