// The gate's first half. `npm run check` runs every step, `npm run check -- zones` only the named ones.
import { spawnSync } from 'node:child_process';
import { ensureInstalled, root } from './ensure-installed.mjs';

const steps = {
  types: {
    command: 'node_modules/typescript/bin/tsc -b --pretty',
    fix: 'correct the types above; one layer alone: npx tsc -b src/engine',
  },
  lint: {
    command: 'node_modules/@biomejs/biome/bin/biome lint --error-on-warnings .',
    fix: 'npx biome lint --write .   (what it leaves is for hand and head)',
  },
  zones: {
    command: 'scripts/run-ts.mjs scripts/check-zones.ts',
    fix: 'import downward and through index.ts; the rules and their reasons: .dependency-cruiser.cjs',
  },
  format: {
    command: 'node_modules/@biomejs/biome/bin/biome check --linter-enabled=false .',
    fix: 'npm run format',
  },
  docs: {
    command: 'scripts/run-ts.mjs scripts/check-docs.ts',
    fix: 'correct the page; when only a printed result changed: npm run docs:write',
  },
};
const fast = ['types', 'lint', 'format'];

const named = process.argv.slice(2);
const chosen = named.includes('--fast') ? fast : named.length > 0 ? named : Object.keys(steps);

ensureInstalled();
const failed = chosen.filter((name) => {
  const step = steps[name];
  if (step === undefined) {
    console.error(`unknown step: ${name} (expected ${Object.keys(steps).join(', ')})`);
    return true;
  }
  const run = spawnSync(process.execPath, step.command.split(' '), { cwd: root, stdio: 'inherit' });
  console.log(`${run.status === 0 ? 'ok    ' : 'FAILED'} ${name}`);
  return run.status !== 0;
});

for (const name of failed) if (steps[name]) console.error(`\n${name} failed. To fix: ${steps[name].fix}`);
process.exit(failed.length > 0 ? 1 : 0);
