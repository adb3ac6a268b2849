import { describe, expect, it } from 'vitest';
import { demoPlaybook, ruleCodeOf } from '../../playbook/index.ts';
import { drawnField } from '../field-scene.ts';
import { type DrillStep, drillPictures } from './drill-picture.ts';
import { papers } from './page.ts';
import { practiceCautions } from './practice-cautions.ts';
import { type PartSheet, practicePart } from './practice-part.ts';
import { type PracticeRow, type PracticeSheet, practicePlan } from './practice-plan.ts';
import { expectReadable, textsOf, wordsOf } from './sheet-content.fixture.ts';

const field = drawnField(ruleCodeOf(demoPlaybook).markings);

const step: DrillStep = {
  men: [
    { spot: 'X', at: { x: 0, y: -6 } },
    { spot: 'TR', at: { x: 7, y: 14 } },
    { spot: 'C', at: { x: 0, y: 6 } },
  ],
  ball: 'X',
  actions: [
    { kind: 'carry', by: 'X', path: [{ x: 5, y: -4 }] },
    { kind: 'pass', by: 'X', to: 'TR', style: 'skip' },
    { kind: 'runIn', by: 'TR' },
  ],
  defenders: [
    { name: 'tr', at: { x: 4, y: 9 } },
    { name: 'c', at: { x: 0, y: 5 } },
  ],
};
const [scene] = drillPictures([step], field, 0.62, 0.72);

const row: PracticeRow = {
  from: '12:30',
  to: '15:00',
  title: '3 v 2: X skips to TR',
  measure: '2½ min, 6 reps',
  setUp: 'X, TR, C; X has the ball. The defense plays it as the two-three zone with a very long name of its own.',
  runs: ['X skips to TR, against Box-and-one zone ×4', 'X feeds WR, against Five-man rotation ×3'],
  points: [
    'Thrower: eyes on the goal first, then to the stick side.',
    'Receiver: stick up before the ball comes; shoot on the catch.',
  ],
  why: 'X skips to TR: 0.12 (0.11 to 0.13) goals a man-up if it is taken whenever it is there; the play makes 0.30 (0.27 to 0.33) in all.',
  note: '',
  scene: scene!,
};

function sheet(more: Partial<PracticeSheet> = {}): PracticeSheet {
  return {
    name: 'Tuesday',
    plays: '',
    team: 'Tamarack Harriers',
    level: '14U',
    day: '10 March 2026',
    turnout: '20 min, 14 players and a goalkeeper',
    six: 'First six: TR 4, TL 7, WR 11, WL 13, C 16, X 19',
    focus: 'X skips to TR; X feeds WR.',
    equipment: 'goal; balls, ten or more; water, first aid, AED.',
    rows: Array.from({ length: 8 }, () => ({ ...row, scene: null })),
    leftOut: ['No time: Part of the play (X to WR).'],
    paper: 'letter',
    made: '9 March 2026',
    ...more,
  };
}

describe('a practice plan', () => {
  it.each(['letter', 'a4'] as const)('of eight blocks stands on one page, and can be read (%s)', (paper) => {
    const plain = { ...row, setUp: 'Six at full speed, no defense, on the stopwatch.', runs: [], why: '', scene: null };
    const rows = Array.from({ length: 8 }, (_, at) => (at % 3 === 0 ? row : plain));
    const pages = practicePlan(sheet({ paper, rows }));
    expect(pages).toHaveLength(1);
    expect([pages[0]!.width, pages[0]!.height]).toEqual([papers[paper].width, papers[paper].height]);
    expectReadable(pages[0]!, 9);
  });

  it('is set in larger letters where there are fewer blocks', () => {
    const size = (count: number): number => {
      const rows = Array.from({ length: count }, () => row);
      return textsOf(practicePlan(sheet({ rows }))[0]!).find(({ text }) => text.includes('Bring'))!.size;
    };
    expect(size(3)).toBeGreaterThanOrEqual(11);
    expect(size(8)).toBeLessThan(size(3));
  });

  it('goes on overleaf with more, the cautions on each page', () => {
    const pages = practicePlan(sheet({ rows: Array.from({ length: 24 }, () => row) }), 7);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expectReadable(page, 9);
      expect(wordsOf(page)).toContain('ND049');
    }
    expect(wordsOf(pages.at(-1)!)).toContain(String(7 + pages.length - 1));
  });

  it('says what there is no time for', () => {
    expect(wordsOf(practicePlan(sheet())[0]!)).toContain('Not today. No time: Part of the play (X to WR).');
  });
});

describe('the page of a part', () => {
  const part = (count: number, more: Partial<PartSheet> = {}): PartSheet => ({
    title: '3 v 2: X skips to TR',
    about: 'Cut from Lantern, against Jump. 2½ min, 6 reps.',
    steps: drillPictures(
      Array.from({ length: count }, () => step),
      field,
      0.72,
      0.68,
    ).map((one) => ({
      scene: one,
      words: 'When X gets there: X skips to TR; TR steps in, ready to shoot.',
    })),
    sections: [
      { heading: 'Set up', lines: ['X, TR, C at their places; X has the ball. "Go" begins it.'] },
      { heading: 'Defense', lines: ['tr, c: where the crosses are, sticks up, each with his duty in Jump.'] },
      { heading: 'Say', lines: [...row.points] },
      { heading: 'Why', lines: [row.why, 'Its worth is that of the look in the whole play.'] },
    ],
    level: '14U',
    paper: 'letter',
    made: '9 March 2026',
    ...more,
  });
  it.each([1, 2, 3, 4, 5])('of %i steps has a picture for each, inside the margins and to be read', (count) => {
    for (const paper of ['letter', 'a4'] as const) {
      const page = practicePart(part(count, { paper }));
      expect(page.marks.filter(({ kind }) => kind === 'picture')).toHaveLength(count);
      expectReadable(page, 9);
      expect(wordsOf(page)).toContain('ND200');
    }
  });
  it('says when it cannot stand on one page', () => {
    expect(() => practicePart(part(40))).toThrow(RangeError);
  });
});

describe('pictures of a drill', () => {
  it('have one view, which holds every man of every step and is of the shape of its place', () => {
    const wide: DrillStep = { ...step, men: [...step.men, { spot: 'WL', at: { x: -16, y: 3 } }] };
    const scenes = drillPictures([step, wide], field, 1, 0.68);
    expect(scenes[0]!.view).toEqual(scenes[1]!.view);
    const { left, top, width, height } = scenes[0]!.view;
    expect(height / width).toBeCloseTo(0.68, 9);
    for (const { at } of wide.men) {
      expect(at.x > left && at.x < left + width).toBe(true);
      expect(at.y > top && at.y < top + height).toBe(true);
    }
  });
  it('name each defender, and draw a step in that has no place of its own toward the goal', () => {
    const names = scene!.items.flatMap((item) =>
      item.kind === 'text' && item.style === 'defenderText' ? [item.text] : [],
    );
    expect(names.sort()).toEqual(['c', 'tr']);
    expect(scene!.items.some(({ style }) => style === 'runHead')).toBe(true);
  });
});

describe('cautions', () => {
  it.each([
    ['8U', 'no body checks at 8U and below', true],
    ['10U', 'no body checks at 10U and below', true],
    ['12U', 'no body checks at 12U and below', false],
    ['14U', 'at 14U body checks only within 3 yards', false],
    ['highSchool', 'legal checks only', false],
  ] as const)('at %s', (level, contact, isNeverManUp) => {
    const words = practiceCautions(level)
      .map((one) => `${one.about}: ${one.words}`)
      .join(' ');
    expect(words).toContain(contact);
    expect(words.includes('no team is ever a man up')).toBe(isNeverManUp);
    for (const part of [
      'ND200',
      'ND049',
      'Nobody behind it',
      '30 minutes',
      'written clearance',
      'AED',
      'CPR',
      'licensed medical staff',
    ])
      expect(words).toContain(part);
  });
});
