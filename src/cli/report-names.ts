import { schemeList } from '../engine/index.ts';
import type { Playbook } from '../playbook/index.ts';

/** What a reader needs besides the numbers: ids are for typing, names are for reading. */
export interface ReportNames {
  readonly play: string;
  readonly schemes: Readonly<Record<string, string>>;
}

/** Names for reading of one play and of every scheme that the playbook can be tested against. */
export function reportNames(playbook: Playbook, playId: string): ReportNames {
  const builtIn = schemeList.map((scheme) => [scheme.id, scheme.notes.name] as const);
  const own = (playbook.schemes ?? []).map((scheme) => [scheme.id, scheme.name] as const);
  return {
    play: playbook.plays.find((play) => play.id === playId)?.name ?? playId,
    schemes: Object.fromEntries([...builtIn, ...own]),
  };
}

/** The name of a scheme, or its id when it has none. */
export function schemeName(scheme: string, names: ReportNames): string {
  return names.schemes[scheme] ?? scheme;
}
