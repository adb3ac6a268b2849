export type Inner = typeof import('../engine/geometry/inner.ts').inner;
