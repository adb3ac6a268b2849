import { describe, expect, it } from 'vitest';
import type { Interval, ReadGrade } from '../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../playbook/index.ts';
import { cardEachWords, fakesWords, gradeWords } from './read-grade-words.ts';

const play = toEnginePlay(demoPlaybook, 'lantern', 'right');
const carrier = play.spots.findIndex(({ id }) => id === 'X');
const at = play.spots[carrier]!.at;
const text = (goals: number): string => goals.toFixed(2);
const about = (mean: number, half = 0.01): Interval => ({ mean, low: mean - half, high: mean + half });

const there: NonNullable<ReadGrade['there']> = {
  after: 0.8,
  goals: about(0.3),
  goOn: about(0.2),
  best: about(0.3),
  bestAction: 0,
  earns: about(0.1),
  short: about(0),
  earlier: null,
  lastMoment: 0.1,
};
const grade: ReadGrade = { read: 1, comes: 0.4, there, wrongWay: null, gain: about(0.04), better: null };

describe('the words of a grade', () => {
  it('tell what a read earns', () => {
    expect(gradeWords(play, carrier, grade, at, text)).toEqual({
      read: "If WR is open and WR's man has left him, X feeds WR.",
      comes: 'He sees it in 40 % of his possessions, 0.8 s after he can act on average.',
      verdict: 'There it makes 0.30 goals a chance, and the play left alone 0.20: it earns 0.10 (0.09 to 0.11).',
      notes: [],
    });
  });

  it('tell what it costs, that it comes too late, and what would be better', () => {
    const bad: ReadGrade = {
      ...grade,
      there: { ...there, earns: about(-0.07), short: about(0.08), earlier: about(0.05), lastMoment: 0.9 },
      wrongWay: about(0.09),
      better: { condition: { looksAt: 1, mustHold: 1 }, action: 0, gain: about(0.03) },
    };
    const { verdict, notes } = gradeWords(play, carrier, bad, at, text);
    expect(verdict).toMatch(/it costs 0\.07 \(0\.06 to 0\.08\)\.$/);
    expect(notes).toEqual([
      'It comes too late: one look earlier the same is worth 0.05 (0.04 to 0.06) more.',
      'At the same cue the best is that X shoots: 0.08 (0.07 to 0.09) more.',
      'Done at once without its cue it costs 0.09 (0.08 to 0.10): the cue matters.',
      'Better: if X is free, X shoots. Over all his possessions that is 0.03 (0.02 to 0.04) more.',
    ]);
  });

  it('offer nothing that is not surely better', () => {
    const better = { condition: { looksAt: 1, mustHold: 1 }, action: 0, gain: about(0.01, 0.02) };
    const open: ReadGrade = { ...grade, there: { ...there, earns: about(0.01, 0.03) }, better };
    const { verdict, notes } = gradeWords(play, carrier, open, at, text);
    expect(verdict).toMatch(/no sure difference\.$/);
    expect(notes).toEqual([]);
  });

  it('say that a read comes too seldom to be told', () => {
    expect(gradeWords(play, carrier, { ...grade, comes: 0.01, there: null }, at, text)).toMatchObject({
      comes: 'He sees it in 1 % of his possessions.',
      verdict: 'That is too seldom to tell what it is worth.',
    });
    expect(gradeWords(play, carrier, { ...grade, comes: 0, there: null }, at, text).comes).toBe(
      'He never sees it before the play has him throw.',
    );
  });
});

it('fakes are told by the best that is sure', () => {
  const fake = (toward: number, mean: number) => ({ toward, gain: about(mean), byScheme: [] });
  expect(fakesWords(play, [fake(0, 0.02), fake(1, 0.04)], text)).toBe(
    `Shown first to ${play.spots[1]!.id}, the ball is worth 0.04 (0.03 to 0.05) goals a chance more.`,
  );
  expect(fakesWords(play, [fake(0, 0), fake(1, -0.04)], text)).toMatch(/^No fake surely buys anything/);
  expect(fakesWords(play, [fake(0, -0.03), fake(1, -0.04)], text)).toMatch(/^Every fake costs/);
});

it('a card for each scheme is worth its trouble or not', () => {
  expect(cardEachWords(about(0.02), text)).toMatch(/brings 0\.02 \(0\.01 to 0\.03\) goals a chance more/);
  expect(cardEachWords(about(0.002), text)).toMatch(/^One card for all schemes does as well/);
});
