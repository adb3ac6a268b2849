import { readFileSync } from 'node:fs';
import {
  compileChance,
  createChanceState,
  type DisciplineName,
  type Estimate,
  type Scheme,
  schemesFor,
  sortedQuantile,
} from '../../src/engine/index.ts';
import { type ChanceLog, logTrials } from './chance-log.ts';
import { isGoal, mean, share } from './pro-measures.ts';
import { proSeed } from './pro-mix.ts';
import { proPlays } from './pro-plays.ts';
import { estimateWords, type Group, type Row, rangeRow } from './row.ts';
import { usualMatchup } from './unit.ts';

const dataFile = 'data/ncaa-d1-men-2022-23.csv';
const source = `SCORE Network, NCAA Division I men 2022-23, 72 teams (${dataFile})`;

/** Chances in a block: about what a college team gets in a season (from memory, 35 to 55). */
const season = 45;
/** Of those, how many follow a technical foul: the pro logs hold 664 technical fouls to 1010 of one minute. */
const technical = 18;
/** Seasons of each cell. */
const seasons = 3;
const grades: readonly DisciplineName[] = ['sharp', 'ordinary', 'loose'];

/** One play against one scheme of one discipline, in seasons. */
interface Cell {
  readonly scheme: Scheme;
  readonly discipline: DisciplineName;
  readonly seasons: readonly (readonly ChanceLog[])[];
}

export function collegeGroup(): Group {
  const teams = readTeams();
  const cells = playCollege();
  const blocks = cells.flatMap((cell) => cell.seasons);
  const logs = blocks.flat();
  const conversions = blocks.map(conversionOf);
  const column = (name: string) => teams.map((team) => team[name]!).sort((a, b) => a - b);
  const theirs = column('man_up_offense_pctg');
  const stops = column('man_down_defence_pctg');
  const shooting = column('shot_pctg');
  return {
    id: 'college',
    title: 'Whole chance, college, spread',
    about: `Men of the college preset; the four plays against the nine five-man schemes in three grades of discipline, ${blocks.length} blocks of ${season} chances (${technical} of 30 s, the rest of 60 s), each like one team's season. Real teams differ in players too; here only play, scheme and discipline differ, so a narrower spread than theirs is expected and a wider one would be wrong. Held out whole. Their shooting is of all shots, most of them at even strength; at man-up pros shoot about .03 better than at even strength.`,
    rows: [
      betweenRow('college-mean', 'conversion, mean', theirs, mean(conversions), 0.29, 0.45, centre(theirs)),
      ...quantileRows('college-conversion', 'conversion', theirs, conversions),
      betweenRow('college-stop', 'stop rate, mean', stops, complement(mean(conversions)), 0.55, 0.71, centre(stops)),
      ...quantileRows('college-stop', 'stop rate of a scheme and discipline', stops, stopRates(cells)),
      betweenRow(
        'college-shooting',
        'goals of shots',
        shooting,
        share(
          logs.flatMap((log) => log.shots),
          isGoal,
        ),
        quantile(shooting, 0.1),
        quantile(shooting, 0.9),
        centre(shooting),
      ),
    ],
  };
}

function playCollege(): readonly Cell[] {
  const cells = schemesFor(5).flatMap((scheme) =>
    proPlays.flatMap((play) => grades.map((discipline) => ({ scheme, play, discipline }))),
  );
  return cells.map(({ scheme, play, discipline }) => {
    const run = (seconds: number, chances: number) => {
      const matchup = usualMatchup({ play, scheme, level: 'college', discipline, seconds });
      const model = compileChance(matchup, proSeed);
      return logTrials(model, createChanceState(model), seconds, 0, chances * seasons);
    };
    const short = run(30, technical);
    const long = run(60, season - technical);
    return {
      scheme,
      discipline,
      seasons: Array.from({ length: seasons }, (_, index) => [
        ...short.slice(index * technical, (index + 1) * technical),
        ...long.slice(index * (season - technical), (index + 1) * (season - technical)),
      ]),
    };
  });
}

function conversionOf(logs: readonly ChanceLog[]): number {
  return logs.filter((log) => log.shots.some(isGoal)).length / logs.length;
}

/** Seasons of a defense: one scheme in one discipline, a quarter of its chances against each play. */
function stopRates(cells: readonly Cell[]): readonly number[] {
  return schemesFor(5).flatMap((scheme) =>
    grades.flatMap((discipline) => {
      const own = cells
        .filter((cell) => cell.scheme === scheme && cell.discipline === discipline)
        .flatMap((cell) => cell.seasons);
      // Every fourth chance of four seasons: as many chances as a season has, all four plays in it.
      return Array.from({ length: seasons * proPlays.length }, (_, part) => {
        const logs = own.filter((_season, index) => index % seasons === part % seasons).flat();
        return 1 - conversionOf(logs.filter((_log, index) => index % proPlays.length === Math.floor(part / seasons)));
      });
    }),
  );
}

function complement({ mean: middle, low, high }: Estimate): Estimate {
  return { mean: 1 - middle, low: 1 - high, high: 1 - low };
}

function centre(values: readonly number[]): string {
  return estimateWords(mean(values));
}

function quantile(values: readonly number[], p: number): number {
  return (
    sortedQuantile(
      [...values].sort((a, b) => a - b),
      p,
    ) ?? Number.NaN
  );
}

function betweenRow(
  id: string,
  what: string,
  _theirs: readonly number[],
  ours: Estimate,
  low: number,
  high: number,
  words: string,
): Row {
  return rangeRow({ id, what, source, use: 'held out' }, words, ours, low, high);
}

/** The tenth and ninetieth percentiles; written down before the first run: within .08 of theirs. */
function quantileRows(id: string, what: string, theirs: readonly number[], ours: readonly number[]): readonly Row[] {
  return [10, 90].map((percent) => {
    const published = quantile(theirs, percent / 100);
    return rangeRow(
      { id: `${id}-p${percent}`, what: `${what}, ${percent}th percentile`, source, use: 'held out' },
      published.toFixed(3),
      quantile(ours, percent / 100),
      published - spreadTolerance,
      published + spreadTolerance,
    );
  });
}

const spreadTolerance = 0.08;

/** The rows of the data file by column name; lines that begin with # say where they come from. */
function readTeams(): readonly Readonly<Record<string, number>>[] {
  const [header = '', ...lines] = readFileSync(dataFile, 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'));
  const names = header.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((cell, index) => [names[index]!, Number(cell)])));
}
