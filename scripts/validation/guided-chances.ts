import type { Guidance, Outcome } from '../../src/engine/index.ts';
import { expectKind, readsEffort, type TrialPool } from '../../src/worker/index.ts';
import { type DemoCarrier, heldSeed, setupOf } from './demo-carriers.ts';

/** What a man's held chances come to in the full simulation by one guidance, in their order. */
export async function playHeld(
  pool: TrialPool,
  { play, man, held }: DemoCarrier,
  guidance: Guidance,
): Promise<readonly Outcome[]> {
  const { horizon } = readsEffort(1);
  const answers = await pool.answer(
    held.map(({ scheme, chances }) => {
      const trials = chances.map(({ trial }) => trial);
      return { kind: 'guided', setup: setupOf(play, scheme, heldSeed), carrier: man, guidance, trials, horizon };
    }),
  );
  return answers.flatMap((answer) => expectKind(answer, 'guided').outcomes);
}
