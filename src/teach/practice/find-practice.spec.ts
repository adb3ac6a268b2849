import { describe, expect, test } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { answerRequest, type TrialPool } from '../../worker/index.ts';
import { findPractice, type PracticeQuestion } from './find-practice.ts';
import { findSkill } from './find-skill.ts';
import { knownStands } from './known-stands.ts';
import { plannedFrom, withSkill } from './make-practice.ts';
import { practicePages } from './practice-pages.ts';

const asked: string[] = [];
const pool: TrialPool = {
  threads: 1,
  answer: async (requests, options) => {
    asked.push(...requests.map(({ kind }) => kind));
    return requests.map((request) => {
      options?.signal?.throwIfAborted();
      // What crosses between threads is a copy.
      const answer = structuredClone(answerRequest(structuredClone(request)));
      options?.onAnswer?.();
      return answer;
    });
  },
  close: async () => undefined,
};

const question: PracticeQuestion = {
  plays: ['quarry'],
  schemes: [
    { id: 'box-zone', weight: 3 },
    { id: 'five-man-rotation', weight: 1 },
  ],
  side: 'right',
  penalty: null,
  level: null,
  seed: 1,
};
const effort = { trials: 20, watched: 100, studied: 0 };
const wishes = { name: 'Tuesday', minutes: 20, players: 14, keeper: 'cold' } as const;

describe('what is worth practising in Quarry', () => {
  let planned = 0;
  let answered = 0;
  const found = findPractice(pool, demoPlaybook, question, effort, {
    onPlan: (requests) => {
      planned += requests;
    },
    onAnswer: () => {
      answered += 1;
    },
  });

  test('is told with progress: as much is answered as was planned', async () => {
    await found;
    expect(planned).toBeGreaterThan(0);
    expect(answered).toBe(planned);
    expect(asked).not.toContain('study');
  });

  test('what a look carries is its share x what arrives x goal odds, over the schemes by their weights', async () => {
    const [{ looks }] = (await found) as [Awaited<typeof found>[0]];
    const look = looks.find(({ from, to }) => from === 'WL' && to === 'CR')!;
    const mean = look.against.reduce((sum, { weight, carries }) => sum + weight * carries, 0);
    expect(look.carries.mean).toBeCloseTo(mean, 12);
    expect(look.against.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    for (const { carries, share, completion } of look.against)
      expect(carries).toBeLessThanOrEqual(share * completion + 1e-12);
    expect(look.carries.low).toBeGreaterThan(0);
    expect(look.carries.high).toBeGreaterThan(look.carries.mean);
    // The man of the crease is free in the five-man rotation, which leaves him to nobody; in a box he is somebody's.
    const rotation = look.against.find(({ scheme }) => scheme === 'five-man-rotation')!;
    const box = look.against.find(({ scheme }) => scheme === 'box-zone')!;
    expect(rotation.carries).toBeGreaterThan(box.carries);
  });

  test('how a look opens is known with five defenders of the scheme, and again for a plan that was kept', async () => {
    const findings = await found;
    const practice = plannedFrom(demoPlaybook, question, wishes, findings);
    const stands = await knownStands(pool, demoPlaybook, practice, question);
    expect(stands.length).toBeGreaterThan(0);
    for (const { from, to, stand } of stands) {
      const first = findings[0]!.stands.find((one) => one.from === from && one.to === to);
      expect(stand).toEqual(first!.stand);
      expect(new Set(stand.defenders.map(({ name }) => name)).size).toBe(5);
      expect([null, ...toEnginePlay(demoPlaybook, 'quarry').spots.map(({ id }) => id)]).toContain(stand.opener);
      expect([from, to]).not.toContain(stand.opener);
    }
  });

  test('comes on paper: the plan, then a page for each part, all with the cautions', async () => {
    const findings = await found;
    const practice = plannedFrom(demoPlaybook, question, wishes, findings);
    const stands = findings.flatMap((one) => one.stands);
    const { pages, title } = practicePages(demoPlaybook, practice, stands, {
      side: 'right',
      paper: 'letter',
      made: 'today',
    });
    expect(title).toBe('Tuesday: practice plan');
    const parts = practice.blocks.filter(({ kind }) => kind === 'part').length;
    expect(parts).toBeGreaterThan(0);
    expect(pages).toHaveLength(1 + parts);
    for (const page of pages) {
      const words = page.marks.map((mark) => (mark.kind === 'text' ? mark.text : '')).join(' ');
      for (const caution of ['ND200', 'ND049', 'lightning', 'Heat', 'AED', 'licensed medical staff', 'body checks'])
        expect(words).toContain(caution);
    }
    expect(pages[1]!.marks.filter(({ kind }) => kind === 'picture').length).toBeGreaterThan(1);
  });

  test('of a play that is gone nothing is drawn, and nothing fails', async () => {
    const practice = { ...plannedFrom(demoPlaybook, question, wishes, await found) };
    const gone = { ...demoPlaybook, plays: demoPlaybook.plays.filter(({ id }) => id !== 'quarry') };
    const { pages } = practicePages(gone, practice, [], { side: 'right', paper: 'a4', made: 'today' });
    expect(pages).toHaveLength(1);
    expect(await knownStands(pool, gone, practice, question)).toEqual([]);
  });

  test('stops when it is told to', async () => {
    const stop = new AbortController();
    stop.abort(new Error('enough'));
    await expect(findPractice(pool, demoPlaybook, question, effort, { signal: stop.signal })).rejects.toThrow('enough');
  });
});

test('which skill is worth most is told in a sentence with its numbers, or that it cannot be told', async () => {
  const words = await findSkill(pool, demoPlaybook, question, {}, 40);
  expect(words).toMatch(/^(The best thing for all six|Nothing that all six|No one thing is surely the best)/);
  const plan = withSkill(
    plannedFrom(demoPlaybook, question, wishes, await findPractice(pool, demoPlaybook, question, effort)),
    words,
  );
  expect(plan.notes).toContain(words);
});
