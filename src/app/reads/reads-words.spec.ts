import { describe, expect, it } from 'vitest';
import {
  cardWorthWords,
  effortWords,
  eitherOf,
  gradesWords,
  heldReadsWords,
  noSchemeWords,
  progressWords,
  readPricesWords,
  taughtWords,
  teachingWords,
} from './reads-words.ts';

describe('the words of the place', () => {
  it('say what a card is worth, and when that may be nothing', () => {
    expect(cardWorthWords({ mean: 0.04, low: 0.02, high: 0.06 })).toBe(
      '+.04 (.02 to .06) goals a chance against leaving it to the play',
    );
    expect(cardWorthWords({ mean: 0.01, low: -0.02, high: 0.04 })).toMatch(/, no sure difference$/);
  });

  it('never say that a round is over while it is not', () => {
    expect(progressWords({ kind: 'finding', trials: 20, answered: 0, planned: 40 })).toMatch(/: 0 %$/);
    expect(progressWords({ kind: 'finding', trials: 20, answered: 40, planned: 40 })).toMatch(/: 99 %$/);
    expect(progressWords({ kind: 'stopped' })).toBeUndefined();
  });

  it('say why there is nothing to play against', () => {
    expect(noSchemeWords({ kind: 'alike', schemes: [] })).toBe('No scheme is chosen to play against.');
    expect(noSchemeWords({ kind: 'ownMix', weights: {} })).toBe('No scheme is chosen to play against.');
    expect(noSchemeWords({ kind: 'ownMix', weights: { jump: 0 } })).toMatch(/^Every scheme of your mix stands at none/);
  });

  it('call the first answer rough', () => {
    expect(effortWords(20, true)).toMatch(/rough/);
    expect(effortWords(200, false)).not.toMatch(/rough/);
  });

  it.each([
    [[], ''],
    [['P'], 'P'],
    [['P', 'TR'], 'P or TR'],
    [['P', 'TR', 'X'], 'P, TR or X'],
  ])('list %j', (names, words) => {
    expect(eitherOf(names)).toBe(words);
  });

  it('count the reads that are taught, and not what is done otherwise', () => {
    const read = { cues: [{ kind: 'iAmFree' }] } as const;
    expect(taughtWords([read])).toBe('1 read');
    expect(taughtWords([read, read, { cues: [] }])).toBe('2 reads and what he does otherwise');
    expect(taughtWords([{ cues: [] }])).toBe('what he does in any case');
  });

  it('say what the grades come to', () => {
    const gain = (low: number) => ({ mean: low + 0.02, low, high: low + 0.04 });
    // Of a grade only what it earns and what the better one gains are told.
    const grade = (earns: number, better: number | undefined) =>
      ({ there: { earns: gain(earns) }, better: better === undefined ? null : { gain: gain(better) } }) as Parameters<
        typeof gradesWords
      >[1][number];
    expect(gradesWords('X', [])).toBe('No read of X is graded.');
    expect(gradesWords('X', [grade(0.01, undefined), grade(-0.02, 0)])).toBe(
      '2 reads graded: none surely costs goals where it comes.',
    );
    expect(gradesWords('X', [grade(-0.1, 0.01)])).toBe(
      '1 read graded: 1 surely costs goals where it comes, a better one was found for 1.',
    );
  });

  it('say what a card that is taught takes the place of', () => {
    const read = { cues: [{ kind: 'iAmFree' }] } as const;
    expect(teachingWords([read], 0)).toBe('Writes 1 read into the play as one step that Undo takes back.');
    expect(teachingWords([read, read, read, { cues: [] }], 2)).toBe(
      'Writes 3 reads and what he does otherwise into the play in place of the 2 that it teaches him now, as one step that Undo takes back.',
    );
    expect(teachingWords([read], 1)).toMatch(/ in place of the one that it teaches him now, /);
  });

  it.each([
    [0, 4, 4, /^No read is worth holding: cards with reads did not do clearly better/],
    [1, 4, 4, /^One read is worth holding: longer cards did not do clearly better/],
    [2, 4, 4, /^Two reads are worth holding: longer cards/],
    [4, 4, 4, /^Four reads are worth holding: shorter cards did clearly worse .* not found in\.$/],
    [4, 4, 3, /^Four reads are worth holding: .* At 12U a man can hold three in mind\.$/],
  ])('say why %i reads of %i at most are held where %i can be', (worthHolding, longest, most, words) => {
    expect(heldReadsWords(worthHolding, longest, most, '12U')).toMatch(words);
  });

  it('say what each read adds to the card without it, and where that may be nothing', () => {
    const cards = [
      { overShorter: null },
      { overShorter: { mean: 0.03, low: 0.01, high: 0.05 } },
      { overShorter: { mean: 0.01, low: -0.01, high: 0.03 } },
    ];
    expect(readPricesWords(cards, 0)).toBe('');
    expect(readPricesWords(cards, 1)).toMatch(/: the first read \+\.03 \(\.01 to \.05\)\.$/);
    expect(readPricesWords(cards, 2)).toMatch(/; the second read \+\.01 \(−\.01 to \+\.03\), not sure\.$/);
  });
});
