import type { Point } from '../geometry/point.ts';
import type { Hand } from '../people/athlete.ts';
import type { Beat, Cue, Order, Play, Read, Spot, SpotId, Trigger } from './play.ts';

/**
 * The same play run from the other side: every place to the other side of the middle line, every spot id to its twin,
 * every hand swapped. Spots keep their order, so man 3 of the play is man 3 of its mirror image.
 * Mirroring twice gives the play back, exactly.
 */
export function mirrorPlay(play: Play): Play {
  return {
    id: play.id,
    name: play.name,
    spots: play.spots.map(mirrorSpot),
    start: { ball: mirrorSpotId(play.start.ball), restart: mirrorPoint(play.start.restart) },
    beats: play.beats.map(mirrorBeat),
    reads: play.reads.map(mirrorRead),
    reset: { ball: mirrorSpotId(play.reset.ball), then: play.reset.then },
    ...(play.lastTen && {
      lastTen: { beats: play.lastTen.beats.map(mirrorBeat), reads: play.lastTen.reads.map(mirrorRead) },
    }),
  };
}

/**
 * The twin of a spot: the last R or L of the id is swapped, digits after it stay. Ids without a side are their own twins.
 *
 * `mirrorSpotId('TR')` is 'TL', `mirrorSpotId('WL2')` is 'WR2', `mirrorSpotId('C')` is 'C'.
 */
export function mirrorSpotId(id: SpotId): SpotId {
  const sided = /^(.*)([RL])(\d*)$/.exec(id);
  if (sided === null) return id;
  return `${sided[1]}${sided[2] === 'R' ? 'L' : 'R'}${sided[3]}`;
}

/** The place on the other side. Never gives -0, so that equal places stay equal when compared bit by bit. */
export function mirrorPoint(point: Point): Point {
  return { x: point.x === 0 ? 0 : -point.x, y: point.y };
}

export function mirrorHand<H extends Hand | Spot['hand']>(hand: H): H {
  if (hand === 'left') return 'right' as H;
  return hand === 'right' ? ('left' as H) : hand;
}

export function mirrorSpot(spot: Spot): Spot {
  return { ...spot, id: mirrorSpotId(spot.id), at: mirrorPoint(spot.at), hand: mirrorHand(spot.hand) };
}

function mirrorBeat(beat: Beat): Beat {
  return { id: beat.id, when: mirrorTrigger(beat.when), actions: beat.actions.map(mirrorAction) };
}

function mirrorTrigger(trigger: Trigger): Trigger {
  switch (trigger.kind) {
    case 'start':
    case 'call':
      return trigger;
    case 'catch':
      return { kind: 'catch', by: mirrorSpotId(trigger.by) };
    case 'pass':
      return trigger.to === undefined
        ? { kind: 'pass', from: mirrorSpotId(trigger.from) }
        : { kind: 'pass', from: mirrorSpotId(trigger.from), to: mirrorSpotId(trigger.to) };
    case 'arrival':
      return { kind: 'arrival', who: mirrorSpotId(trigger.who) };
    default:
      return exhaustive(trigger);
  }
}

function mirrorAction<A extends Order>(action: A): A {
  return mirrorAnyAction(action) as A;
}

function mirrorAnyAction(action: Order): Order {
  const by = mirrorSpotId(action.by);
  switch (action.kind) {
    case 'pass':
      return { ...action, by, to: mirrorSpotId(action.to) };
    case 'carry':
    case 'run':
      return { ...action, by, path: action.path.map(mirrorPoint) };
    case 'pick':
      return { ...action, by, at: mirrorPoint(action.at), on: mirrorSpotId(action.on) };
    case 'seal':
      return { ...action, by, on: mirrorSpotId(action.on) };
    case 'fake':
      return { ...action, by, toward: mirrorSpotId(action.toward) };
    case 'hold':
    case 'shot':
    case 'runIn':
    case 'reset':
      return { ...action, by };
    case 'stepIn':
      return { ...action, by, to: mirrorPoint(action.to) };
    default:
      return exhaustive(action);
  }
}

function mirrorRead(read: Read): Read {
  return {
    ...read,
    carrier: mirrorSpotId(read.carrier),
    cues: read.cues.map(mirrorCue),
    then: mirrorAction(read.then),
  };
}

function mirrorCue(cue: Cue): Cue {
  switch (cue.kind) {
    case 'iAmFree':
    case 'iAmPressed':
    case 'nextSteps':
    case 'myManLeaves':
    case 'creaseUp':
    case 'farLowLooksAway':
    case 'farLowCrosses':
      return cue;
    case 'open':
    case 'left':
    case 'laneTaken':
      return { kind: cue.kind, who: mirrorSpotId(cue.who) };
    default:
      return exhaustive(cue);
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind in a play: ${JSON.stringify(value)}`);
}
