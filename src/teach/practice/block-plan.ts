import type { Level, Play } from '../../engine/index.ts';
import type { PracticeKind, PracticeSituation } from '../../playbook/index.ts';
import { menOfPart, partSizes } from './cut-part.ts';
import type { PlayFindings } from './find-practice.ts';
import type { BlockTime } from './fit-blocks.ts';
import { type LookWorth, worthOfLook, worthyLooks } from './look-worth.ts';
import { minutesFor, practiceTimes } from './practice-times.ts';

/** A play that is practised, as the engine has it, with what was found out about it. */
export interface PlannedPlay {
  readonly play: Play;
  readonly findings: PlayFindings;
}

/** Who comes, and how old they are. */
export interface PracticeTurnout {
  /** Field players. */
  readonly players: number;
  readonly keeper: KeeperTurnout;
  readonly level: Level;
}

/** Whether a goalkeeper comes: warm, because this is a stretch of a longer practice or somebody shoots at him meanwhile; or cold, so that he warms up in it. */
export type KeeperTurnout = 'none' | 'warm' | 'cold';

/** A play is taught in the first session of a week, and tried live in the second. */
export type PracticeSession = 'first' | 'second';

/** A block before anybody knows how much time it gets. */
export interface WantedBlock extends BlockTime {
  readonly kind: PracticeKind;
  /** Number of the play; `null` for what is no play's own. */
  readonly at: number | null;
  readonly part?: WantedPart;
  readonly situation?: PracticeSituation;
}

export interface WantedPart {
  readonly look: LookWorth;
  readonly men: readonly string[];
  readonly scheme: string;
}

/** What a practice is made of, and what cannot be done by those who come, each with the reason. */
export interface BlockPlan {
  readonly core: readonly WantedBlock[];
  readonly more: readonly WantedBlock[];
  readonly cannot: readonly string[];
}

/** A unit, and with a defense one man down. */
const unit = 6;
const sides = 11;
/** Further parts of one play: more than that nobody has time for. */
const mostParts = 3;
/** Below this a young level begins (numbers of children's memory; USA Lacrosse's youth rules end there too). */
export const youngLevels: readonly Level[] = ['8U', '10U', '12U', '14U'];

/**
 * The blocks of a practice in the order in which they get time. In the first session of the first play all that teaches it, with one part and one situation; then what the other plays need;
 * then further parts and water. In the second the play is run once more and goes live at once, with each situation; what taught it comes last. What too few players come for is not there,
 * and told.
 */
export function blockPlan(
  plays: readonly PlannedPlay[],
  turnout: PracticeTurnout,
  session: PracticeSession = 'first',
): BlockPlan {
  const { core, more } = session === 'first' ? firstSession(plays, turnout) : secondSession(plays, turnout);
  return { ...withWater(core, more, turnout, plays), cannot: refusals(turnout) };
}

type Blocks = Omit<BlockPlan, 'cannot'>;

function firstSession(plays: readonly PlannedPlay[], turnout: PracticeTurnout): Blocks {
  const { players } = turnout;
  const core: WantedBlock[] = [];
  const more: WantedBlock[] = [];
  if (players >= unit) core.push(wanted('talk', 0, plays));
  for (const [at, planned] of plays.entries()) {
    if (players >= unit) core.push(wanted('walk', at, plays), skeleton(at, planned, plays), wanted('dummy', at, plays));
    const parts = partsOf(planned, turnout).map((part) => partBlock(part, at, planned, plays));
    if (at === 0) core.push(...liveBlocks(at, plays, turnout), ...parts.slice(0, 1));
    else more.push(...liveBlocks(at, plays, alreadyWarm(turnout)), ...parts.slice(0, 1));
    if (at === 0 && players >= sides) core.push({ ...wanted('situation', at, plays), situation: 'lastTen' });
    more.push(...parts.slice(1));
  }
  return { core, more };
}

/** Nothing new: the play once at full speed, then live and in the situations of a game; parts and dummy for what did not sit. */
function secondSession(plays: readonly PlannedPlay[], turnout: PracticeTurnout): Blocks {
  const { players } = turnout;
  const core: WantedBlock[] = [];
  const more: WantedBlock[] = [];
  for (const [at, planned] of plays.entries()) {
    const all = players >= unit ? [skeleton(at, planned, plays)] : [];
    const situations = (['lastTen', 'restart', 'flagDown'] as const).map((situation) => ({
      ...wanted('situation', at, plays),
      situation,
    }));
    const parts = partsOf(planned, turnout).map((part) => partBlock(part, at, planned, plays));
    core.push(...all, ...liveBlocks(at, plays, at === 0 ? turnout : alreadyWarm(turnout)));
    if (players >= sides) core.push(...situations.slice(0, at === 0 ? 2 : 1));
    core.push(...parts.slice(0, 1));
    if (players >= sides && at === 0) more.push(...situations.slice(2));
    if (players >= unit) more.push(wanted('dummy', at, plays));
    more.push(...parts.slice(1));
  }
  return { core, more };
}

/** Where a goalkeeper warms up the others drink meanwhile; where none comes they get their water before anything more begins. */
function withWater(
  core: readonly WantedBlock[],
  more: readonly WantedBlock[],
  { players, keeper }: PracticeTurnout,
  plays: readonly PlannedPlay[],
): Blocks {
  const water = wanted('water', null, plays);
  if (keeper === 'none' && players >= unit) return { core: [...core, water], more };
  return { core, more: core.length > 0 ? [...more, water] : more };
}

/** He is warm by the second play. */
function alreadyWarm(turnout: PracticeTurnout): PracticeTurnout {
  return { ...turnout, keeper: turnout.keeper === 'none' ? 'none' : 'warm' };
}

function refusals({ players, keeper }: PracticeTurnout): readonly string[] {
  return [
    ...(players < unit ? [`The whole play: it needs six, and ${players} come.`] : []),
    ...(players < sides ? [`Live 6 v 5 and situations: they need eleven field players, and ${players} come.`] : []),
    ...(players < 2 * partSizes.least - 1 ? [`Parts: 3 v 2 needs five, and ${players} come.`] : []),
    ...(keeper !== 'none' ? [] : ['Shots at a goalkeeper: none comes. The goal is empty or covered.']),
  ];
}

/** The goalkeeper is warm before the first live shot, so his warm-up gets its time together with it. */
function liveBlocks(
  at: number,
  plays: readonly PlannedPlay[],
  { players, keeper }: PracticeTurnout,
): readonly WantedBlock[] {
  // Parts end with a shot too.
  if (players < sides)
    return keeper === 'cold' && players >= 2 * partSizes.least - 1 ? [wanted('keeper', null, plays)] : [];
  const live = wanted('live', at, plays);
  return keeper === 'cold' ? [{ ...wanted('keeper', null, plays), withNext: true }, live] : [live];
}

function skeleton(at: number, { findings }: PlannedPlay, plays: readonly PlannedPlay[]): WantedBlock {
  // Everything that is taught is run at least once.
  const needed = 2 * minutesFor('skeleton', findings.looks.filter(({ isTaught }) => isTaught).length);
  const block = wanted('skeleton', at, plays);
  const least = Math.max(block.least, needed);
  return { ...block, least, usual: Math.max(least, block.usual), most: Math.max(least, block.most) };
}

function wanted(kind: PracticeKind, at: number | null, plays: readonly PlannedPlay[]): WantedBlock {
  const { least, usual, most, share } = practiceTimes[kind];
  const worth = share * playWorth(plays[at ?? 0]);
  return { kind, at, least: 2 * least, usual: 2 * usual, most: 2 * most, worth };
}

/** What there is to be had from a play's looks; never quite nothing, so that blocks of a play without any keep their order. */
function playWorth(planned: PlannedPlay | undefined): number {
  const all = (planned?.findings.looks ?? []).reduce((sum, look) => sum + worthOfLook(look), 0);
  return Math.max(0.01, all);
}

/** The worthiest taught looks of which it was seen how they come open, with the men that they need; none where none is worth reps. */
function partsOf({ play, findings }: PlannedPlay, { players }: PracticeTurnout): readonly WantedPart[] {
  const most = Math.min(partSizes.most, Math.floor((players + 1) / 2));
  if (most < partSizes.least) return [];
  return worthyLooks(findings.looks)
    .flatMap((look) => {
      const found = findings.stands.find(({ from, to }) => from === look.from && to === look.to);
      if (found === undefined) return [];
      const { scheme, opener } = found.stand;
      return [{ look, scheme, men: menOfPart(play, look, opener, most) }];
    })
    .slice(0, mostParts);
}

function partBlock(part: WantedPart, at: number, planned: PlannedPlay, plays: readonly PlannedPlay[]): WantedBlock {
  const block = wanted('part', at, plays);
  const share = worthOfLook(part.look) / playWorth(planned);
  return { ...block, part, worth: (block.worth * (1 + share)) / 2 };
}
