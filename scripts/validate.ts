// Writes docs/validation.md, theirs beside ours, and prints the summary: npm run validate [-- trials a pro column [man-ups a scheme for reads]]
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { ballGroup } from './validation/ball.ts';
import { causes } from './validation/causes.ts';
import { collegeGroup } from './validation/college.ts';
import { controlGroup } from './validation/control.ts';
import { laneGroup } from './validation/lane.ts';
import { motionGroup } from './validation/motion.ts';
import { causeFaults, validationPage } from './validation/page.ts';
import { proSeed } from './validation/pro-mix.ts';
import { reachGroup } from './validation/reach.ts';
import { readsGroups } from './validation/reads.ts';
import type { Group } from './validation/row.ts';
import { rulesGroup } from './validation/rules.ts';
import { schemesGroup } from './validation/schemes.ts';
import { shotGroup } from './validation/shot.ts';
import { statisticsGroup } from './validation/statistics.ts';
import { runPro, wholeChanceGroups } from './validation/whole-chance.ts';

/** Chances in each pro column unless told: intervals of about .012 for a share. */
const usualTrials = 6012;

/** Man-ups a scheme for the reads of each carrier, to learn from and to measure in, unless told; a multiple of nine, so that a scheme less is as many man-ups. */
const usualReadsTrials = 45;

const trials = Number(process.argv[2] ?? usualTrials);
const readsTrials = Number(process.argv[3] ?? usualReadsTrials);
const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
const groups: readonly Group[] = [
  motionGroup(),
  reachGroup(),
  ballGroup(),
  controlGroup(),
  laneGroup(),
  shotGroup(),
  statisticsGroup(),
  schemesGroup(),
  rulesGroup(),
  ...wholeChanceGroups(runPro(trials)),
  collegeGroup(),
  ...(await readsGroups(readsTrials)),
];
const how = `Written by \`npm run validate\`, not by hand: engine ${version}, seed ${proSeed}, ${trials} chances a pro column, ${readsTrials} man-ups a scheme for reads. Intervals are 95 %. "check" rows hold a model by itself against an outside value, "fitted" rows were fitted on, "held out" rows were kept out of every fit and search. What had to be true for a row to pass was written down before its first run. How well marks on film tell which scheme it is has a page of its own, [validation-scout.md](validation-scout.md), written by \`npm run validate:scout\`.`;
mkdirSync('docs', { recursive: true });
writeFileSync('docs/validation.md', validationPage(groups, causes, how));

for (const { title, rows } of groups) {
  const red = rows.filter((row) => !row.pass);
  console.log(`${title}: ${rows.length - red.length} of ${rows.length}`);
  for (const row of red) console.log(`  red ${row.id}: theirs ${row.theirs}, ours ${row.ours} (${row.test})`);
}
for (const fault of causeFaults(groups, causes)) console.log(fault);
