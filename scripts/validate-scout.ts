// Writes docs/validation-scout.md, how well marks tell which scheme it is: npm run validate:scout [-- films a matchup [trials seen beforehand]]
import { readFileSync, writeFileSync } from 'node:fs';
import { causeFaults, validationPage } from './validation/page.ts';
import { scoutGroups } from './validation/scout.ts';
import { scoutCauses } from './validation/scout-causes.ts';
import { filmSeed, seenSeed } from './validation/scout-films.ts';

const films = Number(process.argv[2] ?? 2);
const trials = Number(process.argv[3] ?? 60);
const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
const groups = scoutGroups(films, trials);
const how = `Written by \`npm run validate:scout\`, not by hand: engine ${version}, seeds ${filmSeed} and ${seenSeed}, ${films} man-ups of each play, scheme and unit, ${trials} of each seen beforehand. Intervals are 95 %. What had to be true for a row to pass was written down before its first run. The rest of what is held against the world: [validation.md](validation.md).`;
writeFileSync('docs/validation-scout.md', validationPage(groups, scoutCauses, how));
for (const { rows } of groups)
  for (const row of rows)
    console.log(`${row.pass ? 'green' : 'red'} ${row.id}: ${row.theirs} | ${row.ours} (${row.test})`);
for (const fault of causeFaults(groups, scoutCauses)) console.log(fault);
