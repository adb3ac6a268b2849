import { describe, expect, it } from 'vitest';
import type { OwnThrowReport } from '../engine/index.ts';
import { count, lookSentence, perChance, percent, withInterval } from '../render/index.ts';
import { compareText } from './compare-text.ts';
import { opponentWhole } from './opponent-whole.ts';
import { reportsJson } from './report-json.ts';
import { howToRead, isClearlyApart, reportText } from './report-text.ts';
import { sampleLook, sampleNames, sampleReport, sampleScheme, sampleTally } from './sample-report.fixture.ts';
import { tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

const report = sampleReport('far-corner', [
  sampleScheme('box-zone', 0.34, 0.03),
  sampleScheme('four-rotation-locked', 0.22, 0.03),
]);

function widest(text: string): number {
  return Math.max(...text.split('\n').map((line) => line.length));
}

describe('reportText', () => {
  const text = reportText(report, sampleNames);

  it('fits 80 columns', () => {
    expect(widest(text)).toBeLessThanOrEqual(tableWidth);
    expect(widest(howToRead([report]))).toBeLessThanOrEqual(tableWidth);
  });

  it('gives the interval beside the number and says what it means', () => {
    expect(text).toContain('0.34 (0.31-0.37)');
    expect(text.replace(/\s+/g, ' ')).toContain(
      'Far corner does best against Box and one, zone (0.34) and worst against Four-man rotation, locked crease (0.22), a gap that is more than luck.',
    );
  });

  it('names who left the look open, and who was left on purpose', () => {
    const flat = text.replace(/\s+/g, ' ');
    expect(text).toMatch(/skip TR to WL +62 % +4.1-4.9 +86 % +31 % +0.41 \(0.38-0.44\) +ll split \(0.4\)/);
    expect(flat).toContain('because ll is splitting two and 0.4 s late');
    expect(text).toMatch(/shot by P .* plan$/m);
  });

  it('says how often the play and its steps begin, the commonest step first, and which never do', () => {
    expect(text).toMatch(/zone +88 % {2}drag 88, freeze 61, low 40 +42 %/);
    const sample = sampleScheme('box-zone', 0.3, 0.03);
    const told = (begun: number, ...shares: readonly number[]): string => {
      const beats = shares.map((share, beat) => ({ id: `b${beat}`, share }));
      const play = { begun: { mean: begun, low: 0, high: 1 }, beats, playPasses: 0.3 };
      return reportText(sampleReport('p', [{ ...sample, play }]), sampleNames).replace(/\s+/g, ' ');
    };
    expect(told(0.9995, 0.9995, 0.001, 0)).toContain('b0 over 99, b1 under 1, b2 0');
    expect(told(0.5, 0.5, 0)).toContain('begins in 50 of 100 man-ups against Box and one, zone. Its passes');
    expect(told(0.5, 0.5, 0)).toContain('"b1" never began.');
    expect(told(0.5, 0.5, 0.1)).not.toContain('never began');
  });

  it('shows what became of the passes that the play asks for, whether they opened or not', () => {
    const sample = sampleScheme('box-zone', 0.34, 0.03);
    const own = (
      to: string,
      rest: Partial<OwnThrowReport> = {},
      reached = { reached: 0.4, share: 0, completion: 0.52 } as Partial<OwnThrowReport>,
    ): OwnThrowReport =>
      ({ kind: 'skip', from: 'X', to, asked: 'script', beat: 'low', ...reached, ...rest }) as OwnThrowReport;
    const told = (...throws: readonly OwnThrowReport[]): string =>
      reportText(sampleReport('p', [{ ...sample, own: throws }]), sampleNames);
    // Open somewhere, but not among the best: its own numbers; covered; never come to; a read of every step.
    const text = told(
      own('WR', { share: 0.2 }),
      own('TL'),
      own('C', { kind: 'feed' }, { reached: 0, share: 0, completion: null }),
    );
    expect(text).toMatch(/^\* skip X to WR +20 % +52 % +low 40 %$/m);
    expect(text).toMatch(/^\* skip X to TL +0 % +52 % +low 40 %$/m);
    expect(text).toMatch(/^\* feed X to C +- +low never$/m);
    expect(told(own('P', { kind: 'pass', asked: 'read', beat: null }))).toMatch(/^\* pass X to P .* read 40 %$/m);
    // Among the best looks it is marked, and not told twice.
    const marked = told(own('WL', { from: 'TR' }));
    expect(marked).toMatch(/^\* skip TR to WL +62 %/m);
    expect(marked.match(/skip TR to WL/g)).toHaveLength(2);
    expect(widest(text)).toBeLessThanOrEqual(tableWidth);
    expect(told(own('TL'), own('TL', { asked: 'read' })).match(/skip X to TL/g)).toHaveLength(1);
    // Plain passes round the set are left out when there is anything else, and there are at most three rows.
    const many = told(own('P', { kind: 'pass' }), ...['a', 'b', 'c', 'd'].map((to) => own(to)));
    expect(many).not.toContain('pass X to P');
    expect(many.match(/^\* /gm)).toHaveLength(3);
    expect(told(own('P', { kind: 'pass' }), own('Q', { kind: 'pass' }))).toMatch(/^\* pass X to Q/m);
  });

  it('shows no worth that rests on too few replays, and says on how many the others do', () => {
    const sample = sampleScheme('box-zone', 0.34, 0.03);
    const few = { ...sampleLook, value: 2, valueLow: 0.55, valueHigh: 7.29, replays: 1 };
    const told = (...looks: readonly (typeof sampleLook)[]): string =>
      reportText(sampleReport('p', [{ ...sample, looks }]), sampleNames);
    expect(told(few)).toMatch(/skip TR to WL +62 % +4.1-4.9 +86 % +31 % +few +ll split/);
    expect(told(few)).not.toContain('2.00');
    expect(told(few).replace(/\s+/g, ' ')).toContain('It was taken too few times to say what it is worth.');
    // A worth that is known goes before one that is not.
    expect(told(few, { ...sampleLook, from: 'P', value: 0.1 })).toContain('look first for the skip P to WL');
    const how = howToRead([sampleReport('p', [{ ...sample, looks: [few, sampleLook] }])]).replace(/\s+/g, ' ');
    expect(how).toContain('of the 200 man-ups watched for looks');
    expect(how).toContain('at most 50 replays');
  });

  it('lists the three commonest losses, largest first', () => {
    expect(text).toMatch(/zone +saved 20 %, picked off 12 %,.*\n? *dropped 5 %/);
  });

  it('is honest when the gap may be luck', () => {
    const close = sampleReport('p', [
      sampleScheme('box-zone', 0.34, 0.1),
      sampleScheme('four-rotation-locked', 0.3, 0.1),
    ]);
    expect(reportText(close, sampleNames).replace(/\s+/g, ' ')).toContain('that gap may be luck');
  });

  it('stands without looks, without shots and with one scheme', () => {
    const bare = { ...sampleScheme('box-zone', 0, 0), looks: [], firstShot: null };
    const alone = reportText(sampleReport('p', [bare]), sampleNames);
    expect(alone).toContain('none');
    expect(alone).toContain('No look came open often enough');
    expect(alone).not.toContain('NaN');
    expect(widest(alone)).toBeLessThanOrEqual(tableWidth);
  });

  it('fits with the longest names that a file may hold', () => {
    const long = { play: 'Long name '.repeat(8).trim(), schemes: { 'box-zone': 'Longer name '.repeat(7).trim() } };
    expect(widest(reportText(report, long).split('\n').slice(2).join('\n'))).toBeLessThanOrEqual(tableWidth);
  });
});

describe('compareText', () => {
  const other = sampleReport('wheel', [
    sampleScheme('box-zone', 0.2, 0.03),
    sampleScheme('four-rotation-locked', 0.23, 0.03),
  ]);
  // With the same luck the first play scores wherever the second one does, and sometimes more: that is clear.
  const often = sampleTally(Array.from({ length: 100 }, (_, trial) => (trial % 3 === 0 ? 1 : 0)));
  const seldom = sampleTally(Array.from({ length: 100 }, (_, trial) => (trial % 6 === 0 ? 1 : 0)));
  const played = [
    { report, tallies: [often, often] },
    { report: other, tallies: [seldom, often] },
  ];

  it('says what to call, and where plays are not told apart', () => {
    const text = compareText(played, [sampleNames, { ...sampleNames, play: 'Wheel' }]);
    expect(text).toContain('0.34 ±0.03');
    const flat = text.replace(/\s+/g, ' ');
    expect(flat).toContain('Call Far corner against Box and one, zone.');
    expect(flat).toContain(
      'No play is clearly best against Four-man rotation, locked crease: there the gaps may be luck, and more --trials would tell.',
    );
    // What is told apart is not called luck.
    const apart = [
      { report, tallies: [often, seldom] },
      { report: other, tallies: [seldom, often] },
    ];
    expect(compareText(apart, [sampleNames, { ...sampleNames, play: 'Wheel' }])).not.toContain('may be luck');
    expect(widest(text)).toBeLessThanOrEqual(tableWidth);
  });

  it('compares the trials that both plays have', () => {
    const shorter = { report: other, tallies: [sampleTally([...seldom.goals_byTrial].slice(0, 90)), often] };
    const text = compareText([played[0]!, shorter], [sampleNames, sampleNames]);
    expect(text.replace(/\s+/g, ' ')).toContain('Call Far corner against Box and one, zone.');
  });

  it('puts many plays into tables below one another', () => {
    const many = Array.from({ length: 9 }, (_, index) => ({
      report: { ...report, play: `a-play-with-a-long-name-${index}` },
      tallies: [often, often],
    }));
    const text = compareText(
      many,
      many.map(() => sampleNames),
    );
    expect(text.match(/goals a chance/g)).toHaveLength(3);
    expect(widest(text)).toBeLessThanOrEqual(tableWidth);
  });
});

describe('a play against an opponent', () => {
  const them = { id: 'them', name: 'Salt Marsh', schemes: { 'box-zone': 3, 'four-rotation-locked': 1 } };
  const tallies = [sampleTally([1, 0, 0, 1, 1, 0]), sampleTally([1, 1, 0, 0, 0, 0])];
  const whole = opponentWhole(them, report, tallies);

  it('weighs its schemes: 3 x 0.34 and 1 x 0.22 out of 4', () => {
    expect(whole.shares).toEqual([0.75, 0.25]);
    expect(whole.goalsPerChance.mean).toBeCloseTo(0.31, 12);
    expect(whole.discipline).toBe('discipline as usual at the level');
  });

  it('takes the spread of trials that share their luck', () => {
    // Trial by trial 0.75 a + 0.25 b: 1, 0.25, 0, 0.75, 0.75, 0. Sample sd 0.43060, Student t(5) 2.57058.
    const half = (2.57058 * 0.4306) / Math.sqrt(6);
    expect(whole.goalsPerChance.high - whole.goalsPerChance.mean).toBeCloseTo(half, 3);
  });

  it('is a row of the table, with the shares behind the names', () => {
    const text = reportText(report, sampleNames, whole);
    expect(text).toMatch(/Box and one, zone, 75 %/);
    expect(text.replace(/\s+/g, ' ')).toMatch(/Salt Marsh as a whole 0\.31 \(/);
    expect(widest(text)).toBeLessThanOrEqual(tableWidth);
  });

  it('is the last row of a comparison', () => {
    const text = compareText([{ report, tallies, whole }], [sampleNames]);
    expect(text).toMatch(/Salt Marsh by weight +0\.31 ±/);
    expect(text).not.toContain('mean of all');
  });

  it('stands in the JSON', () => {
    const [play] = JSON.parse(reportsJson([{ report, whole }]));
    expect(Object.keys(play.opponent)).toEqual([
      'id',
      'shares',
      'goalsPerChance',
      'shotsPerChance',
      'turnoversPerChance',
    ]);
  });
});

describe('reportsJson', () => {
  it('has the documented keys, in order, and no others', () => {
    const [play] = JSON.parse(reportsJson([{ report }])) as [Record<string, unknown>];
    expect(Object.keys(play)).toEqual(['engine', 'seed', 'inputHash', 'play', 'side', 'penalty', 'results']);
    const [result] = play.results as [Record<string, unknown>];
    expect(Object.keys(result)).toEqual([
      'scheme',
      'trials',
      'goalsPerChance',
      'shotsPerChance',
      'turnoversPerChance',
      'firstShot',
      'play',
      'watched',
      'looks',
      'own',
      'back',
    ]);
    expect(Object.keys(result.goalsPerChance as object)).toEqual(['mean', 'low', 'high']);
    expect(Object.keys(result.firstShot as object)).toEqual(['q1', 'median', 'q3']);
    const { play: run } = result as { play: Record<string, unknown> };
    expect(Object.keys(run)).toEqual(['begun', 'beats', 'playPasses']);
    expect(run.beats).toContainEqual({ id: 'low', share: 0.4 });
    const [look] = result.looks as [Record<string, unknown>];
    expect(Object.keys(look)).toEqual([
      'kind',
      'from',
      'to',
      'share',
      'opens',
      'closes',
      'completion',
      'shotValue',
      'value',
      'leftBy',
      'valueLow',
      'valueHigh',
      'replays',
    ]);
    expect(Object.keys(look.leftBy as object)).toEqual(['defender', 'duty', 'lateBy']);
  });
});

describe('words and numbers', () => {
  it('says a look in a sentence', () => {
    expect(lookSentence('the box', { ...sampleLook, kind: 'shot', to: 'TR' })).toBe(
      'Against the box look first for the shot by TR: it opens in 62 % of chances, about 4.1 s into the play, for 0.8 s, ' +
        'because ll is splitting two and 0.4 s late. Taking it is worth 0.41 goals (0.38-0.44) by the end of the chance.',
    );
  });

  it.each([
    [perChance(-0.001), '0.00'],
    [perChance(Number.NaN), '-'],
    [percent(0.864), '86 %'],
    [count(1234567), '1,234,567'],
    [withInterval({ mean: 0.335, low: 0.3, high: 0.37 }), '0.34 (0.30-0.37)'],
  ])('%s', (shown, expected) => {
    expect(shown).toBe(expected);
  });

  it.each([
    [{ mean: 1, low: 0.9, high: 1.1 }, { mean: 2, low: 1.2, high: 3 }, true],
    [{ mean: 1, low: 0.9, high: 1.2 }, { mean: 2, low: 1.2, high: 3 }, false],
  ])('%j and %j are clearly apart: %s', (a, b, apart) => {
    expect([isClearlyApart(a, b), isClearlyApart(b, a)]).toEqual([apart, apart]);
  });

  it('keeps a number and its unit on one line', () => {
    expect(wrapParagraph('it is late by 0.4 s', 16)).toBe('it is late by\n0.4 s');
  });
});
