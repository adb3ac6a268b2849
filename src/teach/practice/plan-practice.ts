import { limits, type Practice, type PracticeBlock } from '../../playbook/index.ts';
import { practiceKindWords, practiceSituationWords } from '../../render/index.ts';
import {
  type BlockPlan,
  blockPlan,
  type PlannedPlay,
  type PracticeSession,
  type PracticeTurnout,
  type WantedBlock,
} from './block-plan.ts';
import { minuteWords } from './block-words.ts';
import type { PlayFindings } from './find-practice.ts';
import { fitBlocks } from './fit-blocks.ts';
import { byWorth, costsGoals, worthyLooks } from './look-worth.ts';
import { repsIn } from './practice-times.ts';
import { drilledLooks, dummyRuns, liveRuns, schemesShown, skeletonRuns } from './share-reps.ts';
import {
  costWords,
  focusWords,
  insteadWords,
  nothingWords,
  type SchemeWords,
  whyLook,
  whyNew,
  whyWhole,
} from './why-words.ts';

/** What a practice is wished to be. */
export interface PracticeWishes extends PracticeTurnout {
  readonly name: string;
  /** YYYY-MM-DD. */
  readonly date?: string;
  /** How long there is; above 0. */
  readonly minutes: number;
  /** Which of two in a week: the first when absent. */
  readonly session?: PracticeSession;
  readonly scheme: SchemeWords;
}

/** What stands on each block with shots when nobody is in the goal or he had no time to warm up, and on the first of them when he comes warm. */
export const openGoalNote = 'No goalkeeper: the goal is empty or covered, and nobody stands in it.';
export const warmKeeperNote = 'The goalkeeper comes warm.';
export const coldKeeperNote = 'No shot yet: the goalkeeper is not warm. The rep ends with the catch.';
/** What the unit does while its goalkeeper warms up. */
export const keeperNote = 'The others drink. Nobody stands behind the goal.';

/**
 * A practice plan: what is worth most gets most of the time that there is, and everything that is taught is run at least once. More time never gives less of anything;
 * what does not fit is left out, the last first, and told. RangeError without a play.
 */
export function planPractice(plays: readonly PlannedPlay[], wishes: PracticeWishes): Omit<Practice, 'id'> {
  if (plays.length === 0) throw new RangeError('no play to practise (expected one or more)');
  const { session = 'first' } = wishes;
  const plan = blockPlan(plays, wishes, session);
  const halves = Math.floor(2 * wishes.minutes);
  const fit = fitBlocks(halves, plan.core, plan.more);
  const timed = [...plan.core, ...plan.more].map((block, at) => ({ block, halves: [...fit.core, ...fit.more][at]! }));
  const kept = timed.filter((one) => one.halves > 0);
  const isWarm = wishes.keeper === 'warm' || kept.some(({ block }) => block.kind === 'keeper');
  const filled = kept
    .map(({ block, halves }) => filledBlock(block, halves / 2, plays, { ...wishes, isWarm }))
    .sort((a, b) => placeOf(a, session) - placeOf(b, session));
  const blocks = wishes.keeper === 'warm' ? sayingOfWarmth(filled) : filled;
  const { name, date, minutes, players, keeper } = wishes;
  return {
    name,
    ...(date !== undefined && { date }),
    minutes,
    players,
    ...(keeper === 'none' && { keeper: false }),
    plays: plays.map(({ play }) => play.id),
    blocks,
    leftOut: leftOut(plan, timed, plays, fit.free).map((words) => words.slice(0, limits.why)),
    notes: plays
      .map(({ play, findings }) => {
        const words = focusWords(findings, drilledLooks(findings, wishes.level));
        return plays.length > 1 ? `${play.name}: ${words}` : words;
      })
      .join(' ')
      .slice(0, limits.note),
  };
}

/** In the order of the session; blocks of one kind stay as they are, and water comes before the first block with a defense. */
function placeOf({ kind }: PracticeBlock, session: PracticeSession): number {
  const order = orders[session];
  const place = (one: PracticeBlock['kind']): number => order.indexOf(one);
  return kind === 'water' ? Math.min(place('dummy'), place('live')) - 0.5 : place(kind);
}

/** The goalkeeper warms up before the first shot, which is one at the end of a dummy rep. Where the play is known it goes live first, so that all see what is to be mended. */
const orders: Readonly<Record<PracticeSession, readonly PracticeBlock['kind'][]>> = {
  first: ['talk', 'walk', 'skeleton', 'keeper', 'dummy', 'part', 'live', 'situation'],
  second: ['talk', 'walk', 'skeleton', 'keeper', 'live', 'dummy', 'part', 'situation'],
};

interface Filling extends PracticeWishes {
  /** Whether the goalkeeper is warm when the shooting begins. */
  readonly isWarm: boolean;
}

function filledBlock(
  wanted: WantedBlock,
  minutes: number,
  plays: readonly PlannedPlay[],
  filling: Filling,
): PracticeBlock {
  const { kind, at } = wanted;
  const planned = plays[at ?? 0]!;
  const reps = repsIn(kind, minutes);
  const block = { kind, minutes, ...(at !== null && { play: planned.play.id }), ...(reps > 0 && { reps }) };
  return { ...block, ...insideOf(wanted, reps, planned, filling), ...noteOf(kind, filling) };
}

/** What a block goes through, and why it is there. */
function insideOf(
  { kind, part, situation }: WantedBlock,
  reps: number,
  { findings }: PlannedPlay,
  { level, scheme }: Filling,
): Partial<PracticeBlock> {
  switch (kind) {
    case 'talk':
      return findings.newRead === null ? {} : { why: whyNew(findings.newRead) };
    case 'skeleton':
      return {
        runs: [...skeletonRuns(findings, reps)],
        why:
          worthyLooks(findings.looks).length > 0
            ? 'Every look that is taught is run once at least; those that carry most, most.'
            : 'Every look that is taught, as evenly as the reps go, so that the play is known; none is worth more of them here.',
      };
    case 'dummy':
      return dummyInside(findings, level, reps, scheme);
    case 'part':
      if (part === undefined) return {};
      return {
        scheme: part.scheme,
        spots: [...part.men],
        runs: [{ look: lookSpots(part.look), scheme: part.scheme, reps: Math.max(1, reps) }],
        why: whyLook(part.look, findings.goals, scheme),
      };
    case 'live':
      return { runs: [...liveRuns(findings, level, reps)], why: liveWhy(findings, level, scheme) };
    case 'situation':
      return { ...(situation !== undefined && { situation }), ...schemeOf(findings, level) };
    case 'walk':
    case 'keeper':
    case 'water':
      return {};
    default:
      return exhaustive(kind);
  }
}

function dummyInside(
  findings: PlayFindings,
  level: Filling['level'],
  reps: number,
  scheme: SchemeWords,
): Partial<PracticeBlock> {
  const runs = [...dummyRuns(findings, level, reps)];
  const drilled = drilledLooks(findings, level);
  const words = drilled.slice(0, 2).map((look) => whyLook(look, findings.goals, scheme, schemeOfRun(runs, look)));
  if (worthyLooks(findings.looks).length > 0) return { runs, why: words[0]! };
  return { runs, why: [whyWhole(findings.goals), ...words.slice(0, 1)].join(' ') };
}

function schemeOfRun(
  runs: NonNullable<PracticeBlock['runs']>,
  { from, to }: { readonly from: string; readonly to: string },
): string | undefined {
  return runs.find(({ look = [] }) => look[0] === from && (look[1] ?? from) === to)?.scheme;
}

function liveWhy(findings: PlayFindings, level: Filling['level'], scheme: SchemeWords): string {
  const shown = schemesShown(findings, level);
  const [first, second] = shown;
  if (first === undefined) return '';
  if (second === undefined) return `${scheme(first.scheme)} is what they play.`;
  if (first.weight === shown.at(-1)!.weight)
    return `Shown as evenly as the reps go, because each is as likely: ${scheme(first.scheme)} first.`;
  return `Each is shown once at least, and the likelier it is, the more: ${scheme(first.scheme)} first.`;
}

function schemeOf(findings: PlannedPlay['findings'], level: Filling['level']): Pick<PracticeBlock, 'scheme'> {
  const [first] = schemesShown(findings, level);
  return first === undefined ? {} : { scheme: first.scheme };
}

function lookSpots({ from, to }: { readonly from: string; readonly to: string }): string[] {
  return from === to ? [from] : [from, to];
}

function noteOf(kind: PracticeBlock['kind'], { keeper, isWarm, players }: Filling): Pick<PracticeBlock, 'note'> {
  const standIns = kind === 'dummy' && players < 11 ? `Coaches stand in for ${11 - players} of the defenders. ` : '';
  const goal = hasShots(kind) ? goalNote(keeper, isWarm) : '';
  const words = kind === 'keeper' ? keeperNote : `${standIns}${goal}`.trim();
  return words === '' ? {} : { note: words };
}

function goalNote(keeper: Filling['keeper'], isWarm: boolean): string {
  if (keeper === 'none') return openGoalNote;
  return isWarm ? '' : coldKeeperNote;
}

/** The blocks with the word that he comes warm at the first of them in which he is shot at: it goes for all that follow. */
function sayingOfWarmth(blocks: readonly PracticeBlock[]): PracticeBlock[] {
  const first = blocks.findIndex(({ kind }) => hasShots(kind));
  return blocks.map((block, at) =>
    at === first ? { ...block, note: [block.note ?? '', warmKeeperNote].join(' ').trim() } : block,
  );
}

/** Whether somebody shoots at the goalkeeper of the play; in a skeleton the goal is empty. */
function hasShots(kind: PracticeBlock['kind']): boolean {
  return ['dummy', 'part', 'live', 'situation'].includes(kind);
}

/** What there was no time for, what cannot be done, what is not worth doing, and what time is left over. */
function leftOut(
  { cannot }: BlockPlan,
  timed: readonly { readonly block: WantedBlock; readonly halves: number }[],
  plays: readonly PlannedPlay[],
  free: number,
): readonly string[] {
  const noTime = timed.filter(({ block, halves }) => halves === 0 && block.kind !== 'water' && block.kind !== 'keeper');
  const several = plays.length > 1;
  const names = noTime.map(({ block }) => {
    const play = several && block.at !== null ? ` of ${plays[block.at]!.play.name}` : '';
    const look = block.part === undefined ? '' : ` (${block.part.look.from} to ${block.part.look.to})`;
    const what =
      block.situation === undefined ? practiceKindWords[block.kind] : practiceSituationWords[block.situation];
    return `${what}${play}${look}`;
  });
  const costly = plays.flatMap(({ findings }) => byWorth(findings.looks.filter(costsGoals)).map(costWords));
  const idle = plays.filter(({ findings }) => worthyLooks(findings.looks).length === 0);
  const beside = plays.filter((one) => !idle.includes(one) && carriesLittle(one.findings));
  return [
    ...idle.flatMap(({ play, findings }) => [nothingWords(play.name, findings), ...insteadWords(findings)]),
    ...beside.map(
      ({ play }) =>
        `Most of what ${play.name} makes against these schemes comes beside what it teaches: look in Play where its goals come from.`,
    ),
    ...(names.length === 0 ? [] : [`No time: ${names.join(', ')}.`]),
    ...cannot,
    ...costly,
    ...(free === 0 ? [] : [`${minuteWords(free / 2)} to spare: too short for what would come next.`]),
  ];
}

/** Where the taught looks together carry less than this share of the goals, these come from elsewhere. */
const littleShare = 0.25;

function carriesLittle({ looks, goals }: PlannedPlay['findings']): boolean {
  const carried = looks.filter(({ isTaught }) => isTaught).reduce((sum, { carries }) => sum + carries.mean, 0);
  return carried < littleShare * goals.mean;
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
