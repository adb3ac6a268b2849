import type { OwnDuty } from '../../engine/index.ts';

/** A defender's duty in the play language, such that reading it gives it back: `tl split P TL`, `ll pipe WL at -3,3`. */
export function printDuty(by: string, own: OwnDuty): string {
  return `${by} ${dutyText(own)}`;
}

function dutyText(own: OwnDuty): string {
  switch (own.duty) {
    case 'ball':
      return 'ball';
    case 'man':
    case 'lock':
    case 'front':
      return `${own.duty} ${own.who}`;
    case 'split':
      return `split ${own.who[0]} ${own.who[1]}`;
    case 'lane':
    case 'pipe':
      return own.at === undefined ? `${own.duty} ${own.who}` : `${own.duty} ${own.who} at ${own.at[0]},${own.at[1]}`;
    case 'place':
      return `at ${own.at[0]},${own.at[1]}`;
    default:
      return exhaustive(own);
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown duty: ${JSON.stringify(value)}`);
}
