import type { PenaltyBox, RuleCode } from '../../engine/index.ts';
import { lineUpFor, type Playbook, toEnginePlay } from '../../playbook/index.ts';
import type { Call } from './call-advice.ts';
import { withoutMen } from './measured-calls.ts';

/** Who stands where for a call. */
export interface BenchMan {
  readonly spot: string;
  readonly number: number;
}

/** A man who comes on, and one who goes off. */
export interface UnitChanges {
  readonly on: readonly BenchMan[];
  readonly off: readonly number[];
  /** Who stays and stands elsewhere. */
  readonly moved: readonly BenchMan[];
}

/** Numbers of ours who sit in the box or wait to. */
export function servingNumbers({ penalties }: PenaltyBox): readonly number[] {
  return penalties.flatMap(({ side, man, endedAt }) =>
    side === 'us' && man !== null && endedAt === null ? [man] : [],
  );
}

/** The best six for a call without those who are out, in the order of the play's spots; empty when there are too few. RangeError for an unknown play. */
export function benchUnit(playbook: Playbook, { play, fromSide }: Call, out: readonly number[]): readonly BenchMan[] {
  const engine = toEnginePlay(playbook, play, fromSide);
  const { players } = lineUpFor(withoutMen(playbook, out), engine);
  return players.map(({ number }, at) => ({ spot: engine.spots[at]!.id, number }));
}

/** Who has to change between two units of six. */
export function unitChanges(before: readonly BenchMan[], now: readonly BenchMan[]): UnitChanges {
  const was = new Map(before.map(({ number, spot }) => [number, spot]));
  const is = new Set(now.map(({ number }) => number));
  return {
    on: now.filter(({ number }) => !was.has(number)),
    off: before.map(({ number }) => number).filter((number) => !is.has(number)),
    moved: now.filter(({ number, spot }) => was.has(number) && was.get(number) !== spot),
  };
}

/** The changes in a sentence: "On: 22 at TR. Off: 7. 11 goes to WL." */
export function changesWords({ on, off, moved }: UnitChanges): string {
  const parts = [
    on.length === 0 ? '' : `On: ${on.map(({ number, spot }) => `${number} at ${spot}`).join(', ')}.`,
    off.length === 0 ? '' : `Off: ${off.join(', ')}.`,
    ...moved.map(({ number, spot }) => `${number} goes to ${spot}.`),
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'The usual six.' : parts.join(' ');
}

/** How many may be over midfield when a man comes back, in a sentence, with what to confirm; nothing where the code knows no offside. */
export function offsideWords(
  { counts }: RuleCode,
  box: PenaltyBox,
): { readonly words: string; readonly confirm: boolean } {
  const { attackingEnd, defendingEnd, servingCounts } = counts;
  const ours = servingCounts.value ? box.short.us : 0;
  const theirs = servingCounts.value ? box.short.them : 0;
  const forUs = `Over midfield: ${attackingEnd.value - ours} of ours at most`;
  const forThem = `in front of their goal ${defendingEnd.value - theirs} with the keeper, ${defendingEnd.value} once all are back`;
  return {
    words: `${forUs}; ${forThem}.`,
    confirm: !(attackingEnd.confirmed && defendingEnd.confirmed && servingCounts.confirmed),
  };
}
