import { useMemo } from 'react';
import type { Play } from '../../engine/index.ts';
import {
  type Playbook,
  type PlayEntry,
  parsePlaybook,
  type SchemeEntry,
  serializePlaybook,
} from '../../playbook/index.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { type SchemeProblems, schemeProblems } from './scheme-problems.ts';

/** An own scheme as it stands in the document, and the play that it is tried with. */
export interface SchemeReading {
  /** The playbook with this scheme and this play alone: nothing else is read or tried. */
  readonly alone: Playbook;
  readonly problems: SchemeProblems;
  /** The play that it is tried with; undefined when the playbook has none. */
  readonly entry: PlayEntry | undefined;
  /** Undefined when that play cannot be drawn. */
  readonly play: Play | undefined;
  /** Scheme and play can be simulated. */
  readonly isWhole: boolean;
  /** Why they cannot, when it is not the grid's fault. */
  readonly hindrance: string;
}

export function useSchemeReading(scheme: SchemeEntry, playId: string): SchemeReading {
  const playbook = usePlaybook();
  const { format, version, team, sets, settings, plays } = playbook;
  const entry = plays.find((play) => play.id === playId) ?? plays.find((play) => play.archived !== true) ?? plays[0];
  return useMemo(() => {
    const alone: Playbook = {
      format,
      version,
      team,
      ...(sets && { sets }),
      plays: entry === undefined ? [] : [entry],
      schemes: [scheme],
      ...(settings && { settings }),
    };
    if (entry === undefined) {
      const { diagnostics } = parsePlaybook(serializePlaybook(alone));
      return {
        alone,
        problems: schemeProblems(scheme, diagnostics),
        entry,
        play: undefined,
        isWhole: false,
        hindrance: 'Write a play first: it is then played against this scheme here.',
      };
    }
    const { play, problems, isWhole } = readPlayOf(alone, entry);
    const others = problems.find(({ severity, path }) => severity === 'error' && !path.startsWith('schemes'));
    return {
      alone,
      problems: schemeProblems(scheme, problems),
      entry,
      play,
      isWhole,
      hindrance: others === undefined ? '' : `${others.where === '' ? '' : `${others.where}: `}${others.message}`,
    };
  }, [format, version, team, sets, settings, entry, scheme]);
}
