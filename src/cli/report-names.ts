import { schemeList } from '../engine/index.ts';
import type { Playbook } from '../playbook/index.ts';
import type { ReportNames } from './report-text.ts';

/** Names for reading of one play and of every scheme that the playbook can be tested against. */
export function reportNames(playbook: Playbook, playId: string): ReportNames {
  const builtIn = schemeList.map((scheme) => [scheme.id, scheme.notes.name] as const);
  const own = (playbook.schemes ?? []).map((scheme) => [scheme.id, scheme.name] as const);
  return {
    play: playbook.plays.find((play) => play.id === playId)?.name ?? playId,
    schemes: Object.fromEntries([...builtIn, ...own]),
  };
}
