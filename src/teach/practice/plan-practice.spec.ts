import { describe, expect, test } from 'vitest';
import { about, demoPlays, findingsOf, wish } from './drawn-findings.fixture.ts';
import type { PlayFindings } from './find-practice.ts';
import type { LookWorth } from './look-worth.ts';
import { planPractice } from './plan-practice.ts';
import { drilledLooks } from './share-reps.ts';

const [lantern] = demoPlays as [(typeof demoPlays)[0]];

function planned(findings: PlayFindings, more: Parameters<typeof wish>[0] = {}) {
  return planPractice([{ play: lantern, findings }], wish(more));
}

const kinds = ({ blocks }: ReturnType<typeof planned>): string => blocks.map(({ kind }) => kind).join(' ');
const repsOf = ({ blocks }: ReturnType<typeof planned>, kind: string): string =>
  (blocks.find((block) => block.kind === kind)?.runs ?? [])
    .map(({ look, reps }) => `${look?.join('-')} ${reps}`)
    .join(', ');

describe('a plan of twenty minutes', () => {
  const plan = planned(findingsOf(lantern, [0.12, 0, 0.04, 0.02, 0]));
  test('goes from words to a live man-up, and the goalkeeper is warm before the first shot', () => {
    expect(kinds(plan)).toBe('talk walk skeleton keeper dummy part live situation');
    expect(plan.blocks.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(20);
  });
  test('gives most reps to what carries most', () => {
    expect(repsOf(plan, 'dummy')).toMatch(/^X-TR 4, X-WR [34]/);
    expect(repsOf(plan, 'skeleton')).toMatch(/^X-TR [23], WL 1, X-WR 1, X-C 1, TR-TL 1$/);
  });
  test('says why in numbers with their intervals', () => {
    const why = plan.blocks.find(({ kind }) => kind === 'part')?.why;
    expect(why).toContain('X skips to TR: 0.12 (0.11 to 0.13) goals a man-up');
    expect(why).toContain('the play makes 0.30 (0.27 to 0.33) in all');
    expect(why).toContain('80 % of the balls arrive');
  });
});

describe('what is worth practising', () => {
  test('a read that surely costs goals is run once and no more, and named', () => {
    const findings = findingsOf(lantern, [0.01, 0, 0.2, 0.01, 0]);
    const looks = findings.looks.map((look) => (look.to === 'WR' ? { ...look, decides: about(-0.05, 0.02) } : look));
    const plan = planned({ ...findings, looks });
    expect(repsOf(plan, 'skeleton')).toContain('X-WR 1');
    expect(repsOf(plan, 'dummy')).not.toContain('X-WR');
    expect(plan.leftOut?.join(' ')).toContain('it costs 0.05 (0.03 to 0.07) goals a man-up');
  });

  test('where nothing is ever there, it says so', () => {
    const plan = planned(findingsOf(lantern, []));
    expect(plan.leftOut?.[0]).toContain('Nothing that Lantern teaches is ever worth taking');
  });

  test.each<['14U' | 'college', boolean, number]>([
    ['14U', false, 1],
    ['14U', true, 0],
    ['college', false, 2],
    ['college', true, 1],
  ])('at %s, with a new read: %s, so many new looks', (level, hasRead, count) => {
    const findings = findingsOf(lantern, [0.1]);
    const fresh = (to: string): LookWorth => ({
      ...findings.looks[0]!,
      to,
      isTaught: false,
      carries: about(0.2, 0.01),
    });
    const read = lantern.reads[0]!;
    const newRead = hasRead ? { read, gain: about(0.04, 0.01) } : null;
    const all = { ...findings, looks: [...findings.looks, fresh('WL'), fresh('TL')], newRead };
    expect(drilledLooks(all, level).filter(({ isTaught }) => !isTaught)).toHaveLength(count);
  });
});

describe('who comes', () => {
  const findings = findingsOf(lantern, [0.1, 0.1, 0.1]);
  test.each<[number, string, string]>([
    [4, '', 'The whole play: it needs six, and 4 come.'],
    [5, 'keeper water part', 'The whole play: it needs six, and 5 come.'],
    [
      7,
      'talk walk skeleton keeper dummy part',
      'Live 6 v 5 and situations: they need eleven field players, and 7 come.',
    ],
    [11, 'talk walk skeleton keeper dummy part live situation', ''],
  ])('%s players', (players, expected, said) => {
    const plan = planned(findings, { players });
    expect([...new Set(kinds(plan).split(' '))].join(' ')).toBe(expected);
    expect(plan.leftOut?.join(' ')).toContain(said);
  });
  test('coaches stand in where a defense is short', () => {
    const { blocks } = planned(findings, { players: 8 });
    expect(blocks.find(({ kind }) => kind === 'dummy')?.note).toContain('Coaches stand in for 3');
  });
});

test('without a play there is no practice', () => {
  expect(() => planPractice([], wish())).toThrow(RangeError);
});
