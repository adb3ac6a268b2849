import type { CompiledOrder, PassStyle, Script } from '../chance/program.ts';

/** A pass that a play names itself: its script throws it, or one of its reads does. Plain data; offense indices. */
export interface OwnThrow {
  readonly from: number;
  readonly to: number;
  readonly style: PassStyle;
  readonly asked: 'script' | 'read';
  /** Index of the beat it belongs to; -1 for a read that counts in every beat. */
  readonly beat: number;
}

/** What became of one of the play's own passes in one watched trial in which the play came to it. Plain data. */
export interface OwnThrowSeen {
  readonly trial: number;
  /** Index in `ownThrows` of the script. */
  readonly own: number;
  /** Whether it was a look at a moment at which the play asked for it. */
  readonly opened: boolean;
  /** The best odds of a catch that it had at such a moment. */
  readonly completion: number;
}

/** All passes that a script and its reads name, each once: the script's in the order of its beats, then those of the reads. */
export function ownThrows({ beats, reads }: Script): readonly OwnThrow[] {
  const throws: OwnThrow[] = [];
  const add = (action: CompiledOrder, asked: OwnThrow['asked'], beat: number): void => {
    if (action.kind !== 'pass') return;
    const { by: from, to, style } = action;
    const known = throws.some((one) => one.from === from && one.to === to && one.asked === asked && one.beat === beat);
    if (!known) throws.push({ from, to, style, asked, beat });
  };
  for (const [beat, { actions }] of beats.entries()) for (const action of actions) add(action, 'script', beat);
  for (const { then, during } of reads) add(then, 'read', during);
  return throws;
}

/** For each carrier, the mates whom his play names: bit i for mate i. */
export function ownMates(throws: readonly OwnThrow[]): Uint8Array {
  const mates_byCarrier = new Uint8Array(6);
  for (const { from, to } of throws) mates_byCarrier[from] |= 1 << to;
  return mates_byCarrier;
}

/** One of the play's own passes over many watched trials. Plain data. */
export interface OwnThrowSummary extends OwnThrow {
  /** Share of the trials in which the play came to it: the man had the ball when it was asked for. */
  readonly reached: number;
  /** Share of the trials in which it then was a look. */
  readonly share: number;
  /** Mean, over the trials that came to it, of its best odds of a catch; 0 when none did. */
  readonly completion: number;
}

/** What the play's own passes came to in `trials` watched trials, in the order of `throws`. */
export function summarizeThrows(
  throws: readonly OwnThrow[],
  seen: readonly OwnThrowSeen[],
  trials: number,
): OwnThrowSummary[] {
  return throws.map((own, index) => {
    const his = seen.filter((one) => one.own === index);
    const share = (part: number): number => (trials > 0 ? part / trials : 0);
    return {
      ...own,
      reached: share(his.length),
      share: share(his.filter(({ opened }) => opened).length),
      completion: his.reduce((sum, { completion }) => sum + completion, 0) / Math.max(1, his.length),
    };
  });
}
