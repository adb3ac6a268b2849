import type { Level, Trace } from '../src/engine/index.ts';
import { demoPlaybook, type Playbook } from '../src/playbook/index.ts';

/**
 * One worked case: gallery picture, snapshot, demo of the command line and input of the bench. Which trial is shown is
 * found, not fixed, so that a better model does not leave a scenario showing nothing.
 */
export interface Scenario {
  /** The folder's name. */
  readonly id: string;
  /** What it shows that no other does: one sentence. */
  readonly shows: string;
  readonly playbook: Playbook;
  readonly play: string;
  readonly scheme: string;
  readonly side: 'left' | 'right';
  /** Seconds. */
  readonly penalty: number;
  readonly level: Level | null;
  readonly seed: number;
  /** The moment to draw, s, in a trial that shows it; `undefined` for a trial that does not. */
  readonly moment: (trace: Trace) => number | undefined;
}

/** What scenarios share unless they say otherwise. */
export const usualScenario = {
  playbook: demoPlaybook,
  side: 'right',
  penalty: 30,
  level: null,
  seed: 1,
} as const;
