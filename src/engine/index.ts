export type { Point } from './geometry/point.ts';
export * from './people/athlete.ts';
export * from './offense/play.ts';
export * from './defense/duty.ts';
export type * from './defense/scheme.ts';
export type * from './chance/trace.ts';
export type * from './trials/report.ts';
