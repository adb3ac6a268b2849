/**
 * What one carrier could have done with the ball in some chances, and what came of each, by replay.
 *
 * A chance has one moment or more, in the order of time: those at which he looks round and could act. At each he sees some cues, and each
 * action has a worth: goals to the chance's end when he acts then, and everything that does not depend on him goes as it went. When he
 * acts at none, the play goes on as it is written.
 */
export interface DecisionTable {
  /** Actions that he can choose from, numbered from 0. */
  readonly actions: number;
  /** Cues of the vocabulary, numbered from 0; at most 30. */
  readonly cues: number;
  /** Where the moments of each chance begin; one number more than there are chances, the last is how many moments there are. */
  readonly first_byChance: Int32Array;
  /** What each chance counts for; more than nothing in all. */
  readonly weight_byChance: Float64Array;
  /** With which luck each was played: chances of one trial against several schemes share theirs. Each has its own when absent. */
  readonly luck_byChance?: Int32Array;
  /** Cues that hold, bit i for cue i. */
  readonly cues_byMoment: Int32Array;
  /** Goals, action `a` at moment `m`: m * actions + a. */
  readonly worth_byMomentAction: Float32Array;
  /** Goals when he leaves it to the play. */
  readonly goOn_byChance: Float32Array;
}

/** Chances of a table. */
export function chancesOf({ first_byChance }: DecisionTable): number {
  return first_byChance.length - 1;
}

/** Throws a RangeError when the parts of a table do not fit one another. */
export function checkDecisionTable(table: DecisionTable): void {
  const chances = chancesOf(table);
  const moments = table.first_byChance[chances] ?? 0;
  const says = (what: string, found: number, expected: string): never => {
    throw new RangeError(`invalid decision table: ${what} ${found} (expected ${expected})`);
  };
  if (chances < 1) says('chances', chances, 'at least one');
  if (!(table.cues >= 0 && table.cues <= 30)) says('cues', table.cues, '0 to 30');
  if (!(table.actions >= 1)) says('actions', table.actions, 'at least one');
  for (let chance = 0; chance < chances; chance++) {
    const count = table.first_byChance[chance + 1] - table.first_byChance[chance];
    if (count < 1) says(`moments of chance ${chance}:`, count, 'at least one');
  }
  if (table.weight_byChance.length !== chances) says('weights', table.weight_byChance.length, `${chances}`);
  const lucks = table.luck_byChance?.length ?? chances;
  if (lucks !== chances) says('lucks', lucks, `${chances}`);
  const weight = table.weight_byChance.reduce((sum, each) => sum + each, 0);
  if (!(weight > 0)) says('weights: in all', weight, 'more than nothing');
  if (table.goOn_byChance.length !== chances) says('worths of going on', table.goOn_byChance.length, `${chances}`);
  if (table.cues_byMoment.length !== moments) says('moments with cues', table.cues_byMoment.length, `${moments}`);
  const worths = table.worth_byMomentAction.length;
  if (worths !== moments * table.actions) says('worths', worths, `${moments * table.actions}`);
}
