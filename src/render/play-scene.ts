import type { Action, Play, Point } from '../engine/index.ts';
import { along, barArrow, curvedArrow, distance, doubleArrow, straightArrow, trimStart, zigzagArrow } from './arrow.ts';
import { type FieldMarkings, fieldScene, viewAround } from './field-scene.ts';
import { layOutPage } from './page-layout.ts';
import { attackerDisc, attackerLetters, attackerRadius, ballInHands, ballMark } from './people-marks.ts';
import { actionPath, openingPicture, type PlayPicture, type PlayStep, playSteps } from './play-steps.ts';
import { actionWords, readWords, triggerWords } from './play-words.ts';
import { type Primitive, polyline, type Scene, text } from './scene.ts';

/** Said on every drawing, because goalkeepers and defenders say left and right the other way round. */
export const viewpointNote = "Left and right are the offense's, looking in.";

/** Half the length of a pick's bar, yd. */
const pickHalfBar = 0.95;
/** How far a fake's stub goes toward the man it is for, yd. */
const fakeLength = 2.6;
const goalMiddle: Point = { x: 0, y: 0 };

/** Which script of a play is held against its file: the play's own, or that of the last ten seconds. */
export type Written = 'play' | 'lastTen';

/**
 * One step of a play as the script means it: step 0 is the set, step n the play's n-th beat with what each man does in it.
 * Solid is a run, dashed a pass, zigzag a carry, a bar a pick, a double line a shot.
 * `written` adds the beat's own name, its places and the reads that count in it, for who compares the drawing with his file.
 * Throws a RangeError for a step that the play does not have.
 */
export function playScene(play: Play, step: number, field: FieldMarkings, written?: Written): Scene {
  const steps = playSteps(play);
  if (!Number.isInteger(step) || step < 0 || step > steps.length) {
    throw new RangeError(`step must be a whole number from 0 to ${steps.length}, not ${step}`);
  }
  const shown = steps[step - 1];
  const sentence = shown === undefined ? openingSentence(play) : stepSentence(shown, step, written);
  const picture = shown?.before ?? openingPicture(play);
  const reads = written !== undefined && shown !== undefined ? readsSentence(play, shown) : '';
  const heading = written !== undefined && shown !== undefined ? `${play.name}: "${shown.beat.id}"` : play.name;
  // All steps of a play share one view, so that they can be leafed through.
  const view = viewAround([...placesOf(steps), ...(step === 0 ? roomForRestart(play) : [])]);
  return layOutPage(
    {
      title: step === 0 ? `${play.name}: the set` : `${play.name}: step ${step} of ${steps.length}`,
      description: [sentence, reads, whereWords(picture), viewpointNote].filter((part) => part !== '').join(' '),
      field: view,
      clock: step === 0 ? '' : `${step} / ${steps.length}`,
      above: [
        { style: 'heading', text: heading },
        { style: 'sentence', text: sentence },
      ],
      below: [
        ...(reads === '' ? [] : [{ style: 'small', text: reads } as const]),
        { style: 'small', text: `Solid: run. Zigzag: carry. Dashed: pass. Bar: pick. Double: shot. ${viewpointNote}` },
      ],
    },
    [...fieldScene(field, view), ...stepMarks(play, step, shown)],
  );
}

/**
 * The marks of one step alone, without field and words: what each man does in it, then the men. Step 0 is the set with its restart.
 * `shown` is the step when the caller has it already; `withRestart` is false where there is no room for it.
 */
export function stepMarks(
  play: Play,
  step: number,
  shown: PlayStep | undefined = playSteps(play)[step - 1],
  withRestart = step === 0,
): readonly Primitive[] {
  return [
    ...(withRestart ? restartMarks(play) : []),
    ...(shown?.beat.actions ?? []).flatMap((action) => actionMarks(action, shown!)),
    ...peopleMarks(play, shown?.before ?? openingPicture(play), step > 0),
  ];
}

// The word is wider than the ball that it stands below.
function roomForRestart({ start: { restart } }: Play): readonly Point[] {
  return [-1, 1].map((side) => ({ x: restart.x + side, y: restart.y + 0.5 }));
}

function restartMarks(play: Play): readonly Primitive[] {
  const { restart } = play.start;
  return [ballMark(restart), text('stepText', { x: restart.x, y: restart.y + 1.1 }, 'restart')];
}

function placesOf(steps: readonly PlayStep[]): readonly Point[] {
  return steps.flatMap(({ before, after }) => [...Object.values(before.places), ...Object.values(after.places)]);
}

function openingSentence(play: Play): string {
  return `The set. ${play.start.ball} restarts outside the box and has the ball when it is up.`;
}

function stepSentence({ beat }: PlayStep, number: number, written: Written | undefined): string {
  const place = written === undefined ? () => '' : endWords;
  const actions = beat.actions.map((action) => `${actionWords(action)}${place(action)}`).join('; ');
  const when = written === 'lastTen' && beat.when.kind === 'start' ? 'with ten seconds left' : triggerWords(beat.when);
  return `Step ${number}, ${when}: ${actions === '' ? 'nobody is told anything' : actions}.`;
}

/** " (via 1,8 to 3,5)": where an action sends its man, as the file has it; a no-break space holds it together. */
function endWords(action: Action): string {
  const points =
    action.kind === 'carry' || action.kind === 'run'
      ? action.path
      : action.kind === 'pick'
        ? [action.at]
        : action.kind === 'stepIn'
          ? [action.to]
          : [];
  const places = points.map(({ x, y }) => `${x},${y}`);
  const [last] = places.splice(-1);
  return last === undefined ? '' : ` (${[...places.map((via) => `via\u00a0${via} `), `to\u00a0${last}`].join('')})`;
}

/** The reads of whoever can have the ball in this step, as far as they count in it. */
function readsSentence(play: Play, { beat, before, after }: PlayStep): string {
  const reads = play.reads.filter(({ carrier, during }) =>
    during === undefined ? before.ball === '' || carrier === before.ball || carrier === after.ball : during === beat.id,
  );
  return reads.length === 0 ? '' : `Reads: ${reads.map(readWords).join('; ')}.`;
}

function whereWords(picture: PlayPicture): string {
  const places = Object.entries(picture.places).map(([spot, at]) => `${spot} ${placeWords(at)}`);
  return `${places.join(', ')}. ${picture.ball === '' ? 'Whoever has the ball keeps it' : `${picture.ball} has the ball`}.`;
}

/** A place in words: "8 yards to the right, 4 above the goal line". */
export function placeWords(at: Point): string {
  const across = Math.round(at.x);
  const up = Math.round(at.y);
  const side =
    across === 0
      ? 'in the middle'
      : `${Math.abs(across)} ${Math.abs(across) === 1 ? 'yard' : 'yards'} ${across > 0 ? 'right' : 'left'}`;
  const height =
    up === 0 ? 'on the goal line extended' : `${Math.abs(up)} ${up > 0 ? 'above' : 'behind'} the goal line`;
  return `${side}, ${height}`;
}

function peopleMarks(play: Play, picture: PlayPicture, ballInPlay: boolean): readonly Primitive[] {
  const holder = picture.places[picture.ball];
  return [
    ...play.spots.map(({ id }) => attackerDisc(picture.places[id]!, id === picture.ball)),
    ...play.spots.map(({ id }) => attackerLetters(picture.places[id]!, id, id === picture.ball)),
    ...(holder === undefined || !ballInPlay ? [] : [ballInHands(holder)]),
  ];
}

function actionMarks(action: Action, step: PlayStep): readonly Primitive[] {
  const before = step.before;
  const start = before.places[action.by];
  if (start === undefined) return [];
  const path = trimStart(visible(actionPath(action, before) ?? []), attackerRadius);
  switch (action.kind) {
    case 'run':
    case 'stepIn':
      return curvedArrow('run', 'runHead', path);
    case 'carry':
      return zigzagArrow('carry', 'runHead', path);
    case 'pick':
      return barArrow('pick', path, pickHalfBar);
    case 'pass':
      return passMarks(action.to, step, throwPlace(action, step));
    case 'shot':
      return shotMarks(throwPlace(action, step));
    case 'fake':
      return fakeMarks(start, before.places[action.toward]);
    case 'seal':
      return sealMarks(start);
    case 'hold':
      return [text('stepText', { x: start.x, y: start.y + attackerRadius + 0.7 }, 'hold')];
    default:
      return exhaustive(action);
  }
}

/** A way shorter than this would lie under its man's own circle, yd. */
const shortestDrawn = attackerRadius + 1.3;

// A step of a yard is drawn longer than it is, so that it can be seen that he takes it.
function visible(path: readonly Point[]): readonly Point[] {
  const [start, end] = [path[0], path.at(-1)];
  if (start === undefined || end === undefined || path.length > 2) return path;
  const length = distance(start, end);
  return length === 0 || length >= shortestDrawn ? path : [start, along(start, end, shortestDrawn)];
}

// A man who runs with the ball in this beat throws it from where his run ends.
function throwPlace(action: Action, step: PlayStep): Point {
  const moves = step.beat.actions.some(
    (one) => one.by === action.by && (one.kind === 'carry' || one.kind === 'stepIn'),
  );
  return (moves ? step.after : step.before).places[action.by]!;
}

function passMarks(to: string, step: PlayStep, from: Point): readonly Primitive[] {
  const receiver = step.after.places[to];
  if (receiver === undefined) return [];
  const stands = distance(receiver, step.before.places[to]!) < attackerRadius;
  // Short of a runner's own arrow head, so that both can be seen.
  const end = along(receiver, from, stands ? attackerRadius + 0.1 : 0.6);
  return straightArrow('pass', 'passHead', along(from, end, attackerRadius), end);
}

function shotMarks(from: Point): readonly Primitive[] {
  return doubleArrow('shot', 'passHead', along(from, goalMiddle, attackerRadius), along(goalMiddle, from, 0.3));
}

function fakeMarks(from: Point, toward: Point | undefined): readonly Primitive[] {
  if (toward === undefined) return [];
  const end = along(from, toward, attackerRadius + fakeLength);
  const beyond = along(from, toward, attackerRadius + fakeLength + 0.9);
  return [...polyline('fake', [along(from, toward, attackerRadius), end]), text('stepText', beyond, 'fake')];
}

// A bracket on the goal side: the body that keeps a defender on the inside shoulder.
function sealMarks(at: Point): readonly Primitive[] {
  const inside = along(at, goalMiddle, attackerRadius + 0.35);
  const length = distance(at, goalMiddle);
  if (length === 0) return [];
  const side = { x: -(goalMiddle.y - at.y) / length, y: (goalMiddle.x - at.x) / length };
  const foot = along(at, goalMiddle, attackerRadius - 0.25);
  const wing = (sign: number, centre: Point): Point => ({
    x: centre.x + sign * side.x * 1.05,
    y: centre.y + sign * side.y * 1.05,
  });
  return polyline('seal', [wing(-1, foot), wing(-1, inside), wing(1, inside), wing(1, foot)]);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(value)}`);
}
