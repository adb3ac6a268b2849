import type { Level } from '../../engine/index.ts';
import { type Block, beside, gap, paragraph, rule, stack, type TextLook } from './block.ts';

/** One caution: what it is about, and what to do. */
export interface Caution {
  readonly about: string;
  readonly words: string;
}

/** Levels at which USA Lacrosse's youth rules allow no body check (boys' rulebook 2017, page 9), and that at which they allow little. */
const noChecks: readonly Level[] = ['8U', '10U', '12U'];
const fewChecks: readonly Level[] = ['14U'];
/** Levels at which no team is ever a man up in games (USA Lacrosse boys' youth rules since 2020). */
const neverManUp: readonly Level[] = ['8U', '10U'];

/**
 * The cautions of a page with shooting or contact, for an age. What they rest on: the standards NOCSAE ND200 (chest) and ND049 (balls); NFHS guidance on goalkeepers,
 * lightning and heat; USA Lacrosse's youth rules and its guidance on concussion and AEDs.
 */
export function practiceCautions(level: Level): readonly Caution[] {
  return [
    ...(neverManUp.includes(level)
      ? [{ about: `${level} games`, words: 'no team is ever a man up or down: this is for practice alone.' }]
      : []),
    {
      about: 'Shooting',
      words:
        'only a fully equipped goalkeeper stands in the goal, throat and chest protected (ND200). Nobody behind it. Balls to ND049; hard old ones go home.',
    },
    { about: 'Contact', words: contactWords(level) },
    {
      about: 'Weather',
      words:
        'thunder or lightning: off the field for 30 minutes after the last. Heat: start slowly, shade, water whenever they want; stop when somebody is unwell.',
    },
    {
      about: 'Head or chest',
      words:
        'out at once, and back only with written clearance. An AED and a certified trainer at hand; somebody who knows CPR.',
    },
    {
      about: 'Who decides',
      words: "your league's rulebook, the officials and licensed medical staff, not this page.",
    },
  ];
}

function contactWords(level: Level): string {
  const gear = 'helmet, mouthguard, gloves, chest and shoulders (ND200).';
  if (noChecks.includes(level))
    return `no body checks at ${level} and below (USA Lacrosse youth rules): position and sticks only. ${capital(gear)}`;
  if (fewChecks.includes(level))
    return `at ${level} body checks only within 3 yards, and never to take a man out (USA Lacrosse youth rules). ${capital(gear)}`;
  return `legal checks only, none on a man who cannot see it. ${capital(gear)}`;
}

/** The same as a block in two columns: each in a paragraph, what it is about first. */
export function cautionsBlock(level: Level, look: TextLook, width: number): Block {
  const across = (width - columnGap) / 2;
  const lines = practiceCautions(level).map(({ about, words }) =>
    paragraph(`${about.toUpperCase()}: ${words}`, look, across),
  );
  const half = lines.reduce((sum, { height }) => sum + height, 0) / 2;
  let high = 0;
  const left = lines.filter((line) => {
    high += line.height;
    return high - line.height / 2 <= half;
  });
  return stack(
    [
      rule(width),
      gap(1),
      beside([
        { left: 0, block: stack(left) },
        { left: across + columnGap, block: stack(lines.slice(left.length)) },
      ]),
    ],
    1,
  );
}

const columnGap = 14;

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
