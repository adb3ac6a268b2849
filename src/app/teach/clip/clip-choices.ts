import type { Playbook } from '../../../playbook/index.ts';
import { defaultFilmOptions, type FilmFormName, type FilmOptions } from '../../../render/index.ts';
import { sharesOf } from '../../opponents/shares.ts';
import type { SchemeChoice } from '../../schemes/scheme-choices.ts';

/** As what a clip goes out. */
export type ClipFormat = 'page' | 'video' | 'gif';

/** Against what the coach wants to see the play. What he chose may not be there any more. */
export type ClipAgainst =
  /** What usually suits the format: all schemes that are run on Play for a page, the first of them for a film. */
  | { readonly kind: 'usual' }
  | { readonly kind: 'onPlay' }
  | { readonly kind: 'scheme'; readonly scheme: string }
  | { readonly kind: 'opponent'; readonly opponent: string }
  | { readonly kind: 'some'; readonly schemes: readonly string[] };

/** What a choice comes to. */
export interface ClipFoes {
  readonly schemes: readonly string[];
  /** Whose schemes they are, played as well as he plays; anybody's when absent. */
  readonly opponent?: string;
}

/** The schemes of a choice that there are, in the order of the list. `onPlay` are those that the play is run against on the Play place. */
export function clipFoes(
  { opponents }: Pick<Playbook, 'opponents'>,
  against: ClipAgainst,
  format: ClipFormat,
  choices: readonly SchemeChoice[],
  onPlay: readonly string[],
): ClipFoes {
  const known = (wanted: readonly string[]): readonly string[] =>
    choices.map(({ id }) => id).filter((id) => wanted.includes(id));
  switch (against.kind) {
    case 'usual':
      return { schemes: format === 'page' ? onPlay : onPlay.slice(0, 1) };
    case 'onPlay':
      return { schemes: onPlay };
    case 'scheme': {
      const schemes = known([against.scheme]);
      return { schemes: schemes.length === 0 ? onPlay.slice(0, 1) : schemes };
    }
    case 'some':
      return { schemes: known(against.schemes) };
    case 'opponent': {
      const found = opponents?.find(({ id }) => id === against.opponent);
      const met = sharesOf(found?.schemes ?? {}).filter(({ share }) => share > 0);
      const schemes = known(met.map(({ scheme }) => scheme));
      return found === undefined ? { schemes: onPlay } : { schemes, opponent: found.id };
    }
    default:
      return exhaustive(against);
  }
}

/** How a film of this format is drawn: as many pictures a second as each kind of file is good for. */
export function clipFilmOptions(format: ClipFormat, form: FilmFormName | undefined, speed: number): FilmOptions {
  const usual: FilmFormName = format === 'video' ? 'wide' : 'card';
  return { form: form ?? usual, speed, rate: format === 'gif' ? gifRate : defaultFilmOptions.rate };
}

/** A whole number of hundredths of a second, in which a GIF counts. */
const gifRate = 12.5;

function exhaustive(against: never): never {
  throw new TypeError(`unknown choice of schemes: ${JSON.stringify(against)}`);
}
