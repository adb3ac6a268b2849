import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { createWriteStream, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoText } from '../playbook/index.ts';

// The program as people run it: the bundle that the test run has built, with real worker threads.
const program = fileURLToPath(new URL('../../dist/sliderule.js', import.meta.url));

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sliderule-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function sliderule(...args: readonly string[]) {
  return spawnSync(process.execPath, [program, ...args], { cwd: folder, encoding: 'utf8' });
}

describe('the program', () => {
  const small = ['--play', 'lantern', '--against', 'box-zone,two-down', '--trials', '20', '--penalty', '30'];

  it('prints the same JSON for 1, 2 and 3 threads', () => {
    const runs = ['1', '2', '3'].map((threads) =>
      sliderule('test', 'demo.json', ...small, '--json', '--threads', threads),
    );
    expect(runs.map((one) => [one.status, one.stderr])).toEqual([0, 1, 2].map(() => [0, '']));
    expect(runs[1]?.stdout).toBe(runs[0]?.stdout);
    expect(runs[2]?.stdout).toBe(runs[0]?.stdout);
    const [play] = JSON.parse(runs[0]?.stdout ?? '');
    expect(play).toMatchObject({ play: 'lantern', side: 'right', penalty: 30, seed: 1 });
    expect(play.results.map((one: { scheme: string; trials: number }) => [one.scheme, one.trials])).toEqual([
      ['box-zone', 20],
      ['two-down', 20],
    ]);
  });

  it('prints the command that gives the same numbers, and it does', () => {
    const first = sliderule('test', 'demo.json', ...small, '--seed', '9');
    const again = /^Same numbers again: node \S+ (.*)$/m.exec(first.stdout)?.[1] ?? '';
    expect(again).toContain('--seed 9');
    expect(sliderule(...again.split(' ')).stdout).toBe(first.stdout);
  });

  it('tests against an opponent: each of its schemes, and the same again', () => {
    const opponents = [
      {
        id: 'them',
        name: 'Salt Marsh',
        schemes: { 'box-zone': 2, jump: 1 },
        discipline: { all: 'loose', tr: 'sharp' },
      },
    ];
    writeFileSync(join(folder, 'them.json'), JSON.stringify({ ...JSON.parse(demoText), opponents }));
    const asked = ['them.json', '--play', 'lantern', '--trials', '30', '--json'];
    const [first, again] = [1, 2].map(() => sliderule('test', ...asked, '--against', 'them').stdout);
    expect(again).toBe(first);
    const [play] = JSON.parse(first ?? '');
    const means = play.results.map((one: { goalsPerChance: { mean: number } }) => one.goalsPerChance.mean);
    expect(play.opponent.goalsPerChance.mean).toBeCloseTo((2 * means[0] + means[1]) / 3, 12);
    // The same schemes by men of the level's usual discipline are another matter.
    const [usual] = JSON.parse(sliderule('test', ...asked, '--against', 'box-zone,jump').stdout);
    expect(usual.results.map((one: { scheme: string }) => one.scheme)).toEqual(['box-zone', 'jump']);
    expect(usual.results).not.toEqual(play.results);
    expect(usual.inputHash).not.toBe(play.inputHash);
    expect(usual).not.toHaveProperty('opponent');
  });

  it('compares chosen plays against an opponent', () => {
    const { status, stdout } = sliderule(
      'compare',
      'them.json',
      '--play',
      'ferry',
      '--against',
      'them',
      '--trials',
      '10',
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/Salt Marsh by weight +\d\.\d\d ±\d\.\d\d$/m);
    expect(stdout).toContain('--play ferry --against them');
    expect(stdout).not.toContain('lantern');
  });

  it('compares plays', () => {
    const { status, stdout } = sliderule('compare', 'demo.json', '--against', 'three-down', '--trials', '10');
    expect(status).toBe(0);
    expect(stdout).toMatch(/Three down +\d\.\d\d ±\d\.\d\d +\d\.\d\d ±\d\.\d\d +\d\.\d\d ±\d\.\d\d/);
  });

  it('ends with the documented codes', () => {
    writeFileSync(join(folder, 'bad.json'), '{ "format": "sliderule-playbook" }');
    const codes = [
      ['check', 'demo.json'],
      ['check', 'bad.json'],
      ['test', 'bad.json'],
      ['check', 'none.json'],
    ];
    expect(codes.map((args) => sliderule(...args).status)).toEqual([0, 1, 1, 2]);
  });

  it('ends cleanly on Ctrl-C in the middle of long work', async () => {
    // The playbook comes through a pipe: when the program has opened it, it listens to signals as well.
    const pipe = join(folder, 'pipe');
    spawnSync('mkfifo', [pipe]);
    const child = spawn(process.execPath, [program, 'test', pipe, '--trials', '1000000'], { cwd: folder });
    let [out, err] = ['', ''];
    child.stdout.on('data', (text) => {
      out += text;
    });
    child.stderr.on('data', (text) => {
      err += text;
    });
    const writer = createWriteStream(pipe);
    await once(writer, 'open');
    writer.end(demoText);
    await once(writer, 'close');
    child.kill('SIGINT');
    const [code] = await once(child, 'close');
    expect([code, out, err]).toEqual([130, '', 'Stopped. Nothing was written.\n']);
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  it('says nothing when its reader goes away', async () => {
    const child = spawn(process.execPath, [program, 'schemes'], { cwd: folder });
    child.stdout.destroy();
    let err = '';
    child.stderr.on('data', (text) => {
      err += text;
    });
    const [code] = await once(child, 'close');
    expect([code, err]).toEqual([0, '']);
  });
});
