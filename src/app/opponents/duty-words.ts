import type { OwnDuty } from '../../engine/index.ts';

/** The duties that a grid can ask for, in the order of a chooser. */
export const dutyVerbs = ['ball', 'man', 'split', 'front', 'lock', 'lane', 'pipe', 'place'] as const;
export type DutyVerb = (typeof dutyVerbs)[number];

/** Each duty as a word to press, and what it means. */
export const verbWords: Readonly<Record<DutyVerb, { readonly title: string; readonly means: string }>> = {
  ball: { title: 'Ball', means: 'Plays the man with the ball.' },
  man: { title: 'Man', means: 'Plays one man in his area: goal side, ready to go when he is thrown to.' },
  split: { title: 'Split', means: 'Stands so that he can reach either of two men.' },
  front: { title: 'Front', means: 'On the ball’s side of a crease man, stick in the feed.' },
  lock: { title: 'Lock', means: 'Goes wherever one man goes, and helps nobody.' },
  lane: { title: 'Lane', means: 'Stands in the lane from the ball to one man, stick up.' },
  pipe: { title: 'Pipe', means: 'Guards the pipe on one man’s side, and takes him when he comes in.' },
  place: { title: 'Place', means: 'Holds a place, whoever is near.' },
};

/** How many men a duty names. */
export function marksOf(verb: DutyVerb): 0 | 1 | 2 {
  if (verb === 'ball' || verb === 'place') return 0;
  return verb === 'split' ? 2 : 1;
}

/** A cell of the grid: a small word and what it is about. `home` is the man's own place. */
export function cellWords(own: OwnDuty, home: readonly [number, number] | undefined): readonly [string, string] {
  switch (own.duty) {
    case 'ball':
      return ['', 'ball'];
    case 'man':
      return ['plays', own.who];
    case 'split':
      return ['splits', `${own.who[0]} + ${own.who[1]}`];
    case 'front':
      return ['fronts', own.who];
    case 'lock':
      return ['locks', own.who];
    case 'lane':
      return ['lane to', own.who];
    case 'pipe':
      return ['pipe for', own.who];
    case 'place':
      return isAt(own.at, home) ? ['at', 'home'] : ['at', `${own.at[0]}, ${own.at[1]}`];
    default:
      return exhaustive(own);
  }
}

/** The same as a reader speaks it: "splits P and TL", "at home", "on the ball". */
export function spokenDuty(own: OwnDuty, home: readonly [number, number] | undefined): string {
  if (own.duty === 'ball') return 'on the ball';
  if (own.duty === 'split') return `splits ${own.who[0]} and ${own.who[1]}`;
  return cellWords(own, home).join(' ');
}

function isAt(at: readonly [number, number], home: readonly [number, number] | undefined): boolean {
  return home !== undefined && at[0] === home[0] && at[1] === home[1];
}

function exhaustive(own: never): never {
  throw new TypeError(`unknown duty: ${JSON.stringify(own)}`);
}
