// Prints the pro mix beside the pro timing table, both columns, and each scheme's own row:
// node scripts/run-ts.mjs scripts/validation/print-pro.ts [trials a column]
import type { Estimate } from '../../src/engine/index.ts';
import type { ChanceLog } from './chance-log.ts';
import { hazards, measure, type ProMeasures } from './pro-measures.ts';
import { type Cell, playProMix } from './pro-mix.ts';
import { hazard, type ProColumn, type Published, sixtySeconds, thirtySeconds } from './pro-table.ts';

const trials = Number(process.argv[2] ?? 1800);
for (const column of [sixtySeconds, thirtySeconds]) printColumn(column);

function printColumn(column: ProColumn): void {
  const began = process.cpuUsage().user;
  const cells = playProMix(column.seconds, trials);
  const cpu = (process.cpuUsage().user - began) / 1e3;
  const logs = cells.flatMap((cell) => cell.logs);
  const ours = measure(logs);
  console.log(`\n${column.seconds} s: ${logs.length} chances, ${(cpu / logs.length).toFixed(2)} ms each`);
  console.log(`${'row'.padEnd(24)}${'theirs'.padEnd(24)}ours`);
  for (const [name, theirs, found] of rows(column, ours)) {
    console.log(`${name.padEnd(24)}${words(theirs).padEnd(24)}${span(found)}`);
  }
  if (column.seconds === 60) printHazard(logs);
  console.log(`\n${schemeLine('by scheme', logs)}`);
  for (const [id, group] of grouped(cells, (cell) => cell.scheme.id)) console.log(schemeLine(id, group));
  for (const [id, group] of grouped(cells, (cell) => cell.play.id)) console.log(schemeLine(id, group));
}

function rows(column: ProColumn, ours: ProMeasures): readonly (readonly [string, Published, Estimate])[] {
  return [
    ['conversion', column.conversion, ours.conversion],
    ['shots per chance', column.shotsPerChance, ours.shotsPerChance],
    ['P(at least one shot)', column.anyShot, ours.anyShot],
    ['shooting', column.shooting, ours.shooting],
    ['saves / on target', column.saves, ours.saves],
    ['on target', column.onTarget, ours.onTarget],
    ['first shot q1', { value: column.firstShot.q1 }, ours.firstShotQ1],
    ['first shot median', { value: column.firstShot.median }, ours.firstShotMedian],
    ['first shot q3', { value: column.firstShot.q3 }, ours.firstShotQ3],
    ['goal time mean', { value: column.goalTime.mean }, ours.goalTimeMean],
    ['goal time median', { value: column.goalTime.median }, ours.goalTimeMedian],
    ['goal on first shot', column.firstShotGoal, ours.firstShotGoal],
    ['goal on later shot', column.laterShotGoal, ours.laterShotGoal],
    ['assisted goals', column.assistedGoals, ours.assistedGoals],
    ['lost on the ground first', column.groundBallBeforeShot, ours.groundBallBeforeShot],
  ];
}

function printHazard(logs: readonly ChanceLog[]): void {
  console.log('\nhazard /s      shots: theirs ours    goals: theirs ours');
  hazards(logs, 60, 5).forEach((bin, index) => {
    const theirs = hazard[index]!;
    console.log(
      `${String(bin.from).padStart(5)}-${bin.from + 5}`.padEnd(22) +
        `${theirs.shots.toFixed(3)} ${bin.shots.toFixed(3)}`.padEnd(23) +
        `${theirs.goals.toFixed(3)} ${bin.goals.toFixed(3)}`,
    );
  });
}

function schemeLine(name: string, logs: readonly ChanceLog[]): string {
  const ours = measure(logs);
  const shots = logs.flatMap((log) => log.shots);
  const passes = logs.reduce((sum, log) => sum + log.passes, 0);
  const caught = logs.reduce((sum, log) => sum + log.caught, 0);
  const odds = shots.reduce((sum, shot) => sum + shot.goalOdds, 0) / shots.length;
  const distance = shots.reduce((sum, shot) => sum + shot.distance, 0) / shots.length;
  const far = shots.filter((shot) => shot.distance > 16);
  const lost = Object.entries(
    countBy(
      logs.flatMap((log) => log.lost ?? []),
      (kind) => kind,
    ),
  );
  const cells = [
    name.padEnd(18),
    `conv ${ours.conversion.mean.toFixed(3)}`,
    `shots ${ours.shotsPerChance.mean.toFixed(2)}`,
    `P1 ${ours.anyShot.mean.toFixed(2)}`,
    `sh% ${ours.shooting.mean.toFixed(3)}`,
    `odds ${odds.toFixed(3)}`,
    `onT ${ours.onTarget.mean.toFixed(2)}`,
    `sv ${ours.saves.mean.toFixed(2)}`,
    `q ${[ours.firstShotQ1, ours.firstShotMedian, ours.firstShotQ3].map((q) => q.mean.toFixed(0)).join('/')}`,
    `ast ${ours.assistedGoals.mean.toFixed(2)}`,
    `dist ${distance.toFixed(1)}`,
    `far ${far.length}`,
    `pass ${(passes / logs.length).toFixed(1)}`,
    `comp ${(caught / passes).toFixed(3)}`,
    lost.map(([kind, count]) => `${kind} ${(count / logs.length).toFixed(2)}`).join(', '),
  ];
  return cells.join('  ');
}

function countBy<T>(items: readonly T[], key: (item: T) => string): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const item of items) counts[key(item)] = (counts[key(item)] ?? 0) + 1;
  return counts;
}

function grouped(cells: readonly Cell[], key: (cell: Cell) => string): ReadonlyMap<string, readonly ChanceLog[]> {
  const groups = new Map<string, ChanceLog[]>();
  for (const cell of cells) groups.set(key(cell), [...(groups.get(key(cell)) ?? []), ...cell.logs]);
  return groups;
}

function words({ value, low, high }: Published): string {
  return low === undefined ? `${value}` : `${value} (${low} to ${high})`;
}

function span({ mean, low, high }: Estimate): string {
  const digits = Math.abs(mean) >= 5 ? 1 : 3;
  return `${mean.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
}
