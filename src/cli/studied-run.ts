import type { RunnerStudy, RunOrder } from '../engine/index.ts';

/** What one run of a man comes to by when he goes; no study when the play hardly ever comes to it. */
export interface StudiedRun {
  readonly order: RunOrder;
  readonly study: RunnerStudy | null;
}
