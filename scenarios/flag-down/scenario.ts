import { type Scenario, usualScenario } from '../scenario.ts';

/** The flag is down and play goes on, six on six: one free shot. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'flag-down',
  shows: 'A flag-down chance: six defenders, no restart, and a shot that costs nothing.',
  play: 'quarry',
  scheme: 'settled-six',
  moment: (trace) => trace.events.find((event) => event.kind === 'shot')?.time,
};
