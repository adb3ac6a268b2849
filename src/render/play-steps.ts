import type { Action, Beat, Play, Point, SpotId } from '../engine/index.ts';

/** Where everyone stands and who has the ball, as the script means it, when nothing goes wrong. */
export interface PlayPicture {
  readonly places: Readonly<Record<SpotId, Point>>;
  readonly ball: SpotId;
}

/** One beat of a play with the picture it starts from and the one it ends in. */
export interface PlayStep {
  readonly beat: Beat;
  readonly before: PlayPicture;
  readonly after: PlayPicture;
}

/** The set as it stands before the first beat. */
export function openingPicture(play: Play): PlayPicture {
  const places = Object.fromEntries(play.spots.map((spot) => [spot.id, spot.at]));
  return { places, ball: play.start.ball };
}

/** The beats in the order in which the script starts them, each from where the one before it ends. */
export function playSteps(play: Play): readonly PlayStep[] {
  const steps: PlayStep[] = [];
  let picture = openingPicture(play);
  for (const beat of inStartingOrder(play)) {
    const after = beat.actions.reduce(applyAction, picture);
    steps.push({ beat, before: picture, after });
    picture = after;
  }
  return steps;
}

/** The points a man moves through in this action, his own place first; `undefined` when he stands. */
export function actionPath(action: Action, before: PlayPicture): readonly Point[] | undefined {
  const start = before.places[action.by];
  if (start === undefined) return undefined;
  switch (action.kind) {
    case 'carry':
    case 'run':
      return [start, ...action.path];
    case 'pick':
      return [start, action.at];
    case 'stepIn':
      return [start, action.to];
    case 'pass':
    case 'seal':
    case 'fake':
    case 'hold':
    case 'shot':
      return undefined;
    default:
      return exhaustive(action);
  }
}

function applyAction(picture: PlayPicture, action: Action): PlayPicture {
  const end = actionPath(action, picture)?.at(-1);
  const places = end === undefined ? picture.places : { ...picture.places, [action.by]: end };
  return { places, ball: action.kind === 'pass' ? action.to : picture.ball };
}

// A beat whose trigger is a catch or an arrival belongs after the beat that throws or runs; the file's order may differ.
function inStartingOrder(play: Play): readonly Beat[] {
  const waiting = [...play.beats];
  const started: Beat[] = [];
  let ball: SpotId = play.start.ball;
  while (waiting.length > 0) {
    const found = waiting.findIndex((beat) => canStart(beat, started, ball));
    // A beat that nothing starts still gets its picture, last: the playbook's own check is what complains about it.
    const [next] = waiting.splice(Math.max(0, found), 1);
    if (next === undefined) break;
    started.push(next);
    for (const action of next.actions) if (action.kind === 'pass') ball = action.to;
  }
  return started;
}

function canStart(beat: Beat, started: readonly Beat[], ball: SpotId): boolean {
  const actions = started.flatMap((one) => one.actions);
  const { when } = beat;
  switch (when.kind) {
    case 'start':
      return true;
    case 'catch':
      return ball === when.by && actions.some((action) => action.kind === 'pass' && action.to === when.by);
    case 'pass':
      return actions.some(
        (action) =>
          action.kind === 'pass' && action.by === when.from && (when.to === undefined || action.to === when.to),
      );
    case 'arrival':
      return actions.some(
        (action) => action.by === when.who && ['run', 'carry', 'pick', 'stepIn'].includes(action.kind),
      );
    case 'call':
      return started.some((one) => one.id === when.beat);
    default:
      return exhaustive(when);
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
