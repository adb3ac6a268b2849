import type { DecisionTable } from './decision-table.ts';
import type { RuleList } from './rule-list.ts';

/** One chance as it is written down by hand: each look with the cues that hold at it and what each action comes to there. */
export interface WrittenChance {
  /** How likely it is; all together more than nothing. */
  readonly weight: number;
  readonly looks: readonly WrittenLook[];
  readonly goOn: number;
}

export interface WrittenLook {
  /** Bit i for cue i. */
  readonly cues: number;
  readonly worths: readonly number[];
}

/** The decision table of some chances, of as many cues as are said. */
export function tableOfChances(cues: number, chances: readonly WrittenChance[]): DecisionTable {
  const looks = chances.flatMap((chance) => chance.looks);
  const first_byChance = new Int32Array(chances.length + 1);
  chances.forEach((chance, at) => {
    first_byChance[at + 1] = first_byChance[at]! + chance.looks.length;
  });
  return {
    actions: looks[0]!.worths.length,
    cues,
    first_byChance,
    weight_byChance: Float64Array.from(chances, ({ weight }) => weight),
    cues_byMoment: Int32Array.from(looks, (look) => look.cues),
    worth_byMomentAction: Float32Array.from(looks.flatMap(({ worths }) => worths)),
    goOn_byChance: Float32Array.from(chances, ({ goOn }) => goOn),
  };
}

/** A list in words: cues by their names, `not` before one that must not hold, actions by theirs. */
export function listInWords(
  { rules, lastResort }: RuleList,
  cues: readonly string[],
  actions: readonly string[],
): readonly string[] {
  const nameOf = (action: number): string => actions[action] ?? 'go on';
  const said = rules.map(({ looksAt, mustHold, action }) => {
    const looked = cues.flatMap((cue, at) => {
      if (((looksAt >> at) & 1) === 0) return [];
      return [((mustHold >> at) & 1) === 1 ? cue : `not ${cue}`];
    });
    return `${looked.sort().join(' and ')}: ${nameOf(action)}`;
  });
  return [...said, `else: ${nameOf(lastResort)}`];
}
