import { describe, expect, test } from 'vitest';
import { isDay } from './check-practices.ts';
import { broken, check, type Loose } from './small-playbook.fixture.ts';

/** A plan without a fault, changed; the codes that a check of it gives, each with its place. */
function told(edit: (plan: Loose) => void): readonly string[] {
  const plan = {
    id: 'tuesday',
    name: 'Tuesday',
    date: '2026-03-10',
    minutes: 20,
    players: 14,
    plays: ['swing'],
    blocks: [
      { kind: 'talk', play: 'swing', minutes: 1.5 },
      { kind: 'keeper', minutes: 3 },
      { kind: 'live', play: 'swing', minutes: 6, reps: 6, scheme: 'box-zone', spots: ['WL', 'C'] },
    ],
  };
  edit(plan);
  const text = broken((doc) => {
    doc.practices = [plan];
  });
  return check(text).diagnostics.map(({ code, path }) => `${code} ${path}`);
}

describe('checkPractices', () => {
  test.each<[string, (plan: Loose) => void, readonly string[]]>([
    ['nothing wrong', () => undefined, []],
    ['a play that is gone', (plan) => (plan.plays = ['gone']), ['practice-play practices[0].plays[0]']],
    ['in a block', (plan) => (plan.blocks[0].play = 'gone'), ['practice-play practices[0].blocks[0].play']],
    [
      'a scheme nobody knows',
      (plan) => (plan.blocks[2].scheme = 'bax-zone'),
      ['practice-scheme practices[0].blocks[2].scheme'],
    ],
    ['an own scheme', (plan) => (plan.blocks[2].scheme = 'ours'), []],
    [
      'a spot of another set',
      (plan) => (plan.blocks[2].spots = ['WL', 'BR']),
      ['practice-spot practices[0].blocks[2].spots[1]'],
    ],
    ['a man twice', (plan) => (plan.blocks[2].spots = ['C', 'C']), ['practice-spot practices[0].blocks[2].spots[1]']],
    [
      'a run of no such look',
      (plan) => (plan.blocks[2].runs = [{ look: ['X', 'BR'], scheme: 'no', reps: 2 }]),
      ['practice-spot practices[0].blocks[2].runs[0].look[1]', 'practice-scheme practices[0].blocks[2].runs[0].scheme'],
    ],
    [
      'an empty goal',
      (plan) => {
        plan.keeper = false;
        plan.blocks = [{ kind: 'live', minutes: 4, note: 'Covered goal.' }];
      },
      [],
    ],
    ['too little time', (plan) => (plan.minutes = 10), ['practice-time practices[0].minutes']],
    ['nobody in the goal', (plan) => (plan.keeper = false), ['practice-keeper practices[0].blocks[1]']],
    ['no such day', (plan) => (plan.date = '2026-02-29'), ['practice-date practices[0].date']],
    ['no day at all', (plan) => (plan.date = '10 March'), ['field-form practices[0].date']],
    ['an unknown kind', (plan) => (plan.blocks[0].kind = 'sprint'), ['field-value practices[0].blocks[0].kind']],
  ])('%s', (_, edit, codes) => {
    expect(told(edit)).toEqual(codes);
  });

  test('an old plan stops no play from being tested', () => {
    const text = broken((doc) => {
      doc.practices = [{ id: 'old', name: 'Old', minutes: 5, players: 0, plays: ['gone'], blocks: [] }];
    });
    expect(check(text).value).toBeDefined();
  });
});

test.each([
  ['2024-02-29', true],
  ['2023-02-29', false],
  ['2000-02-29', true],
  ['1900-02-29', false],
  ['2026-04-31', false],
  ['2026-12-31', true],
])('isDay %s', (text, expected) => {
  expect(isDay(text)).toBe(expected);
});
