import {
  type ChanceModel,
  compileChance,
  createChanceState,
  type Matchup,
  recordTrace,
  runTrials,
  shotHeat,
  type Trace,
} from '../src/engine/index.ts';
import { ruleCodeOf } from '../src/playbook/index.ts';
import {
  drawnField,
  eventLine,
  type FieldMarkings,
  isMainEvent,
  joinLayers,
  sceneToSvg,
  type TraceNames,
  tempoChart,
  tempoChartScene,
  tempoOfTrace,
  traceNames,
  traceScene,
  watchField,
  watchScene,
  watchWords,
} from '../src/render/index.ts';
import { buildMatchup } from '../src/worker/index.ts';
import type { Scenario } from './scenario.ts';

/** A scenario played: its picture, and its story with rounded numbers. */
export interface PlayedScenario {
  readonly trial: number;
  readonly trace: Trace;
  readonly names: TraceNames;
  readonly svg: string;
  /** The same moment as a screen shows it, dark, with the reach of each stick and what a shot by the man at the first spot is worth. */
  readonly darkSvg: string;
  /** What of the play came about in this trial, over time. */
  readonly tempoSvg: string;
  /** Plain JSON: rounded, so that it is the same wherever the last digits differ. */
  readonly summary: unknown;
}

/** Trials searched for one that shows what the scenario is about. */
const searched = 500;
/** Trials counted for the summary. */
const counted = 200;

/** What the engine is given: also the bench's input. */
export function scenarioMatchup(scenario: Scenario): Matchup {
  const built = buildMatchup(scenario.playbook, scenario);
  if (built.kind === 'refused') throw new RangeError(`scenario ${scenario.id}: ${built.reason}`);
  return built.matchup;
}

/** Plays the first trial that shows what the scenario is about. Throws a RangeError when none of `searched` does. */
export function playScenario(scenario: Scenario): PlayedScenario {
  const matchup = scenarioMatchup(scenario);
  const model = compileChance(matchup, scenario.seed);
  for (let trial = 0; trial < searched; trial += 1) {
    const trace = recordTrace(model, trial);
    const moment = scenario.moment(trace);
    if (moment === undefined) continue;
    const names = traceNames(matchup);
    const field = drawnField(ruleCodeOf(scenario.playbook).markings);
    const tally = runTrials(model, createChanceState(model), 0, counted);
    return {
      trial,
      trace,
      names,
      svg: sceneToSvg(traceScene(trace, moment, names, field)),
      darkSvg: watchedSvg(model, { trace, moment, names, field }),
      tempoSvg: sceneToSvg(tempoChartScene(tempoChart(matchup.play, tempoOfTrace(matchup.play, trace)))),
      summary: {
        shows: scenario.shows,
        trial,
        moment: round(moment, 2),
        story: trace.events.filter(isMainEvent).map((event) => eventLine(event, trace, names)),
        of: counted,
        goals: tally.goals,
        shots: tally.shots,
        turnovers: tally.turnovers,
      },
    };
  }
  throw new RangeError(`scenario ${scenario.id}: none of ${searched} trials shows it`);
}

function watchedSvg(
  model: ChanceModel,
  shown: { readonly trace: Trace; readonly moment: number; readonly names: TraceNames; readonly field: FieldMarkings },
): string {
  const { trace, moment, names, field } = shown;
  const reach = model.matchup.defenders.map(({ stickReach }) => stickReach);
  const ground = watchField(field, { heat: shotHeat(model, 0) });
  const layers = [ground, watchScene(trace, moment, names, { reach, ground: ground.items })];
  return sceneToSvg(joinLayers(layers, watchWords(trace, moment, names)), 'dark');
}

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
