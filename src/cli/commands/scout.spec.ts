import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoText } from '../../playbook/index.ts';
import { runRecorded } from '../recorded-io.fixture.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'scout-'));
  writeFileSync(path('demo.json'), demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const path = (name: string): string => join(folder, name);

async function scout(...words: readonly string[]) {
  const ran = await runRecorded(['scout', path('demo.json'), ...words]);
  return { ...ran, err: ran.err.replace(/\s+/g, ' '), words: ran.out.replace(/\s+/g, ' ') };
}

// A box against a 2-3-1, the ball with TR, then WR: corners, and a man on the crease man.
const marks = [
  {
    time: 4,
    holder: 'TR',
    by: 'film',
    defenders: [
      [5.5, 11],
      [-3, 10],
      [7.5, 4],
      [-4, 4],
      [0.7, 6.5],
    ],
  },
  {
    time: 6,
    holder: 'WR',
    by: 'film',
    defenders: [
      [5, 8.5],
      [-1, 8],
      [8.5, 3.4],
      [-2.5, 2.5],
      [1, 5.8],
    ],
  },
];

describe('scout', () => {
  it('says what was believed of an opponent before anything is seen', async () => {
    const { code, words, err } = await scout('--opponent', 'copper-falls');
    expect([err, code]).toEqual(['', 0]);
    expect(words).toContain('Nothing is marked or ticked yet');
    expect(words).toContain('Most likely the box-and-one zone, 69 %.');
  });

  it('reads marks, says how it goes by them, and why', async () => {
    writeFileSync(path('marks.json'), JSON.stringify({ marks }));
    const { code, words } = await scout('--play', 'lantern', '--marks', path('marks.json'));
    expect(code).toBe(0);
    expect(words).toContain('From 10 marks in 2 moments of 1 man-up.');
    expect(words).toMatch(/Most likely the .*Next is the/);
  });

  it('weighs ticks, and tells of one that the set cannot show', async () => {
    const { words } = await scout('--play', 'ferry', '--ticks', 'one-in-front,not:crease-glued');
    expect(words).toMatch(/Seen: ball on top: one man alone in the front row: [\d.]+ to 1 for .*, against /);
    expect(words).toContain('What was ticked: the ');
    expect(words).toContain('This set cannot show that, so it counts for nothing.');
  });

  it('says what to run to find out, and writes the sheet of our own man-down', async () => {
    const out = path('down.svg');
    const { words, code } = await scout('--play', 'lantern', '--probe', '--man-down', '--trials', '8', '--out', out);
    expect(code).toBe(0);
    expect(words).toContain('What to run to find out');
    expect(words).toContain('to know the scheme for certain would be worth');
    expect(words).toContain('Our own man-down, against a 2-3-1 whose ball goes round');
    expect(readFileSync(out, 'utf8')).toContain('Man-down: ');
  });

  it('gives the same as JSON', async () => {
    const { out } = await scout('--opponent', 'copper-falls', '--json');
    const found = JSON.parse(out) as { belief: { schemes: readonly { scheme: string; share: number }[] } };
    expect(found.belief.schemes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it.each([
    [['--opponent', 'nobody'], 2, 'unknown opponent after --opponent: nobody (expected copper-falls, northgate).'],
    [['--ticks', 'crease-glue'], 2, 'Did you mean crease-glued?'],
    [['--out', 'x.pdf'], 2, '--out is where the sheet of your own man-down goes: add --man-down.'],
    [['--play', 'lantern,ferry'], 2, 'invalid --play: lantern,ferry (expected one play, whose set is on the field).'],
  ])('ends in a sentence: %j', async (words, code, sentence) => {
    const ran = await scout(...words);
    expect(ran.err).toContain(sentence);
    expect(ran.code).toBe(code);
  });

  it.each([
    ['{}', 2, 'it holds no list of marks.'],
    ['not json', 2, 'it is no JSON document.'],
    ['[{ "time": 1, "by": "film", "defenders": [[0, 500]] }]', 1, 'marks.json: '],
  ])('ends in a sentence for marks like %s', async (text, code, sentence) => {
    writeFileSync(path('marks.json'), text);
    const ran = await scout('--marks', path('marks.json'));
    expect(ran.err).toContain(sentence);
    expect(ran.code).toBe(code);
  });
});
