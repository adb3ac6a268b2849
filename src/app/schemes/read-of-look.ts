import type { BeatId, LookReport, Read } from '../../engine/index.ts';

/** A look as a read that can be taught: its man open, then the ball to him; free himself, then a shot. `during` is the step in which it opens. */
export function readOfLook(
  { kind, from, to }: Pick<LookReport, 'kind' | 'from' | 'to'>,
  during: BeatId | undefined,
): Read {
  const when = { carrier: from, ...(during !== undefined && { during }) };
  if (kind === 'shot') return { ...when, cues: [{ kind: 'iAmFree' }], then: { kind: 'shot', by: from } };
  const style = kind === 'pass' ? 'adjacent' : kind;
  return { ...when, cues: [{ kind: 'open', who: to }], then: { kind: 'pass', by: from, to, style } };
}
