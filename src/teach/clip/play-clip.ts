import type { FurthestScript } from '../../engine/index.ts';
import { type Playbook, type Player, schemeName } from '../../playbook/index.ts';
import { type Clip, type ClipScheme, clipOfScript, traceNames } from '../../render/index.ts';
import {
  type AnswerOptions,
  type Cast,
  expectKind,
  type MatchupChoice,
  onePlayText,
  type TrialPool,
} from '../../worker/index.ts';

/** What a clip is to show: a play against schemes, each in a man-up of its own. */
export interface ClipWishes extends Omit<MatchupChoice, 'scheme' | 'practised'> {
  readonly schemes: readonly string[];
  readonly seed: number;
  readonly withNames: boolean;
  /** Whose view is shown at first, a spot of the play; the whole unit's when absent. */
  readonly follow?: string;
}

export type PlayClip =
  | {
      readonly kind: 'made';
      readonly clip: Clip;
      /** Names of the schemes against which the play never begins: they are not in the clip. */
      readonly leftOut: readonly string[];
    }
  /** The play begins against none of them. */
  | { readonly kind: 'neverBegins' };

/** Man-ups watched against each scheme to find the one that is shown: enough for one that goes to its end in one of ten to be among them. */
export const watchedForClip = 24;

/** A play as a page carries it, found on the pool's threads. Rejects with a `RefusedSetup` as any question to them. */
export async function playClip(
  pool: TrialPool,
  playbook: Playbook,
  { schemes, withNames, follow, ...choice }: ClipWishes,
  options: AnswerOptions = {},
): Promise<PlayClip> {
  const requests = schemes.map((scheme) => {
    const setup = { ...choice, scheme, document: onePlayText(playbook, { ...choice, scheme }) };
    return { kind: 'furthest' as const, setup, watched: watchedForClip };
  });
  const answers = await pool.answer(requests, options);
  const leftOut: string[] = [];
  const shown: ClipScheme[] = [];
  let cast: Cast | undefined;
  for (const [at, answer] of answers.entries()) {
    const against = expectKind(answer, 'furthest');
    cast ??= against.cast;
    if (against.found === null) {
      leftOut.push(schemeName(playbook, schemes[at]!));
      continue;
    }
    const { script } = against.found;
    shown.push(clipOfScript(script, against.cast.play, traceNames(against.cast), noteOf(against.found)));
  }
  if (cast === undefined || shown.length === 0) return { kind: 'neverBegins' };
  const clip: Clip = {
    play: playbook.plays.find(({ id }) => id === choice.play)?.name ?? choice.play,
    team: playbook.team.name,
    ...peopleOf(playbook, cast, withNames),
    follow: cast.play.spots.findIndex(({ id }) => id === follow),
    schemes: shown,
  };
  return { kind: 'made', clip, leftOut };
}

function peopleOf({ team }: Playbook, { play, numbers }: Cast, withNames: boolean): Pick<Clip, 'spots' | 'men'> {
  const men = numbers.map((number) => team.roster.find((player) => player.number === number));
  return {
    spots: play.spots.map(({ id }) => id),
    men: men.map((man, at) => (man === undefined ? `number ${numbers[at]}` : manWords(man, withNames))),
  };
}

function manWords({ number, name }: Player, withName: boolean): string {
  return withName ? `number ${number} ${name}` : `number ${number}`;
}

/** How this man-up was chosen and how often the play comes as far, in words for a player: which one it is says nothing to him. */
function noteOf(found: FurthestScript): string {
  return `One simulated man-up, and no promise: ${howFar(found)} Nobody takes an opening, so that the play is seen as it is written.`;
}

function howFar({ ends, watched, asFar }: FurthestScript): string {
  const tried = `${watched} that were tried`;
  switch (ends) {
    case 'shot':
      return `of ${tried} the play came to its shot like this in ${asFar}.`;
    case 'stuck':
      return `of ${tried} the play came further in none, and as far as here in ${asFar}.`;
    case 'lost':
      return `of ${tried} the play came further in none, and here the ball is lost; as far as here it came in ${asFar}.`;
    default:
      return exhaustive(ends);
  }
}

function exhaustive(ends: never): never {
  throw new TypeError(`unknown end: ${JSON.stringify(ends)}`);
}
