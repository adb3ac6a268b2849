import {
  type ChanceSettings,
  compileChance,
  createChanceState,
  type Matchup,
  type Play,
  type Scheme,
  schemesFor,
} from '../../src/engine/index.ts';
import { type ChanceLog, logTrials } from './chance-log.ts';
import { proPlays } from './pro-plays.ts';
import { usualMatchup } from './unit.ts';

/** The logs of one play against one scheme. */
export interface Cell {
  readonly play: Play;
  readonly scheme: Scheme;
  readonly logs: readonly ChanceLog[];
}

/**
 * Share of penalties that are called in the unit's own half and begin with a free clear. Nobody counted it: half, because the field is
 * as long one way as the other. It was .35 first and moved to half after the share of chances with a shot had been seen, so it counts
 * as a number chosen with the table in sight. The same for both columns.
 */
export const clearedShare = 0.5;

export const proSeed = 20230408;

/**
 * The pro mix: each of the four plays against each of the nine five-man schemes, the same number of chances in each of the 36 cells.
 *
 * Equal weights because nobody counted who plays what: the trade says that rotations are commonest high up and that a box comes
 * first lower down, without numbers (common practice, no source). Rows by scheme stand beside the total, so anyone can weigh anew.
 * Both penalty lengths are played by the same mix, with the same draws.
 */
export function playProMix(seconds: number, trials: number, settings: Partial<ChanceSettings> = {}): readonly Cell[] {
  const schemes = schemesFor(5);
  const each = Math.ceil(trials / (proPlays.length * schemes.length));
  return schemes.flatMap((scheme, row) =>
    proPlays.map((play, column) => {
      // Trials of their own for every cell: the same ones would share their luck, and the mix would be far less sure than it says.
      const first = (row * proPlays.length + column) * each;
      const matchupOf = (left: number, start: 'restart' | 'clear' = 'restart') =>
        usualMatchup({ play, scheme, level: 'pro', discipline: 'sharp', seconds: left, start });
      const logsFrom = (start: 'restart' | 'clear', from: number, to: number) => {
        const model = compileChance(matchupOf(seconds, start), proSeed, settings);
        return logTrials(model, createChanceState(model), seconds, from, to);
      };
      const cleared = Math.round(each * clearedShare);
      const logs = [
        ...logsFrom('clear', first, first + cleared),
        ...logsFrom('restart', first + cleared, first + each),
      ];
      return { play, scheme, logs: winBack(logs, seconds, matchupOf, first, settings) };
    }),
  );
}

/**
 * Of the balls that are lost the man-down side does not get every one over midfield: .863 of clears succeed over 72 NCAA Division I
 * men's teams, 2022-23 (SCORE Network repository). The others come back, and what the unit then shoots counts in the same penalty.
 */
const wonBackShare = 1 - 0.863;
/** From the loss until the ball is back and brought in: a failed clear and a walk (assumption). Seconds. */
const wonBackSeconds = 10;
/** Less than this left is not played on. Seconds. */
const leastLeft = 5;

/** Play the rest of the penalty after the lost balls that were won back: one in `1 / wonBackShare` of them, in the order of the trials. */
function winBack(
  logs: readonly ChanceLog[],
  seconds: number,
  matchupOf: (left: number) => Matchup,
  first: number,
  settings: Partial<ChanceSettings>,
): readonly ChanceLog[] {
  let lost = 0;
  return logs.map((log, index) => {
    if (log.lost === null) return log;
    lost++;
    if (Math.floor(lost * wonBackShare) === Math.floor((lost - 1) * wonBackShare)) return log;
    const begins = log.lostAt + wonBackSeconds;
    const left = Math.floor(seconds - begins);
    if (left < leastLeft) return log;
    const model = compileChance(matchupOf(left), proSeed + 1, settings);
    const trial = first + index;
    const [rest] = logTrials(model, createChanceState(model), left, trial, trial + 1);
    return withRest(log, rest!, begins);
  });
}

function withRest(log: ChanceLog, rest: ChanceLog, begins: number): ChanceLog {
  return { ...log, shots: [...log.shots, ...rest.shots.map((shot) => ({ ...shot, time: shot.time + begins }))] };
}
