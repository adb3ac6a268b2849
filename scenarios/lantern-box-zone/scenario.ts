import { type Scenario, usualScenario } from '../scenario.ts';

/** The script of a play runs to its shot and scores. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'lantern-box-zone',
  shows: 'A play of a 2-3-1 against the zone that most youth teams show first: the pass that leads to the goal.',
  play: 'lantern',
  scheme: 'box-zone',
  moment: (trace) => {
    const goal = trace.events.find((event) => event.kind === 'goal' && event.assistedBy >= 0);
    if (goal === undefined) return undefined;
    return [...trace.events].reverse().find((event) => event.kind === 'pass' && event.time < goal.time)?.time;
  },
};
