import { type Scenario, usualScenario } from '../scenario.ts';

/** The script of a play runs to its shot and scores. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'lantern-box-zone',
  shows:
    'A play of a 2-3-1 against the zone that most youth teams show first: the pass that leads to the goal, in the air.',
  play: 'lantern',
  scheme: 'box-zone',
  moment: ({ events }) => {
    const goal = events.find((event) => event.kind === 'goal' && event.assistedBy >= 0);
    if (goal === undefined) return undefined;
    const before = events.filter((event) => event.time < goal.time);
    const thrown = before.filter((event) => event.kind === 'pass').at(-1);
    const caught = before.filter((event) => event.kind === 'catch').at(-1);
    return thrown === undefined || caught === undefined ? undefined : (2 * caught.time + thrown.time) / 3;
  },
};
