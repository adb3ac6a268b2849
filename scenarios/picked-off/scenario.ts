import { type Scenario, usualScenario } from '../scenario.ts';

/** The pass that man-down units steal most: a skip through a lane. */
export const scenario: Scenario = {
  ...usualScenario,
  id: 'picked-off',
  shows: 'A skip or feed that is picked off: who stood in the lane, and how many attackers are back.',
  play: 'lantern',
  scheme: 'jump',
  moment: (trace) => {
    const stolen = trace.events.find((event) => event.kind === 'intercepted');
    if (stolen === undefined) return undefined;
    const thrown = [...trace.events].reverse().find((event) => event.kind === 'pass' && event.time <= stolen.time);
    return thrown?.kind === 'pass' && thrown.style !== 'adjacent' ? stolen.time : undefined;
  },
};
