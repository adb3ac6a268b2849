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

  describe('where nothing that it teaches is worth reps', () => {
    const nothing = findingsOf(lantern, [0.004]);
    const plan = planned(nothing, { minutes: 12, players: 9 });
    test('it says so, and drills no look: the play is run as a whole against what is met', () => {
      expect(plan.leftOut?.[0]).toContain('No look that Lantern teaches is worth reps against these schemes');
      expect(plan.blocks.map(({ kind }) => kind)).not.toContain('part');
      const dummy = plan.blocks.find(({ kind }) => kind === 'dummy')!;
      expect(dummy.runs!.every(({ look }) => look === undefined)).toBe(true);
      expect(dummy.why).toContain('so it is run as a whole');
      expect(JSON.stringify(plan)).not.toContain('hardly ever there');
      expect(plan.notes).toBe('The whole play, and who has the ball finds who is open.');
    });
    test('it names the play that has more to drill', () => {
      const [look] = findingsOf(lantern, [0.12]).looks;
      const instead = { play: 'quarry', name: 'Quarry', goals: about(0.4, 0.02), look: look! };
      expect(planned({ ...nothing, instead }).leftOut?.[1]).toBe(
        'Quarry has more to drill against them: X skips to TR, 0.12 (0.11 to 0.13) goals a man-up; in all it makes 0.40 (0.38 to 0.42).',
      );
    });
    test('it names the play that makes more where none has more to drill', () => {
      const instead = { play: 'ferry', name: 'Ferry', goals: about(0.4, 0.02), look: null };
      expect(planned({ ...nothing, instead }).leftOut?.[1]).toBe(
        'Ferry makes more against them: 0.40 (0.38 to 0.42) goals a man-up.',
      );
    });
    test('what only opens beside it gets half of the reps at most, in words that say what is new', () => {
      const fresh = { ...nothing.looks[0]!, from: 'TR', to: 'TL', isTaught: false, carries: about(0.2, 0.01) };
      const { blocks, notes } = planned({ ...nothing, looks: [...nothing.looks, fresh] });
      const dummy = blocks.find(({ kind }) => kind === 'dummy')!;
      const ofNew = dummy.runs!.filter(({ look }) => look !== undefined).reduce((sum, { reps }) => sum + reps, 0);
      expect(ofNew).toBe(Math.floor(dummy.reps! / 2));
      expect(dummy.why).toContain("TL shoots off TR's pass: 0.20");
      expect(dummy.why).toContain('New is the shot: the play throws on.');
      expect(notes).toContain("TL shoots off TR's pass (new)");
    });
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

describe('the second session of a week', () => {
  const plan = planned(findingsOf(lantern, [0.12, 0, 0.04, 0.02, 0]), { session: 'second' });
  test('teaches nothing anew: the play once, then live and into situations', () => {
    expect(kinds(plan)).toMatch(/^skeleton keeper live/);
    expect(kinds(plan)).toMatch(/situation situation$/);
    expect(kinds(plan)).not.toMatch(/talk|walk/);
    const live = (one: ReturnType<typeof planned>): number => one.blocks.find(({ kind }) => kind === 'live')!.minutes;
    expect(live(plan)).toBeGreaterThan(live(planned(findingsOf(lantern, [0.12, 0, 0.04, 0.02, 0]))));
  });
});

describe('a goalkeeper who comes warm', () => {
  const plan = planned(findingsOf(lantern, [0.1]), { keeper: 'warm', minutes: 12 });
  test('takes no time of it, and it is said once that he is warm', () => {
    expect(kinds(plan)).not.toContain('keeper');
    const notes = plan.blocks.flatMap(({ note }) => note ?? []);
    expect(notes).toEqual(['The goalkeeper comes warm.']);
    expect(plan.blocks.find(({ note }) => note !== undefined)?.kind).toBe('dummy');
  });
});

describe('an opponent who plays one scheme nearly always', () => {
  const weights = { 'house-3-2': 0.93, 'box-and-one': 0.04, 'four-man': 0.02 };
  const findings = findingsOf(lantern, [0.12, 0, 0.04, 0.02, 0]);
  // What is seldom met carries most.
  const looks = findings.looks.map((look): LookWorth => {
    const [one] = look.against;
    const against = (scheme: keyof typeof weights, times: number): LookWorth['against'][0] => ({
      ...one,
      scheme,
      weight: weights[scheme],
      carries: times * one.carries,
    });
    return { ...look, against: [against('house-3-2', 1), against('four-man', 3), against('box-and-one', 0.5)] };
  });
  const runsOf = (kind: string, level: '14U' | 'college'): string => {
    const { blocks } = planned({ ...findings, looks }, { level });
    const runs = blocks.find((block) => block.kind === kind)?.runs ?? [];
    return runs.map(({ scheme, reps }) => `${scheme} ${reps}`).join(', ');
  };
  test('is met by it most, then by what is likelier and not by what the looks carry there', () => {
    expect(runsOf('live', '14U')).toMatch(/^house-3-2 \d+, box-and-one 1$/);
    expect(runsOf('live', 'college')).toMatch(/^house-3-2 \d+, box-and-one 1, four-man 1$/);
    expect(runsOf('dummy', 'college')).toMatch(/^house-3-2 \d+, house-3-2 \d+/);
    const live = planned({ ...findings, looks }).blocks.find(({ kind }) => kind === 'live');
    expect(live?.why).toBe('Each is shown once at least, and the likelier it is, the more: house-3-2 first.');
  });
});

test('a skeleton that shares its reps evenly does not say that each look is run once', () => {
  const plan = planned(findingsOf(lantern, [0.004]), { minutes: 40 });
  const skeleton = plan.blocks.find(({ kind }) => kind === 'skeleton')!;
  expect(Math.max(...skeleton.runs!.map(({ reps }) => reps))).toBeGreaterThan(1);
  expect(skeleton.why).toContain('as evenly as the reps go');
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
