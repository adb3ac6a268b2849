import type { Opponent, Playbook } from '../../playbook/index.ts';
import { expectedSchemes, unwritten } from './expected-schemes.ts';
import { isWeighedByMarks } from './told-by-marks.ts';

type Weights = Readonly<Record<string, number>>;

/** What is believed of an opponent before he was met weighs as much as so many man-ups (an assumption: a scouted game shows about as many). */
export const beliefStrength = 4;

/**
 * The weights of the schemes of so many defenders before any marks and ticks are weighed, by id: what was kept of that (`before`), else what is expected by the entry, to
 * the hundredth of a percent. Man-ups that the entry counts by their names and that were marked since are taken out of it: their marks say it now.
 */
export function schemesBefore(playbook: Playbook, opponent: Opponent | undefined, defenders: number): Weights {
  if (opponent === undefined) return inPercent(expectedSchemes(playbook, undefined, defenders));
  const { schemes, before } = withoutMarked(playbook, opponent);
  const entry = schemes === undefined ? undefined : { ...opponent, schemes: { ...schemes } };
  const usual = inPercent(expectedSchemes(playbook, entry, defenders));
  const kept = Object.keys(usual).filter((id) => before !== undefined && Object.hasOwn(before, id));
  const all = kept.reduce((sum, id) => sum + before![id]!, 0);
  if (before === undefined || all === 0) return usual;
  const ofLevel = inPercent(expectedSchemes(playbook, undefined, defenders));
  // A scheme that was written since is as likely as one that nothing is known of.
  return Object.fromEntries(
    Object.keys(usual).map((id) => [id, before[id] ?? hundredths((unwritten * ofLevel[id]! * all) / 100)]),
  );
}

/** What is believed of an opponent, and was before marks, without the man-ups that are counted in it by name and are marked now. */
export function withoutMarked(
  playbook: Playbook,
  opponent: Opponent,
): { readonly [Key in 'schemes' | 'before' | 'counted']: Weights | undefined } {
  const { schemes, before, counted = {} } = opponent;
  const named = (playbook.chances ?? []).filter(
    (chance) => chance.side === 'ours' && chance.opponent === opponent.id && !isWeighedByMarks(chance),
  );
  const gone = Object.fromEntries(
    Object.entries(counted).map(([id, times]) => [
      id,
      Math.max(0, times - named.filter(({ scheme }) => scheme === id).length),
    ]),
  );
  if (Object.values(gone).every((times) => times === 0)) return { schemes, before, counted: opponent.counted };
  const strength = beliefStrength + Object.values(counted).reduce((sum, times) => sum + times, 0);
  return {
    schemes: shrunk(schemes, strength, gone),
    before: shrunk(before, strength, gone),
    counted: Object.fromEntries(Object.entries(counted).map(([id, times]) => [id, times - gone[id]!])),
  };
}

/** Weights that count so many man-ups less: a Dirichlet's counts taken back. As they are where nothing would be left. */
function shrunk(weights: Weights | undefined, strength: number, gone: Weights): Weights | undefined {
  const all = Object.values(weights ?? {}).reduce((sum, weight) => sum + weight, 0);
  const less = Object.entries(weights ?? {}).map(
    ([id, weight]) => [id, Math.max(0, weight - ((gone[id] ?? 0) * all) / strength)] as const,
  );
  return less.every(([, weight]) => weight === 0)
    ? weights
    : Object.fromEntries(less.filter(([id, weight]) => weight > 0 || weights?.[id] === 0));
}

function inPercent(shares: Weights): Weights {
  return Object.fromEntries(Object.entries(shares).map(([id, share]) => [id, hundredths(100 * share)]));
}

function hundredths(value: number): number {
  return value > 0 ? Math.max(0.01, Math.round(100 * value) / 100) : 0;
}
