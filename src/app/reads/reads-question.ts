import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import type { WeighedSetup } from '../../worker/index.ts';
import { setupsOf, usualSeed } from '../answers/ask.ts';
import { sharesOf } from '../opponents/shares.ts';
import { schemeChoices } from '../schemes/scheme-choices.ts';

/** What the coach chose to find reads against, which may not be there any more. */
export type AgainstChoice =
  | { readonly kind: 'alike' }
  | { readonly kind: 'opponent'; readonly opponent: string }
  | { readonly kind: 'ownMix' };

/** Against what a man's reads are found. */
export type Against =
  /** These schemes, equally often. */
  | { readonly kind: 'alike'; readonly schemes: readonly string[] }
  /** The mix of this opponent (his id), as well as he plays it; schemes that he never plays, or that nobody knows any more, are left out. */
  | { readonly kind: 'opponent'; readonly opponent: string }
  /** Schemes with how often each is met, beside the others. One at 0 is left out. */
  | { readonly kind: 'ownMix'; readonly weights: Readonly<Record<string, number>> };

/** What a choice comes to: an opponent of whom nothing is known any more stands for the schemes, equally often. */
export function againstOf(
  opponents: Playbook['opponents'],
  choice: AgainstChoice,
  schemes: readonly string[],
  ownMix: Readonly<Record<string, number>>,
): Against {
  switch (choice.kind) {
    case 'alike':
      return { kind: 'alike', schemes };
    case 'opponent':
      return opponentsWithMix({ opponents }).some(({ id }) => id === choice.opponent)
        ? choice
        : { kind: 'alike', schemes };
    case 'ownMix':
      return { kind: 'ownMix', weights: wholeMix(schemes, ownMix) };
    default:
      return exhaustive(choice);
  }
}

/** What each scheme of a mix of one's own counts before anybody said so: all alike. */
const usualWeight = 1;

/** A mix of one's own over these schemes, in their order. */
export function wholeMix(
  schemes: readonly string[],
  ownMix: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  return Object.fromEntries(schemes.map((scheme) => [scheme, ownMix[scheme] ?? usualWeight]));
}

/** What is asked of the simulation about the reads of one man. */
export interface ReadsQuestion {
  readonly setups: readonly WeighedSetup[];
  /** The same for the same question, whatever the play teaches: teaching does not make what was found old. */
  readonly text: string;
}

/**
 * The question about the man at `carrier` of a play that can be played, on the side it is written for. `standing` is all that the play stands on.
 * Without schemes to play against there are no setups.
 */
export function readsQuestion(
  standing: Playbook,
  entry: PlayEntry,
  carrier: string,
  opponents: Playbook['opponents'],
  against: Against,
): ReadsQuestion {
  const playbook: Playbook = { ...standing, ...(opponents && { opponents }), plays: [entry] };
  const met = weightsOf(playbook, against);
  const ask = {
    playbook,
    play: entry.id,
    schemes: met.map(({ scheme }) => scheme),
    ...(against.kind === 'opponent' && { opponent: against.opponent }),
    side: 'right',
    penalty: null,
    level: null,
    seed: usualSeed,
  } as const;
  const setups = setupsOf(ask).map((setup, at) => ({ setup, weight: met[at]!.weight }));
  const { reads: _, ...script } = entry;
  const untaught = setupsOf({ ...ask, playbook: { ...playbook, plays: [script] } });
  return { setups, text: JSON.stringify([carrier, met, untaught]) };
}

/** Opponents of whom it is known what they play. */
export function opponentsWithMix({
  opponents,
}: {
  readonly opponents?: Playbook['opponents'];
}): NonNullable<Playbook['opponents']> {
  return (opponents ?? []).filter(({ schemes }) => sharesOf(schemes ?? {}).some(({ share }) => share > 0));
}

function weightsOf(
  playbook: Playbook,
  against: Against,
): readonly { readonly scheme: string; readonly weight: number }[] {
  const known = new Set(schemeChoices(playbook).map(({ id }) => id));
  return metBy(playbook, against).filter(({ scheme, weight }) => known.has(scheme) && weight > 0);
}

function metBy(playbook: Playbook, against: Against): readonly { readonly scheme: string; readonly weight: number }[] {
  switch (against.kind) {
    case 'alike':
      return against.schemes.map((scheme) => ({ scheme, weight: 1 }));
    case 'opponent':
      return mixOf(playbook.opponents?.find(({ id }) => id === against.opponent)?.schemes ?? {});
    case 'ownMix':
      return mixOf(against.weights);
    default:
      return exhaustive(against);
  }
}

function mixOf(weights: Readonly<Record<string, number>>) {
  return sharesOf(weights).map(({ scheme, weight }) => ({ scheme, weight }));
}

function exhaustive(against: never): never {
  throw new TypeError(`unknown choice of schemes: ${JSON.stringify(against)}`);
}
