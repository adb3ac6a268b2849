import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { findZoneFaults, unreadFiles } from '../../scripts/check-zones.ts';

const faults = await findZoneFaults(resolve('test/guards/bad/zones'));
const config = createRequire(import.meta.url)('../../.dependency-cruiser.cjs');

test.each([
  ['engine-is-closed', 'src/engine/imports-package.ts'],
  ['engine-is-closed', 'src/engine/imports-node.ts'],
  ['engine-looks-down', 'src/engine/imports-upward.spec.ts'],
  ['playbook-is-closed', 'src/playbook/imports-package.ts'],
  ['playbook-looks-down', 'src/playbook/imports-upward.spec.ts'],
  ['render-is-closed', 'src/render/imports-package.ts'],
  ['render-looks-down', 'src/render/imports-upward.spec.ts'],
  ['worker-looks-down', 'src/worker/imports-render.ts'],
  ['teach-is-closed', 'src/teach/imports-package.ts'],
  ['teach-looks-down', 'src/teach/imports-upward.spec.ts'],
  ['press-looks-down', 'src/press/imports-worker.ts'],
  ['cli-looks-down', 'src/cli/imports-app.ts'],
  ['cli-looks-down', 'src/cli/imports-test.ts'],
  ['app-looks-down', 'src/app/imports-cli.ts'],
  ['app-runs-in-a-page', 'src/app/imports-node.ts'],
  ['clip-looks-down', 'src/clip/imports-cli.ts'],
  ['clip-stands-alone', 'src/clip/imports-code.ts'],
  ['one-door', 'src/playbook/imports-past-door.ts'],
  ['one-door', 'src/playbook/imports-type-past-door.ts'],
  ['one-door-from-outside', 'bench/past-door.ts'],
  ['worker-shared-is-closed', 'src/worker/imports-node-part.ts'],
  ['no-node-in-a-page', 'src/app/imports-worker-node.ts'],
  ['no-page-in-node', 'src/cli/imports-worker-browser.ts'],
  ['no-cycle', 'src/engine/cycle-a.ts'],
  ['no-dev-package-in-src', 'src/cli/imports-dev-package.ts'],
  ['no-test-in-what-ships', 'src/engine/imports-fixture.ts'],
  ['resolvable', 'src/engine/imports-nothing.ts'],
  ['telling-name', 'src/engine/imports-vague-name.ts'],
])('%s stops %s', (rule, file) => {
  expect(faults.violations.filter((line) => line.startsWith(`${rule}: ${file} -> `))).toHaveLength(1);
});

test('the program of a page may know the shape of a clip', () => {
  expect(faults.violations.filter((line) => line.includes('src/clip/imports-type.ts'))).toEqual([]);
});

test('every rule is broken by a known-bad file', () => {
  const broken = new Set(faults.violations.map((line) => line.split(':')[0]));
  expect([...broken].sort()).toEqual(config.forbidden.map((rule: { name: string }) => rule.name).sort());
});

test('a cruise that read nothing is a fault, not a pass', () => {
  expect(unreadFiles([], ['src/engine/index.ts'])).toEqual(['src/engine/index.ts']);
  expect(unreadFiles([], [])).toHaveLength(1);
  expect(unreadFiles(['src/engine/index.ts'], ['src/engine/index.ts'])).toEqual([]);
});
