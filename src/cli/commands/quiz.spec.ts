import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoPlaybook, demoText, parsePlaybook, type QuizEntry, serializePlaybook } from '../../playbook/index.ts';
import type { Quiz } from '../../render/index.ts';
import { runRecorded } from '../recorded-io.fixture.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'quiz-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const path = (name: string): string => join(folder, name);

/** The real program of the page is put into it; the test run builds it first. */
async function quiz(file: string, ...words: readonly string[]) {
  const ran = await runRecorded(['quiz', path(file), ...words]);
  return { ...ran, err: ran.err.replace(/\s+/g, ' ') };
}

const keptIn = (name: string): readonly QuizEntry[] =>
  parsePlaybook(readFileSync(path(name), 'utf8')).value?.quizzes ?? [];

/** A quiz whose code the page wrote: number 16, round 1. */
const entry: QuizEntry = {
  id: '8144',
  name: 'Lantern, the whole unit',
  play: 'lantern',
  questions: Array.from({ length: 10 }, (_, at) => ({ carrier: 'X', scheme: 'jump', right: `Feed C ${at}` })),
  results: [],
};
const code16 = 'Q814-40G0-8666-6227-24RZ';

describe('quiz', () => {
  it('writes a page under 300 kB, lists what it asks, and keeps it when asked to', async () => {
    const { code, out, err } = await quiz(
      'demo.json',
      '--play',
      'ferry',
      '--against',
      'jump',
      '--questions',
      '3',
      '--for',
      'p',
      '--keep',
      '--out',
      path('q.html'),
    );
    expect([err, code]).toEqual(['', 0]);
    const html = readFileSync(path('q.html'), 'utf8');
    expect(statSync(path('q.html')).size).toBeLessThan(300_000);
    const made = JSON.parse(/id="quiz">(.*)<\/script>/.exec(html)?.[1] ?? '') as Quiz;
    expect(made.questions.length).toBeGreaterThan(0);
    expect(made.questions.every(({ carrier }) => made.spots[carrier] === 'P')).toBe(true);
    expect(out).toContain(`quiz ${made.id}, 7 s a question`);
    expect(out).toMatch(/\b1 +P +Jump/);
    expect(keptIn('demo.json')).toMatchObject([{ id: made.id.toLowerCase(), play: 'ferry', spot: 'P', results: [] }]);
    // Everything else in the file is as it was.
    expect({ ...parsePlaybook(readFileSync(path('demo.json'), 'utf8')).value, quizzes: undefined }).toEqual({
      ...demoPlaybook,
      quizzes: undefined,
    });
  });

  it('prints who knows what, and keeps it only when asked to', async () => {
    writeFileSync(path('kept.json'), serializePlaybook({ ...demoPlaybook, quizzes: [entry] }));
    const read = await quiz('kept.json', '--load', code16);
    expect(read.code).toBe(0);
    expect(read.out).toContain('Lantern, the whole unit');
    expect(read.out).toMatch(/\n +16 +1 /);
    expect(read.out).toContain('Nothing was written');
    expect(read.out).toMatch(/Missed most: X against Jump/);
    expect(keptIn('kept.json')[0]?.results).toEqual([]);
    for (let times = 0; times < 2; times++) await quiz('kept.json', '--load', code16.toLowerCase(), '--keep');
    expect(keptIn('kept.json')[0]?.results.map(({ number, round }) => [number, round])).toEqual([[16, 1]]);
  });

  it.each([
    [[], 2, 'a quiz is that of one play: name one of lantern'],
    [['--play', 'lantern', '--out', 'quiz.pdf'], 2, 'invalid --out: quiz.pdf (expected a name that ends in .html)'],
    [
      ['--play', 'lantern', '--questions', '19', '--out', 'a.html'],
      2,
      'invalid --questions: 19 (expected a whole number from 1 to 18)',
    ],
    [['--play', 'lantern', '--for', 'Q', '--out', 'a.html'], 2, 'unknown spot after --for: Q (expected '],
    [['--play', 'lantern', '--load', code16], 2, 'name one thing to do'],
    [['--load', code16], 1, 'keeps no quiz 8144'],
    [['--load', code16.replace('Z', 'Y')], 1, '"Z" and not "Y"'],
    [['--load', 'no-such-result.json'], 2, 'there is no such file'],
  ])('is refused with a reason: %o', async (words, expected, reason) => {
    const { code, err, out } = await quiz('demo.json', ...words);
    expect(err).toContain(reason);
    expect(code).toBe(expected);
    expect(out).toBe('');
    expect(readFileSync(path('demo.json'), 'utf8')).toBe(demoText);
  });
});
