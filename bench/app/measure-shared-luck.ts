import { compareGoals, compileChance, createChanceState, runTrials, type Tally } from '../../src/engine/index.ts';
import {
  demoPlaybook,
  groundOf,
  moveSpot,
  type Playbook,
  type PlayEntry,
  playSpots,
} from '../../src/playbook/index.ts';
import { buildMatchup, manDownSchemeIds } from '../../src/worker/index.ts';
import { percentile } from './percentile.ts';

/** How far an edited play and the play before it share their luck, trial by trial: medians over the edits. */
export interface SharedLuck {
  /** How far one man was moved, yards. */
  readonly moved: number;
  readonly edits: number;
  readonly trials: number;
  /** Against one scheme: correlation of the odds, and half the width of the interval of the change, goals a chance. */
  readonly one: { readonly correlation: number; readonly halfWidth: number };
  /** The same of all schemes together. */
  readonly all: { readonly correlation: number; readonly halfWidth: number };
}

const seed = 20_260;
/** Chances of each scheme: what the screen has counted some two seconds after an edit. */
const trials = 240;

/** Moves each man of the demo's first play this far, one at a time, and compares each play with the one before. */
export function measureSharedLuck(moved: number): SharedLuck {
  const play = demoPlaybook.plays[0]!;
  const schemes = manDownSchemeIds(demoPlaybook);
  const before = talliesOf(demoPlaybook, play, schemes);
  const edits = editsOf(play, moved).map((edited) => {
    const after = talliesOf({ ...demoPlaybook, plays: [edited] }, edited, schemes);
    return {
      ones: after.map((tally, at) => luckOf([tally], [before[at]!])),
      all: luckOf(after, before),
    };
  });
  return {
    moved,
    edits: edits.length,
    trials,
    one: middle(edits.flatMap(({ ones }) => ones)),
    all: middle(edits.map(({ all }) => all)),
  };
}

type Luck = SharedLuck['one'];

function luckOf(after: readonly Tally[], before: readonly Tally[]): Luck {
  const { correlation, difference } = compareGoals(after, before);
  return { correlation, halfWidth: (difference.high - difference.low) / 2 };
}

function middle(lucks: readonly Luck[]): Luck {
  const of = (part: (luck: Luck) => number): number => percentile(lucks.map(part), 0.5);
  return { correlation: of(({ correlation }) => correlation), halfWidth: of(({ halfWidth }) => halfWidth) };
}

/** Each man once, toward another side each time; what the rules refuse is left out. */
function editsOf(play: PlayEntry, moved: number): readonly PlayEntry[] {
  const ground = groundOf({ ...demoPlaybook, plays: [] });
  return playSpots(play, ground).flatMap(({ id, at }, index) => {
    const angle = (2 * Math.PI * index) / 6;
    const to = { x: at.x + moved * Math.cos(angle), y: at.y + moved * Math.sin(angle) };
    const edit = moveSpot(play, ground, id, to);
    return edit.kind === 'edited' ? [edit.play] : [];
  });
}

function talliesOf(playbook: Playbook, { id }: PlayEntry, schemes: readonly string[]): readonly Tally[] {
  return schemes.map((scheme) => {
    const built = buildMatchup(playbook, { play: id, scheme, side: 'right', penalty: null, level: null });
    if (built.kind === 'refused') throw new RangeError(built.reason);
    const model = compileChance(built.matchup, seed);
    return runTrials(model, createChanceState(model), 0, trials);
  });
}
