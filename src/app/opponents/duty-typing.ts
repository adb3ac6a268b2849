import type { OwnDuty } from '../../engine/index.ts';
import { parseDuty, printDuty } from '../../playbook/index.ts';

/** A duty that can be chosen, and how it is typed: "split P TL". */
export interface DutyChoice {
  readonly text: string;
  readonly own: OwnDuty;
}

/** Whoever is on the crease, whatever his spot is called. */
export const creaseMark = 'crease';

/** Every duty that names men of these spots, in the order in which they are offered. A split is offered both ways round. */
export function dutyChoices(spots: readonly string[], home: readonly [number, number]): readonly DutyChoice[] {
  const marks = spots.includes(creaseMark) ? spots : [...spots, creaseMark];
  const single = (duty: 'man' | 'front' | 'lock' | 'lane' | 'pipe'): readonly OwnDuty[] =>
    marks.map((who) => ({ duty, who }));
  const splits = marks.flatMap((one) =>
    marks.flatMap((other): readonly OwnDuty[] => (one === other ? [] : [{ duty: 'split', who: [one, other] }])),
  );
  const all: readonly OwnDuty[] = [
    { duty: 'ball' },
    ...single('man'),
    ...splits,
    ...single('front'),
    ...single('lock'),
    ...single('lane'),
    ...single('pipe'),
    { duty: 'place', at: home },
  ];
  return all.map((own) => ({ own, text: own.duty === 'place' ? 'home' : textOf(own) }));
}

/** The choices that begin as it was typed, word by word: "s p t" finds "split P TL" and "split P TR". */
export function matchingDuties(choices: readonly DutyChoice[], typed: string, most: number): readonly DutyChoice[] {
  const words = wordsOf(typed);
  if (words.length === 0) return [];
  const found = choices.filter(({ text }) => {
    const parts = wordsOf(text);
    return words.every((word, i) => parts[i]?.startsWith(word) === true);
  });
  const whole = found.filter(({ text }) => wordsOf(text).join(' ') === words.join(' '));
  // What was typed whole comes before what only begins with it.
  return [...new Set([...whole, ...found])].slice(0, most);
}

/** What was typed for a man, as a duty; else what is wrong with it. Names of spots may be typed in small letters. */
export function readTyped(
  typed: string,
  man: string,
  spots: ReadonlySet<string>,
  home: readonly [number, number],
): { readonly own: OwnDuty } | { readonly problem: string } {
  const text = typed.trim();
  if (text.toLowerCase() === 'home') return { own: { duty: 'place', at: home } };
  const asWritten = text
    .split(/\s+/)
    .map((word, i) => (i === 0 || smallWords.has(word.toLowerCase()) ? word.toLowerCase() : word.toUpperCase()))
    .join(' ');
  const { value, faults } = parseDuty(`${man} ${asWritten}`, { men: new Set([man]), spots });
  return value === undefined ? { problem: faults[0]?.message ?? 'That is no duty.' } : { own: value.own };
}

/** Words of a duty, besides its first, that are no spots. */
const smallWords: ReadonlySet<string> = new Set([creaseMark, 'at']);

function textOf(own: OwnDuty): string {
  return printDuty('', own).trim();
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
}
