import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';

// The rules hold by path, and the known-bad files are exempt where they lie. So they are linted, with the
// repository's own rules, in a copy of its layout.
const copy = mkdtempSync(join(tmpdir(), 'sliderule-lint-'));
afterAll(() => rmSync(copy, { recursive: true }));

const badFiles = readdirSync('test/guards/bad/lint');
const clockOrDice = badFiles.filter((file) => /^(math|date|performance|global)/.test(file));
const badAppFiles = readdirSync('test/guards/bad/lint-app');
const fileOf = { 'src/engine': '', 'src/playbook': '', 'src/render': '', 'src/cli': '', test: '.spec' };

const errors = lintCopy();

function lintCopy(): readonly string[] {
  for (const path of ['biome.json', 'scripts/lint', 'package.json'])
    cpSync(path, join(copy, path), { recursive: true });
  for (const [folder, kind] of Object.entries(fileOf)) {
    for (const file of badFiles) cpSync(`test/guards/bad/lint/${file}`, join(copy, placed(folder, file, kind)));
    writeFileSync(join(copy, placed(folder, 'good.ts', kind)), 'export const most = Math.max(1, 2);\n');
  }
  cpSync('test/guards/bad/lint-app', join(copy, 'src/app'), { recursive: true });
  writeFileSync(join(copy, 'src/app/good.tsx'), 'export const Name = ({ name }: { name: string }) => <p>{name}</p>;\n');
  writeFileSync(join(copy, 'src/app/good.module.css'), '.name {\n  composes: text from "./text.css";\n}\n');
  const biome = resolve('node_modules/@biomejs/biome/bin/biome');
  const args = [biome, 'lint', '--reporter=github', '--max-diagnostics=none', '.'];
  const { stdout } = spawnSync(process.execPath, args, { cwd: copy, encoding: 'utf8' });
  return stdout.split('\n').filter((line) => line.startsWith('::error'));
}

function placed(folder: string, file: string, kind: string): string {
  return `${folder}/${file.replace(/[.]ts$/, `${kind}.ts`)}`;
}

function isStopped(path: string): boolean {
  return errors.some((line) => line.includes(`${path},line=`));
}

test.each(['src/engine', 'src/playbook', 'src/render'])('%s has no clock, console, timer or dice', (folder) => {
  expect(badFiles.filter((file) => !isStopped(`${folder}/${file}`))).toEqual([]);
});

test('a test reads no clock and rolls no dice', () => {
  const passed = clockOrDice.filter((file) => !isStopped(placed('test', file, '.spec')));
  expect(passed).toEqual(['global-this.ts']);
});

test('the command line may use them, under a kebab-case name', () => {
  expect(badFiles.filter((file) => isStopped(`src/cli/${file}`))).toEqual(['Capital-name.ts']);
});

test('the workbench can be read by ear, keeps the rules of its hooks, and names files as all do', () => {
  expect(badAppFiles.filter((file) => !isStopped(`src/app/${file}`))).toEqual([]);
});

test('a file without fault passes in every place', () => {
  for (const file of ['good.tsx', 'good.module.css']) expect(isStopped(`src/app/${file}`)).toBe(false);
  for (const [folder, kind] of Object.entries(fileOf)) expect(isStopped(placed(folder, 'good.ts', kind))).toBe(false);
});
