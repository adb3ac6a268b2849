import { sharePosterior } from '../../engine/index.ts';
import { countSchemes, menOfScheme, type Opponent, type Playbook, schemeName } from '../../playbook/index.ts';
import { counted as countedWords, percent } from '../../render/index.ts';
import { beliefStrength } from '../scout/schemes-before.ts';
import { isWeighedByMarks } from '../scout/told-by-marks.ts';
import { schemeSeen } from './chance-groups.ts';
import { isSurelyUneven, namingOf, namingWords } from './naming.ts';
import type { Proposal } from './proposal.ts';

/** As little as a share moves before it is worth a change, 0 to 1. */
const leastMove = 0.01;

/** For each opponent whose schemes were seen in our chances since his weights were last moved: the weights that follow. */
export function proposeSchemes(playbook: Playbook): readonly Proposal[] {
  return (playbook.opponents ?? []).flatMap((opponent) => proposalFor(playbook, opponent) ?? []);
}

function proposalFor(playbook: Playbook, opponent: Opponent): Proposal | undefined {
  const seen = schemesSeen(playbook, opponent.id);
  const before = opponent.counted ?? {};
  const fresh = Object.fromEntries(
    Object.entries(seen)
      .map(([id, times]) => [id, Math.max(0, times - (before[id] ?? 0))] as const)
      .filter(([, times]) => times > 0),
  );
  const times = sumOf(fresh);
  if (times === 0) return undefined;
  // What his weights count already makes them weigh more: so it is the same whether one accepts after each game or at the end.
  const strength = beliefStrength + sumOf(before);
  const believed = sharesOf(opponent.schemes ?? {});
  const shares = sharePosterior(believed, strength, fresh);
  const moved = Object.entries(shares).filter(([id, share]) => Math.abs(share - (believed[id] ?? 0)) >= leastMove);
  if (moved.length === 0) return undefined;
  const weights = Object.fromEntries(Object.entries(shares).map(([id, share]) => [id, rounded(share * 100)]));
  const counted = { ...before, ...seen };
  // What was believed before any marks is moved alike: whoever takes those afterwards finds these man-ups in it.
  const unmarked = opponent.before && sharePosterior(sharesOf(opponent.before), strength, fresh);
  const beforeMarks = unmarked && Object.fromEntries(Object.entries(unmarked).map(([id, share]) => [id, share * 100]));
  const listed = Object.entries(fresh).map(
    ([id, count]) => `${schemeName(playbook, id)} ${count === 1 ? 'once' : `${count} times`}`,
  );
  return {
    id: `schemes ${opponent.id}`,
    title: opponent.name,
    says: `In ${countedWords(times, 'chance')} not counted yet they were seen in ${listed.join(', ')}. What you believed weighs as much as ${countedWords(strength, 'chance')}.${unevenWords(playbook, opponent.id)}`,
    changes: moved.map(
      ([id, share]) => `${schemeName(playbook, id)}: ${percent(believed[id] ?? 0)} becomes ${percent(share)}`,
    ),
    edit: (current) =>
      countSchemes(current, opponent.id, { weights, counted, ...(beforeMarks && { before: beforeMarks }) }),
  };
}

/** A caution where schemes are named by how the chance ended: the ones that concede, or stop, then seem to be played more than they are. Empty where they are not. */
function unevenWords({ chances = [] }: Playbook, opponent: string): string {
  const met = chances.filter((chance) => chance.side === 'ours' && chance.opponent === opponent);
  const naming = namingOf(met, (chance) => schemeSeen(chance) !== undefined);
  if (!isSurelyUneven(naming)) return '';
  return ` But what they played is written down for ${namingWords(naming, 'chances without one')}: in the others it may have been something else.`;
}

/** How often each scheme that the playbook knows was named against us by an opponent, in man-ups that are not weighed by marks. */
function schemesSeen(playbook: Playbook, opponent: string): Readonly<Record<string, number>> {
  const seen: Record<string, number> = {};
  for (const chance of playbook.chances ?? []) {
    if (chance.side !== 'ours' || chance.opponent !== opponent || isWeighedByMarks(chance)) continue;
    const scheme = schemeSeen(chance);
    if (scheme === undefined || menOfScheme(playbook, scheme) === undefined) continue;
    seen[scheme] = (seen[scheme] ?? 0) + 1;
  }
  return seen;
}

function sharesOf(weights: Readonly<Record<string, number>>): Readonly<Record<string, number>> {
  const sum = sumOf(weights);
  return Object.fromEntries(Object.entries(weights).map(([id, weight]) => [id, weight / sum]));
}

function sumOf(values: Readonly<Record<string, number>>): number {
  return Object.values(values).reduce((sum, value) => sum + value, 0);
}

/** Four digits: shares stay what they are, and a file can be read. */
function rounded(value: number): number {
  return Math.max(0.01, Math.round(value * 100) / 100);
}
