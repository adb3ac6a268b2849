import { type Scenario, usualScenario } from '../scenario.ts';

/** Two men in the box: four defenders in a diamond. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'two-down',
  shows: 'Six against four: the tight box of a team with two men down, and who is left.',
  play: 'lantern',
  scheme: 'two-down',
  moment: (trace) => trace.events.find((event) => event.kind === 'shot')?.time,
};
