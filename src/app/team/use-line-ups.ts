import { useMemo } from 'react';
import type { Play } from '../../engine/index.ts';
import {
  lineUps,
  type Playbook,
  type PlayEntry,
  type Side,
  type SideLineUp,
  toEnginePlay,
} from '../../playbook/index.ts';
import { useScreen } from '../play/screen-state.ts';
import { useTeam } from './team-state.ts';

/** The chosen play with its best six for both sides; undefined when the playbook has no play. */
export interface ChosenLineUps {
  /** The playbook that they are of: each number once on its roster. */
  readonly playbook: Playbook;
  readonly play: PlayEntry;
  readonly sides: readonly SideLineUp[];
  /** The play of the engine on each side, for its spots; undefined when it cannot be read as it stands. */
  readonly spotsOf: (side: Side) => Play['spots'];
  /** Numbers that two men wear: only the first of them can be placed. */
  readonly twice: readonly number[];
}

export function useLineUps(playbook: Playbook): ChosenLineUps | undefined {
  const here = useTeam((state) => state.play);
  // Until another is chosen here, the play that the coach has just worked on.
  const worked = useScreen((state) => state.play);
  const chosen = here ?? worked;
  return useMemo(() => {
    const current = playbook.plays.filter(({ archived }) => archived !== true);
    const play = playbook.plays.find(({ id }) => id === chosen) ?? current[0] ?? playbook.plays[0];
    if (play === undefined) return undefined;
    const { one, twice } = oneEach(playbook);
    const sides = lineUps(one, play.id);
    return {
      playbook: one,
      play,
      sides,
      twice,
      spotsOf: (side) => (sides.some(({ kind }) => kind === 'unread') ? [] : toEnginePlay(one, play.id, side).spots),
    };
  }, [playbook, chosen]);
}

// While a number is typed two men may wear the same one, and a line-up tells men apart by their numbers.
function oneEach(playbook: Playbook): { readonly one: Playbook; readonly twice: readonly number[] } {
  const { roster } = playbook.team;
  const isFirst = (index: number): boolean =>
    roster.findIndex(({ number }) => number === roster[index]!.number) === index;
  const kept = roster.filter((_, i) => isFirst(i));
  if (kept.length === roster.length) return { one: playbook, twice: [] };
  const twice = [...new Set(roster.flatMap(({ number }, i) => (isFirst(i) ? [] : [number])))];
  return { one: { ...playbook, team: { ...playbook.team, roster: kept } }, twice };
}
