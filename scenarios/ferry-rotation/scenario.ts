import { type Scenario, usualScenario } from '../scenario.ts';

/** A play that is simple enough for 12U against five men who move as one. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'ferry-rotation',
  shows: 'A simple play against a rotation of all five: every duty changes on every pass.',
  play: 'ferry',
  scheme: 'five-man-rotation',
  moment: (trace) => trace.events.filter((event) => event.kind === 'catch')[1]?.time,
};
