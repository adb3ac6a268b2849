import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoText } from '../playbook/index.ts';
import { runRecorded } from './recorded-io.fixture.ts';
import { tableWidth } from './table.ts';

let folder = '';
let demo = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sliderule-'));
  demo = join(folder, 'demo.json');
  writeFileSync(demo, demoText);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const reads = (...words: readonly string[]) => runRecorded(['reads', demo, ...words]);

const few = ['--against', 'box-zone,jump', '--trials', '40'];

describe('reads of a man without the ball', () => {
  it('tell for each of his runs when to go and what that is worth', async () => {
    const { code, out } = await reads('--play', 'ferry', '--runner', 'p', ...few);
    expect(code).toBe(0);
    expect(out).toContain('Ferry, P without the ball, step "go".');
    expect(out).toContain('Ferry, P without the ball, step "across".');
    expect(out.match(/\nas the play has it +0\.\d\d \(0\.\d\d-0\.\d\d\)/g)).toHaveLength(2);
    expect(out.match(/\nP cuts .+/g)).toHaveLength(2);
    expect(out).toContain('--runner P --against box-zone,jump --card 1 --side right');
    const [report] = out.split('\n\nSame numbers again');
    for (const line of report!.split('\n')) expect(line.length).toBeLessThanOrEqual(tableWidth);
  });

  it('say the same to another program, every time', async () => {
    const words = ['--play', 'quarry', '--runner', 'WR', ...few, '--json'];
    const { out } = await reads(...words);
    const read = JSON.parse(out);
    expect(read).toMatchObject({ play: 'quarry', runner: 'WR', card: 1 });
    const [{ step, study }] = read.runs;
    expect(step).toBe('seep');
    expect(study.times).toHaveLength(21);
    expect(study.cards).toHaveLength(4);
    expect(study.schemes.map(({ scheme }: { scheme: string }) => scheme)).toEqual(['box-zone', 'jump']);
    expect((await reads(...words, '--threads', '1')).out).toBe(out);
  });

  it('say that a play hardly ever comes to a run', async () => {
    const { code, out } = await reads('--play', 'quarry', '--runner', 'WR', '--against', 'jump', '--trials', '10');
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toContain('the play hardly ever comes to this run, so there is nothing for WR to');
  });

  it.each([
    [['--play', 'lantern', '--runner', 'XX'], 'unknown spot: XX (expected'],
    [['--play', 'ferry', '--runner', 'P', '--card', '4'], 'invalid --card: 4'],
    [['--play', 'ferry', '--runner', 'P', '--carrier', 'P'], 'name one man'],
    [['--play', 'ferry', '--runner', 'X'], 'the play asks no run of X. Name one of'],
  ])('are refused in one sentence: %j', async (words, sentence) => {
    const { code, out, err } = await reads(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
  });
});
