import type { Play } from '../../engine/index.ts';
import {
  lineUpFor,
  type Playbook,
  type Practice,
  type PracticeBlock,
  ruleCodeOf,
  schemeName,
  toEnginePlay,
} from '../../playbook/index.ts';
import {
  type DrillStep,
  drawnField,
  drillPictures,
  type Page,
  type PracticeRow,
  practicePlan,
  type SceneLayer,
} from '../../render/index.ts';
import type { PrintedPages } from '../sheets/printed-pages.ts';
import { blockMeasure, blockPoints, blockSetUp, blockTitle, minuteWords, runLines, taughtOf } from './block-words.ts';
import { cutPart } from './cut-part.ts';
import type { LookStand } from './find-practice.ts';
import { drillOf, partPage } from './part-page.ts';
import type { PracticeGround, PracticePagesWishes } from './practice-ground.ts';

/** Of the ground in a small picture so much is shown, so that men and letters are large beside it. */
const smallShare = 0.56;
const smallShape = 0.72;

/**
 * A practice on paper: the plan on one page, then a page for each part of a play. `stands` are what is known of how the looks of its parts come open: a part of which
 * nothing is known is drawn without defenders. Plays that the playbook does not have any more are named by their ids and not drawn.
 */
export function practicePages(
  playbook: Playbook,
  practice: Omit<Practice, 'id'>,
  stands: readonly LookStand[],
  wishes: PracticePagesWishes,
): PrintedPages {
  const field = drawnField(ruleCodeOf(playbook).markings);
  const scheme = (id: string): string => schemeName(playbook, id);
  const ground: PracticeGround = { ...wishes, playbook, practice, stands, field, scheme };
  const plan = practicePlan({
    name: practice.name,
    plays: playNames(playbook, practice),
    team: playbook.team.name,
    level: wishes.level ?? playbook.team.level,
    day: practice.date === undefined ? '' : dayOfDate(practice.date),
    turnout: turnoutWords(practice),
    six: sixWords(ground),
    focus: practice.notes ?? '',
    equipment: equipmentWords(practice),
    rows: rowsOf(ground),
    leftOut: practice.leftOut ?? [],
    paper: wishes.paper,
    made: wishes.made,
  });
  const parts = practice.blocks.flatMap((block): readonly Page[] => {
    const play = playOf(ground, block);
    const page = play === undefined ? undefined : partPage(ground, block, play);
    return page === undefined ? [] : [page];
  });
  return { title: `${practice.name}: practice plan`, pages: [...plan, ...parts] };
}

function rowsOf(ground: PracticeGround): readonly PracticeRow[] {
  const { practice, scheme } = ground;
  let minutes = 0;
  const said = new Set<string>();
  return practice.blocks.map((block, at): PracticeRow => {
    const play = playOf(ground, block);
    const from = clockWords(minutes);
    minutes += block.minutes;
    return {
      from,
      to: clockWords(minutes),
      title: blockTitle(block, play, practice.plays.length > 1),
      measure: blockMeasure(block),
      setUp: blockSetUp(block, practice, scheme),
      runs: play === undefined || block.kind === 'part' ? [] : runLines(block, play, scheme),
      points: blockPoints(block, play).filter((point) => !said.has(point) && said.add(point)),
      // What was said of a look once needs not be said again on the same page.
      why: isSaid(practice.blocks, at) ? '' : (block.why ?? ''),
      // Nor is a note: that the goal is empty goes for all that follows.
      note: practice.blocks.slice(0, at).some(({ note }) => note === block.note) ? '' : (block.note ?? ''),
      scene: play === undefined ? null : rowScene(ground, block, play),
    };
  });
}

/** Whether a block's reason, or one that begins with the same look, stood at a block before it. */
function isSaid(blocks: readonly PracticeBlock[], at: number): boolean {
  const look = (why: string): string => why.slice(0, why.indexOf(':') + 1) || why;
  const { why } = blocks[at]!;
  return why !== undefined && blocks.slice(0, at).some((one) => one.why !== undefined && look(one.why) === look(why));
}

/** A play as it is run on the wished side; undefined for one that is gone or cannot be read. */
function playOf({ playbook, side }: PracticeGround, { play }: PracticeBlock): Play | undefined {
  if (play === undefined || !playbook.plays.some(({ id }) => id === play)) return undefined;
  return toEnginePlay(playbook, play, side);
}

function rowScene(ground: PracticeGround, block: PracticeBlock, play: Play): SceneLayer | null {
  const step = smallStep(ground, block, play);
  return step === undefined ? null : drillPictures([step], ground.field, smallShare, smallShape)[0]!;
}

/** The one moment that a small picture shows: the look that is run first, the end of a part. */
function smallStep(ground: PracticeGround, block: PracticeBlock, play: Play): DrillStep | undefined {
  switch (block.kind) {
    case 'dummy':
      return lookStep(block, play);
    case 'part':
      return drillOf(ground, block, play)?.steps.at(-1)?.drill;
    case 'talk':
    case 'walk':
    case 'keeper':
    case 'skeleton':
    case 'live':
    case 'situation':
    case 'water':
      return undefined;
    default:
      return exhaustive(block.kind);
  }
}

/** The whole unit in the step of the look that is run first. */
function lookStep({ runs }: PracticeBlock, play: Play): DrillStep | undefined {
  const [from, to = from] = runs?.[0]?.look ?? [];
  const look = from === undefined || to === undefined ? undefined : taughtOf(play, from, to);
  if (look === undefined) return undefined;
  const all = play.spots.map(({ id }) => id);
  const step = cutPart(play, look, all).steps.find(({ beat, read }) => beat === look.beat || read !== null);
  if (step === undefined) return undefined;
  const men = all.map((spot) => ({ spot, at: step.before.places[spot]! }));
  return { men, ball: step.before.ball, actions: step.actions, defenders: [] };
}

/** "Lantern, Ferry": those that the plan's name leaves out, which a coach may have written anew. */
function playNames({ plays }: Playbook, practice: Omit<Practice, 'id'>): string {
  const named = practice.plays.map((id) => plays.find((play) => play.id === id)?.name ?? id);
  return named.filter((name) => !practice.name.toLowerCase().includes(name.toLowerCase())).join(', ');
}

/** The first unit of the first play, by spots and numbers; names stay at home. */
function sixWords({ playbook, practice, side }: PracticeGround): string {
  const first = practice.plays.find((id) => playbook.plays.some((play) => play.id === id));
  if (first === undefined) return '';
  const play = toEnginePlay(playbook, first, side);
  const { players } = lineUpFor(playbook, play);
  return `First six: ${players.map(({ number }, at) => `${play.spots[at]!.id} ${number}`).join(', ')}`;
}

function turnoutWords({ minutes, players, keeper }: Omit<Practice, 'id'>): string {
  const goal = keeper === false ? 'no goalkeeper' : 'a goalkeeper';
  return `${minuteWords(minutes)}, ${players} players and ${goal}`;
}

function equipmentWords({ players, keeper, blocks }: Omit<Practice, 'id'>): string {
  const defense = blocks.some(({ kind }) => ['dummy', 'part', 'live', 'situation'].includes(kind));
  const goal = keeper === false ? 'goal, with a cover' : 'goal';
  return [
    goal,
    'balls, ten or more',
    'cones for six spots',
    'stopwatch and whistle',
    ...(defense ? [`pinnies for ${Math.max(2, Math.min(5, players - 6))}`] : []),
    'water, first aid, AED.',
  ].join('; ');
}

/** Minutes from the beginning: "2:30". */
export function clockWords(minutes: number): string {
  const whole = Math.floor(minutes);
  return `${whole}:${String(Math.round((minutes - whole) * 60)).padStart(2, '0')}`;
}

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "10 March 2026" for "2026-03-10": no clock and no time zone is asked. */
function dayOfDate(date: string): string {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return `${day} ${months[month - 1] ?? ''} ${year}`;
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
