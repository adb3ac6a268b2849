/** Whose men: the team that works with the tool, and the one that it plays. */
export type TeamSide = 'us' | 'them';

export function otherSide(side: TeamSide): TeamSide {
  return side === 'us' ? 'them' : 'us';
}

/** What an official gives a man for a foul that is served. */
export interface GivenPenalty {
  readonly side: TeamSide;
  /** Jersey number; `null` where nobody wrote it down. */
  readonly man: number | null;
  /** All of it, s, above 0. */
  readonly seconds: number;
  /** The part that no goal ends, s, from 0 to `seconds`. */
  readonly fixedSeconds: number;
}

/** What happens to the box, by seconds of play since the game began: the clock of a penalty runs only while that of the game does. */
export type BoxEvent =
  | {
      readonly kind: 'given';
      readonly at: number;
      readonly penalties: readonly GivenPenalty[];
      /** Both teams fouled before play stopped, or in one dead ball whose order nobody knows. */
      readonly simultaneous: boolean;
    }
  | { readonly kind: 'goal'; readonly at: number; readonly by: TeamSide }
  /** An official lets a man go, or takes a penalty back. `penalty` is its number in the order in which all were given. */
  | { readonly kind: 'letGo'; readonly at: number; readonly penalty: number }
  /** The table has another time for a penalty: so much of it is left, s, above 0. */
  | { readonly kind: 'timeSet'; readonly at: number; readonly penalty: number; readonly left: number };

/** Where a penalty is at. */
export type PenaltyState =
  /** Beside the table, because his team is as short as it may be: its time does not run yet. */
  | 'waiting'
  | 'serving'
  /** All of it is served. */
  | 'served'
  /** A goal or an official ended it. */
  | 'released';

/** One penalty as it stands at a moment. */
export interface BoxedPenalty extends GivenPenalty {
  /** Its number in the order in which all were given, from 0. */
  readonly number: number;
  readonly state: PenaltyState;
  /** Still to be served, s; 0 once it is over. */
  readonly left: number;
  /** Of that the part that no goal ends, s. */
  readonly fixedLeft: number;
  /** When it was over, s of play; `null` before. */
  readonly endedAt: number | null;
}
