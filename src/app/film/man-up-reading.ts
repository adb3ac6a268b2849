import type { Playbook } from '../../playbook/index.ts';
import { percent } from '../../render/index.ts';
import type { ScoutQuestion } from '../../teach/index.ts';
import { schemeInfo } from '../opponents/scheme-info.ts';
import type { BeliefNews } from './use-belief.ts';

/** Which scheme each man-up looks like by its own marks, in a few words, by its id. */
export function readingsOf(
  playbook: Playbook,
  { schemes }: ScoutQuestion,
  news: BeliefNews,
): ReadonlyMap<string, string> {
  if (news.kind !== 'found') return new Map();
  return new Map(
    news.manUps.flatMap(({ chance }, at) => {
      const shares = news.belief.manUps[at]?.share_byScheme ?? [];
      const most = shares.indexOf(Math.max(...shares));
      const id = schemes[most]?.id;
      return id === undefined ? [] : [[chance.id, words(schemeInfo(playbook, id)?.name ?? id, shares[most]!)]];
    }),
  );
}

function words(name: string, share: number): string {
  if (share >= 0.9) return `Almost surely ${name}, ${percent(share)}`;
  return share >= 0.6 ? `Looks like ${name}, ${percent(share)}` : `Not clear; likeliest ${name}, ${percent(share)}`;
}
