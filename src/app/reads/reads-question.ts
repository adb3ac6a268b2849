import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import type { WeighedSetup } from '../../worker/index.ts';
import { setupsOf, usualSeed } from '../answers/ask.ts';
import { sharesOf } from '../opponents/shares.ts';
import { schemeChoices } from '../schemes/scheme-choices.ts';

/** Against what a man's reads are found: some schemes equally often, or an opponent's mix as well as he plays it. */
export interface Against {
  readonly schemes: readonly string[];
  /** The opponent's id; schemes that he never plays, or that nobody knows any more, are left out. */
  readonly opponent: string | undefined;
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
    ...(against.opponent !== undefined && { opponent: against.opponent }),
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
export function opponentsWithMix({ opponents }: Playbook): NonNullable<Playbook['opponents']> {
  return (opponents ?? []).filter(({ schemes }) => sharesOf(schemes ?? {}).some(({ share }) => share > 0));
}

function weightsOf(
  playbook: Playbook,
  { schemes, opponent }: Against,
): readonly { readonly scheme: string; readonly weight: number }[] {
  const mix = playbook.opponents?.find(({ id }) => id === opponent)?.schemes;
  const known = new Set(schemeChoices(playbook).map(({ id }) => id));
  const met = mix === undefined ? schemes.map((scheme) => ({ scheme, weight: 1 })) : sharesOf(mix);
  return met.flatMap(({ scheme, weight }) => (known.has(scheme) && weight > 0 ? [{ scheme, weight }] : []));
}
