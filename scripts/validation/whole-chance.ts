import { type Estimate, wilsonInterval } from '../../src/engine/index.ts';
import type { ChanceLog, ShotLog } from './chance-log.ts';
import { hazards, isGoal, measure, type ProMeasures, share } from './pro-measures.ts';
import { playProMix } from './pro-mix.ts';
import { hazard, type ProColumn, type Published, pooled, sixtySeconds, thirtySeconds } from './pro-table.ts';
import { estimateWords, factRow, type Group, publishedWords, type Row, type RowUse, rangeRow } from './row.ts';

const source = 'MLL event logs 2011 to 2015, github.com/octonion/lacrosse';

/** Written down before the first run: how near each kind of row has to come. */
const tolerance = {
  /** Shots a chance. */
  shots: 0.1,
  /** Conversion of the held-out column. */
  heldOutConversion: 0.04,
  /** Seconds: quartiles of the first shot, mean and median of goals. */
  seconds: 3,
  /** Share of goals with an assist. */
  assisted: [0.75, 0.9],
  /** Shots from beyond 16 yd, and how many it takes to say. */
  far: [0.1, 0.18],
  fewestFar: 50,
} as const;

export interface ProRuns {
  readonly sixty: readonly ChanceLog[];
  readonly thirty: readonly ChanceLog[];
}

export function runPro(trials: number): ProRuns {
  const logs = (seconds: number) => playProMix(seconds, trials).flatMap((cell) => cell.logs);
  return { sixty: logs(60), thirty: logs(30) };
}

export function wholeChanceGroups({ sixty, thirty }: ProRuns): readonly Group[] {
  return [
    {
      id: 'pro-60',
      title: 'Whole chance, pro, 60 s',
      about: `${mixWords} ${sixty.length} chances. Rows marked fitted are the only ones that free parameters were fitted on (docs/models/chance-fit.md).`,
      rows: columnRows(sixtySeconds, measure(sixty), true),
    },
    {
      id: 'pro-30',
      title: 'Whole chance, pro, 30 s',
      about: `The same mix and the same draws with 30 s of penalty: ${thirty.length} chances. Held out whole.`,
      rows: columnRows(thirtySeconds, measure(thirty), false),
    },
    {
      id: 'pro-shots',
      title: 'Whole chance, pro, which shots',
      about:
        'Shots of both columns together. A scorekeeper gives an assist for the pass that made the shot; here every shot soon enough after a catch counts as assisted.',
      rows: shotRows([...sixty, ...thirty]),
    },
    {
      id: 'pro-hazard',
      title: 'Whole chance, pro, hazard by 5 s',
      about:
        "Shots and goals per second in 60 s penalties that nobody has scored in yet. A check of shape, not independent of the 60 s column; scorekeepers' clocks are a few seconds wrong, which smears theirs. The intervals are ours: Poisson, from their rates and number of penalties.",
      rows: hazardRows(sixty),
    },
  ];
}

const mixWords =
  'Men of the pro preset, sharp discipline, hands by "stick to the middle", poles and short sticks as each scheme says; four plays of our own (scripts/validation/pro-plays.ts) against each of the nine five-man schemes, all 36 cells weighed alike, because nobody counted who plays what. Their window starts 2 s after the whistle and both end with the penalty. The unit has the ball at the restart and a lost ball ends our chance; in the logs a unit may win it back.';

function columnRows(column: ProColumn, ours: ProMeasures, isFittedColumn: boolean): readonly Row[] {
  const { seconds, penalties } = column;
  const shots = Math.round(penalties * column.shotsPerChance.value);
  const onTarget = Math.round(shots * column.onTarget.value);
  const chancesWithShot = Math.round(penalties * column.anyShot.value);
  const fitted: RowUse = isFittedColumn ? 'fitted' : 'held out';
  const inside = (name: keyof ProMeasures & keyof ProColumn, what: string, use: RowUse, tries: number) =>
    insideRow({ id: `pro-${seconds}-${name}`, what, use }, column[name] as Published, ours[name] as Estimate, tries);
  const near = (id: string, what: string, use: RowUse, theirs: number, estimate: Estimate, allowed: number) =>
    rangeRow(
      { id: `pro-${seconds}-${id}`, what, source, use },
      publishedWords({ value: theirs }),
      estimate,
      theirs - allowed,
      theirs + allowed,
    );
  const conversion = isFittedColumn
    ? inside('conversion', 'conversion', fitted, penalties)
    : rangeRow(
        { id: 'pro-30-conversion', what: 'conversion', source, use: 'held out' },
        publishedWords(column.conversion),
        ours.conversion,
        column.conversion.value - tolerance.heldOutConversion,
        column.conversion.value + tolerance.heldOutConversion,
      );
  return [
    conversion,
    near('shots', 'shots a chance', fitted, column.shotsPerChance.value, ours.shotsPerChance, tolerance.shots),
    inside('anyShot', 'chances with a shot', fitted, penalties),
    inside('onTarget', 'shots on target', fitted, shots),
    inside('saves', 'saves of shots on target', fitted, onTarget),
    near(
      'first-median',
      'first shot, median, s',
      fitted,
      column.firstShot.median,
      ours.firstShotMedian,
      tolerance.seconds,
    ),
    near(
      'first-q1',
      'first shot, lower quartile, s',
      'held out',
      column.firstShot.q1,
      ours.firstShotQ1,
      tolerance.seconds,
    ),
    near(
      'first-q3',
      'first shot, upper quartile, s',
      'held out',
      column.firstShot.q3,
      ours.firstShotQ3,
      tolerance.seconds,
    ),
    inside('shooting', 'goals of shots', 'held out', shots),
    near(
      'goal-mean',
      'time of a goal, mean, s',
      'held out',
      column.goalTime.mean,
      ours.goalTimeMean,
      tolerance.seconds,
    ),
    near(
      'goal-median',
      'time of a goal, median, s',
      'held out',
      column.goalTime.median,
      ours.goalTimeMedian,
      tolerance.seconds,
    ),
    inside('firstShotGoal', 'goals of first shots', 'held out', chancesWithShot),
    inside('laterShotGoal', 'goals of later shots', 'held out', shots - chancesWithShot),
    rangeRow(
      { id: `pro-${seconds}-assisted`, what: 'goals with an assist', source, use: 'held out' },
      publishedWords(column.assistedGoals),
      ours.assistedGoals,
      ...tolerance.assisted,
    ),
    inside('groundBallBeforeShot', 'defense picks the ball up before any shot', 'held out', penalties),
  ];
}

/** Ours must lie in their 95 % interval: the published one, or Wilson's from the number it rests on. */
function insideRow(
  label: { id: string; what: string; use: RowUse },
  theirs: Published,
  ours: Estimate,
  tries: number,
): Row {
  const interval = wilsonInterval(Math.round(theirs.value * tries), tries);
  const { low = interval.low, high = interval.high } = theirs;
  return rangeRow({ ...label, source }, publishedWords(theirs), ours, low, high);
}

function shotRows(logs: readonly ChanceLog[]): readonly Row[] {
  const shots = logs.flatMap((log) => log.shots);
  const first = share(
    logs.flatMap((log) => log.shots.slice(0, 1)),
    isGoal,
  );
  const later = share(
    logs.flatMap((log) => log.shots.slice(1)),
    isGoal,
  );
  const goals = shots.filter(isGoal);
  return [
    rangeRow(
      { id: 'pooled-assisted', what: 'goals with an assist', source, use: 'held out' },
      publishedWords(pooled.assistedGoals),
      share(goals, (shot) => shot.assisted),
      ...tolerance.assisted,
    ),
    rangeRow(
      { id: 'pooled-first', what: 'goals of first shots', source, use: 'held out' },
      publishedWords(pooled.firstShotGoal),
      first,
      pooled.firstShotGoal.low,
      pooled.firstShotGoal.high,
    ),
    rangeRow(
      { id: 'pooled-later', what: 'goals of later shots', source, use: 'held out' },
      publishedWords(pooled.laterShotGoal),
      later,
      pooled.laterShotGoal.low,
      pooled.laterShotGoal.high,
    ),
    farRow(shots),
    assistRow(shots),
  ];
}

function farRow(shots: readonly ShotLog[]): Row {
  const far = shots.filter((shot) => shot.distance > 16);
  const label = {
    id: 'far-played',
    what: 'goals of shots from beyond 16 yd',
    source: 'Keegan, Lacrosse Magazine Apr 2016: pro 2015',
    use: 'held out',
  } as const;
  const [low, high] = tolerance.far;
  const row = rangeRow(label, '0.135', share(far, isGoal), low, high);
  const enough = far.length >= tolerance.fewestFar;
  const ours = far.length === 0 ? 'none of' : `${row.ours}, ${far.length} of`;
  return {
    ...row,
    ours: `${ours} ${shots.length} shots`,
    test: `${row.test}, from ${tolerance.fewestFar} shots or more`,
    pass: row.pass && enough,
  };
}

function assistRow(shots: readonly ShotLog[]): Row {
  const off = share(
    shots.filter((shot) => shot.assisted),
    isGoal,
  );
  const alone = share(
    shots.filter((shot) => !shot.assisted),
    isGoal,
  );
  return {
    ...factRow(
      {
        id: 'assisted-better',
        what: 'goals of shots off a pass, and of the others',
        source: 'Keegan, USA Lacrosse Magazine 2016 and MLL 2017: teams and stars',
        use: 'held out',
      },
      '0.279 to 0.476 and 0.235 to 0.281',
      `${estimateWords(off)} and ${estimateWords(alone)}`,
      off.mean > alone.mean,
    ),
    test: 'the first is more',
  };
}

function hazardRows(logs: readonly ChanceLog[]): readonly Row[] {
  const width = 60 / hazard.length;
  const ours = hazards(logs, 60, width);
  let alive: number = sixtySeconds.penalties;
  const rows = hazard.flatMap((theirs, bin) => {
    const exposed = alive * width;
    alive *= Math.exp(-theirs.goals * width);
    const from = bin * width;
    return (['shots', 'goals'] as const).map((kind) => {
      const spread = 1.96 * Math.sqrt(theirs[kind] / exposed);
      return rangeRow(
        { id: `hazard-${kind}-${from}`, what: `${kind} per s, ${from} to ${from + width} s`, source, use: 'held out' },
        theirs[kind].toFixed(3),
        ours[bin]![kind],
        Math.max(0, theirs[kind] - spread),
        theirs[kind] + spread,
      );
    });
  });
  return [
    peakRow(
      ours.map((bin) => bin.shots),
      width,
    ),
    ...rows,
  ];
}

function peakRow(shots: readonly number[], width: number): Row {
  const peak = shots.indexOf(Math.max(...shots)) * width;
  return {
    ...factRow(
      { id: 'hazard-peak', what: 'busiest bin of shots', source, use: 'held out' },
      '20 to 25 s',
      `${peak} to ${peak + width} s`,
      Math.abs(peak - 20) <= width,
    ),
    test: 'at most one bin off',
  };
}
