import type { Trace } from '../../src/engine/index.ts';
import { type Scenario, usualScenario } from '../scenario.ts';

/** A set pick on the crease, in a play of a 2-2-2. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'quarry-pick',
  shows: 'A pick on the crease against a locked crease man: bodies meet and the picked man is held up.',
  play: 'quarry',
  scheme: 'four-man-rotation',
  level: 'college',
  // The beat after the pick's: the man whom it frees is on his way round it.
  moment: (trace) => beatTime(trace, 'curl', 0.8),
};

function beatTime(trace: Trace, beat: string, after: number): number | undefined {
  const started = trace.events.find((event) => event.kind === 'beat' && event.beat === beat);
  return started === undefined ? undefined : started.time + after;
}
