import type { Order, Play } from '../../engine/index.ts';
import type { PracticeBlock } from '../../playbook/index.ts';
import {
  actionWords,
  type DrillStep,
  drillPictures,
  type Page,
  type PartSheet,
  practicePart,
  triggerWords,
} from '../../render/index.ts';
import { blockMeasure, blockPoints, partName, runDone, taughtOf } from './block-words.ts';
import { cutPart, type PartStep, type PlayPart } from './cut-part.ts';
import type { PartStand } from './part-stand.ts';
import type { PracticeGround } from './practice-ground.ts';
import { lookDone } from './why-words.ts';

/** A part as it is drawn: its steps with the defenders who matter. */
export interface DrawnPart {
  readonly part: PlayPart;
  readonly stand: PartStand | undefined;
  readonly steps: readonly { readonly step: PartStep; readonly drill: DrillStep }[];
}

/** The part of a block; undefined when the block is none, or the play does not teach its look any more. */
export function drillOf({ stands }: PracticeGround, block: PracticeBlock, play: Play): DrawnPart | undefined {
  const [from, to = from] = block.runs?.[0]?.look ?? [];
  const men = block.spots ?? [];
  const look = from === undefined || to === undefined ? undefined : taughtOf(play, from, to);
  if (block.kind !== 'part' || look === undefined || !men.includes(look.from) || !men.includes(look.to))
    return undefined;
  const part = cutPart(play, look, men);
  const known = stands.find((one) => one.play === block.play && one.from === look.from && one.to === look.to);
  const stand = known?.stand.scheme === block.scheme ? known?.stand : undefined;
  let ball = part.men[0]!;
  const steps = part.steps.map((step) => {
    const drill = { men: placesOf(step, part), ball, actions: step.actions, defenders: defendersAt(stand, step, part) };
    for (const action of step.actions) if (action.kind === 'pass') ball = action.to;
    return { step, drill };
  });
  return { part, stand, steps };
}

function placesOf({ before }: PartStep, { men }: PlayPart): DrillStep['men'] {
  return men.map((spot) => ({ spot, at: before.places[spot]! }));
}

/** One defender fewer than there are men; where he stood as the step began, at the look when the man-up had not come there. */
function defendersAt(stand: PartStand | undefined, { beat }: PartStep, { men }: PlayPart): DrillStep['defenders'] {
  return (stand?.defenders ?? [])
    .slice(0, men.length - 1)
    .map(({ name, at_byBeat, atLook }) => ({ name, at: at_byBeat[beat] ?? atLook }));
}

/** Of the ground in a large picture so much is shown, in this height over width. */
const largeShare = 0.72;
const largeShape = 0.68;

/** The page of a part; undefined for a block that is none. */
export function partPage(ground: PracticeGround, block: PracticeBlock, play: Play): Page | undefined {
  const drawn = drillOf(ground, block, play);
  if (drawn === undefined) return undefined;
  const { part, steps } = drawn;
  const scenes = drillPictures(
    steps.map(({ drill }) => drill),
    ground.field,
    largeShare,
    largeShape,
  );
  const against = block.scheme === undefined ? '' : `, against ${ground.scheme(block.scheme)}`;
  const sheet: PartSheet = {
    title: `${partName(part.men)}: ${runDone(block.runs![0]!, play)}`,
    about: `Cut from ${play.name}${against}. ${blockMeasure(block)}.`,
    steps: steps.map(({ step }, at) => ({ scene: scenes[at]!, words: stepWords(step, at) })),
    sections: sectionsOf(ground, block, play, drawn),
    level: ground.level ?? ground.playbook.team.level,
    paper: ground.paper,
    made: ground.made,
  };
  return practicePart(sheet);
}

/** "When X gets there: X skips to TR; TR steps in, ready to shoot." */
function stepWords({ when, actions }: PartStep, at: number): string {
  const doing = actions.map((action: Order) => actionWords(action)).join('; ');
  const start = at === 0 ? 'Go' : capital(triggerWords(when));
  return `${start}: ${doing === '' ? 'look, and take what is there' : doing}.`;
}

function sectionsOf(
  { practice, scheme }: PracticeGround,
  block: PracticeBlock,
  play: Play,
  { part, stand }: DrawnPart,
): PartSheet['sections'] {
  const names = (stand?.defenders ?? []).slice(0, part.men.length - 1).map(({ name }) => name);
  const against = block.scheme === undefined ? 'the scheme' : scheme(block.scheme);
  const defense =
    names.length === 0
      ? [`${part.men.length - 1} defenders where ${against} has them, sticks up.`]
      : [`${names.join(', ')}: where the crosses are, sticks up, each with his duty in ${against}.`];
  return [
    {
      heading: 'Set up',
      lines: [
        `${part.men.join(', ')} at their places; ${part.men[0]} has the ball. "Go" begins it. ${linesWords(practice.players, part)}`,
      ],
    },
    { heading: 'Defense', lines: [...defense, ...openedWords(stand, part)] },
    {
      heading: 'A rep ends',
      lines: [
        'With a shot, a ball on the ground, or after eight seconds. Ball back to where it began; the next men in.',
      ],
    },
    { heading: 'Say', lines: blockPoints(block, play) },
    ...(block.note === undefined ? [] : [{ heading: 'Note', lines: [block.note] }]),
    {
      heading: 'Why',
      lines: [
        ...(block.why === undefined ? [] : [block.why]),
        'Its worth is that of the look in the whole play, 6\u00a0v\u00a05: the part alone was not simulated.',
      ],
    },
  ];
}

function linesWords(players: number, { men }: PlayPart): string {
  const groups = Math.floor(players / (2 * men.length - 1));
  return groups > 1 ? `${groups} groups at once where there are goals and keepers for them, else in turn.` : '';
}

/** Who is drawn, and by whom: what the part is about. */
function openedWords(stand: PartStand | undefined, { look }: PlayPart): readonly string[] {
  if (stand === undefined) return [];
  if (stand.drawn === null) return [`${look.to} is nobody's man there: the scheme leaves him.`];
  if (stand.opener === null) return [`${stand.drawn} comes too late to ${look.to}.`];
  return [
    `${stand.drawn} is between ${stand.opener} and ${look.to}: ${stand.opener} holds him, then ${lookDone(look)}.`,
  ];
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
