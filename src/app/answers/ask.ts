import type { Level } from '../../engine/index.ts';
import { type Playbook, setAlone, setAloneId } from '../../playbook/index.ts';
import { onePlayText, type TrialSetup } from '../../worker/index.ts';

/** The seed of every question that does not name another: the same trials share their luck, so differences are the plays' own. */
export const usualSeed = 20_260;

/** What the workbench wants to know: one play of the playbook from one side, against some schemes. */
export interface Ask {
  readonly playbook: Playbook;
  readonly play: string;
  /** Ids of schemes, in the order in which they are shown. */
  readonly schemes: readonly string[];
  /** How often each scheme is met, in the schemes' order; equally often when absent. */
  readonly weights?: readonly number[];
  /** The opponent who plays them, as well as the playbook says; anybody of the level when absent. */
  readonly opponent?: string;
  readonly side: 'left' | 'right';
  /** Seconds; the playbook's own when `null`. */
  readonly penalty: number | null;
  /** The team's own when `null`. */
  readonly level: Level | null;
  readonly seed: number;
  /** Find out too what the set makes without the play; not when absent. */
  readonly setAlone?: boolean;
}

/** One setup for each scheme. Setups that are equal as JSON have equal answers, so an edit that changes none of them changes no answer. */
export function setupsOf(ask: Ask): readonly TrialSetup[] {
  const { playbook, play, opponent, side, penalty, level, seed } = ask;
  // All built-in schemes share one text, which is sent and read once.
  const texts = new Map<string, string>();
  const textFor = (scheme: string): string => {
    const own = playbook.schemes?.some(({ id }) => id === scheme) === true ? scheme : '';
    const text = texts.get(own) ?? onePlayText(playbook, { play, scheme, ...(opponent !== undefined && { opponent }) });
    texts.set(own, text);
    return text;
  };
  return ask.schemes.map((scheme) => ({
    document: textFor(scheme),
    play,
    scheme,
    ...(opponent !== undefined && { opponent }),
    side,
    penalty,
    level,
    seed,
  }));
}

/** The setups of the same ask without the play, in the same order; none when it does not ask for them. Only spots, team and settings change them. */
export function setAloneSetupsOf(ask: Ask): readonly TrialSetup[] {
  const entry = ask.playbook.plays.find(({ id }) => id === ask.play);
  if (ask.setAlone !== true || entry === undefined) return [];
  return setupsOf({ ...ask, playbook: { ...ask.playbook, plays: [setAlone(entry)] }, play: setAloneId });
}
