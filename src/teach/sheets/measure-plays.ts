import { defaultStopRule, estimateGoals, type Interval } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import {
  type Effort,
  type MatchupChoice,
  type MeasureOptions,
  measureMatchups,
  onePlayText,
  type TrialPool,
} from '../../worker/index.ts';
import type { SheetResult } from './sheet-content.ts';

/** Plays that are to be measured for pages, all against the same schemes. */
export interface PlaysAsked extends Omit<MatchupChoice, 'play' | 'scheme' | 'practised'> {
  readonly plays: readonly string[];
  readonly schemes: readonly string[];
  /** How often each scheme is met beside the others, in their order; all alike when absent. */
  readonly weights?: readonly number[];
  readonly seed: number;
  /** Man-ups against each scheme; as many as a page needs when absent. */
  readonly trials?: number;
}

export interface MeasuredPlay {
  readonly play: string;
  /** Over all the schemes by their weights. */
  readonly goals: Interval;
  readonly results: readonly SheetResult[];
}

export interface PlaysOptions extends MeasureOptions {
  /** Told what one play makes, as soon as it is known. */
  readonly onPlay?: (measured: MeasuredPlay) => void;
}

/** Enough for 0.03 either way by the odds of the shots that are taken: what a page says with two decimals. */
const usualTrials = 300;

function effortOf(trials: number): Effort {
  return { rule: { ...defaultStopRule, least: trials, most: trials, halfWidth: 0 }, watched: 0, looks: 0, perLook: 0 };
}

/** What plays make against schemes, one play after the other. Rejects with a `RefusedSetup` as any question to the threads. */
export async function measurePlays(
  pool: TrialPool,
  playbook: Playbook,
  { plays, schemes, weights, trials = usualTrials, ...choice }: PlaysAsked,
  options: PlaysOptions = {},
): Promise<readonly MeasuredPlay[]> {
  const measured: MeasuredPlay[] = [];
  for (const play of plays) {
    const setups = schemes.map((scheme) => ({
      ...choice,
      play,
      scheme,
      document: onePlayText(playbook, { ...choice, play, scheme }),
    }));
    const found = await measureMatchups(pool, setups, effortOf(trials), options);
    const one: MeasuredPlay = {
      play,
      goals: estimateGoals(
        found.map(({ tally }) => tally),
        weights,
      ),
      results: found.map(({ tally }, at) => ({
        scheme: schemes[at]!,
        goalsPerChance: estimateGoals([tally]),
        trials: tally.to - tally.from,
      })),
    };
    measured.push(one);
    options.onPlay?.(one);
  }
  return measured;
}
