import type { Action, Beat, Cue, Play, Point, Read, Spot, Trigger } from '../../engine/index.ts';
import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { type FieldLimits, isInBox, isInCrease, isOutOfBounds } from '../field-limits.ts';
import type { JsonPath } from '../json/json-node.ts';
import { type ActionReading, parseAction, parseCarrierAction } from '../language/parse-action.ts';
import { parseCue } from '../language/parse-cue.ts';
import { parseTrigger } from '../language/parse-trigger.ts';
import { type PlayNames, unknownBeat, unknownSpot } from '../language/play-names.ts';
import type { Report } from '../report.ts';
import type { BeatEntry, OwnSet, PlayEntry, ReadEntry } from '../schema.ts';
import { boundsWords, moveSpots, pointOf, readSet } from './read-set.ts';

/**
 * The engine's play for a play of the document. Reports every name, place and phrase that is wrong;
 * undefined when anything was. What the play as a whole cannot do is looked at afterwards (check-flow, check-moves).
 */
export function readPlay(
  play: PlayEntry,
  path: JsonPath,
  ownSets: readonly OwnSet[],
  field: FieldLimits,
  report: Report,
): Play | undefined {
  const set = readSet(play, path, ownSets, report);
  if (set === undefined) return undefined;
  let sound = true;
  const watching: Report = {
    ...report,
    add(...all) {
      sound = false;
      report.add(...all);
    },
  };
  const spots = moveSpots(play, path, set, field, watching);
  const reader = createReader(spots, set.spotHint, field, watching);
  const main = reader.script(play.beats, play.reads ?? [], path);
  const lastTen =
    play.lastTen && reader.script(play.lastTen.beats ?? [], play.lastTen.reads ?? [], [...path, 'lastTen']);
  checkBeatIds(play, path, watching);
  reader.spot(play.start.ball, [...path, 'start', 'ball']);
  reader.spot(play.reset.ball, [...path, 'reset', 'ball']);
  checkRestart(pointOf(play.start.restart), [...path, 'start', 'restart'], field, watching);
  if (!sound) return undefined;
  return {
    id: play.id,
    name: play.name,
    spots,
    start: { ball: play.start.ball, restart: pointOf(play.start.restart) },
    ...main,
    reset: play.reset,
    ...(lastTen && { lastTen }),
  };
}

interface ScriptReader {
  script(
    beats: readonly BeatEntry[],
    reads: readonly ReadEntry[],
    path: JsonPath,
  ): { readonly beats: readonly Beat[]; readonly reads: readonly Read[] };
  spot(id: string, path: JsonPath): void;
}

function createReader(spots: readonly Spot[], spotHint: string, field: FieldLimits, report: Report): ScriptReader {
  const homes = new Map(spots.map((spot) => [spot.id, spot.at]));

  function keep<T>(reading: ActionReading<T>, path: JsonPath): readonly T[] {
    for (const fault of reading.faults) report.add(fault.code, path, fault.message, fault.offset);
    return reading.value === undefined ? [] : [reading.value];
  }

  function readBeat(beat: BeatEntry, path: JsonPath, names: PlayNames): readonly Beat[] {
    const when = keep<Trigger>(parseTrigger(beat.on, names), [...path, 'on']);
    const actions = beat.do.flatMap((text, i) => keep<Action>(parseAction(text, names), [...path, 'do', i]));
    return when.map((trigger) => ({ id: beat.id, when: trigger, actions }));
  }

  function readRead(read: ReadEntry, path: JsonPath, names: PlayNames): readonly Read[] {
    if (!homes.has(read.carrier)) report.add('spot-unknown', [...path, 'carrier'], unknownSpot(read.carrier, names));
    if (read.during !== undefined && !names.beats.has(read.during))
      report.add('beat-unknown', [...path, 'during'], unknownBeat(read.during, names));
    const cues = read.if.flatMap((text, i) => keep<Cue>(parseCue(text, read.carrier, names), [...path, 'if', i]));
    const then = keep(parseCarrierAction(read.then, read.carrier, names), [...path, 'then']);
    return then.map((action) => ({
      carrier: read.carrier,
      ...(read.during !== undefined && { during: read.during }),
      cues,
      then: action,
    }));
  }

  return {
    script(beats, reads, path) {
      const names: PlayNames = {
        spots: homes,
        beats: new Set(beats.map((beat) => beat.id)),
        spotHint,
        placeFault: (point) => placeFault(point, field),
      };
      return {
        beats: beats.flatMap((beat, i) => readBeat(beat, [...path, 'beats', i], names)),
        reads: reads.flatMap((read, i) => readRead(read, [...path, 'reads', i], names)),
      };
    },
    spot(id, path) {
      if (!homes.has(id)) report.add('spot-unknown', path, unknownSpot(id, { spots: homes, spotHint }));
    },
  };
}

function placeFault(
  point: Point,
  field: FieldLimits,
): { readonly code: DiagnosticCode; readonly message: string } | undefined {
  if (isInCrease(point, field)) {
    const message = `${point.x},${point.y} lies inside the crease (${field.creaseRadius} yd round the middle of the goal line), where the offense may not be. Choose a place outside it.`;
    return { code: 'place-in-crease', message };
  }
  if (isOutOfBounds(point, field))
    return { code: 'place-out-of-bounds', message: `${point.x},${point.y} is ${boundsWords(point, field)}.` };
  return undefined;
}

/** How near the end line a restart must be to be one after the ball went over it, yd. */
const endLineRestart = 1;

function checkRestart(at: Point, path: JsonPath, field: FieldLimits, report: Report): void {
  if (isOutOfBounds(at, field)) {
    report.add('place-out-of-bounds', path, `The restart at ${at.x},${at.y} is ${boundsWords(at, field)}.`);
    return;
  }
  const fromEndLine = at.y <= field.endLine + endLineRestart;
  if (isInBox(at, field) && !fromEndLine) {
    report.add(
      'restart-in-box',
      path,
      `The restart at ${at.x},${at.y} lies inside the box (x within ${field.boxHalfWidth}, y under ${field.boxTop}). After a penalty the ball is put in play outside it: take x at least ${field.boxHalfWidth} either way, or y at least ${field.boxTop}.`,
    );
  }
}

function checkBeatIds(play: PlayEntry, path: JsonPath, report: Report): void {
  const seen = new Map<string, string>();
  const all = [
    ...play.beats.map((beat, i) => ({ beat, at: [...path, 'beats', i, 'id'], place: 'the play' })),
    ...(play.lastTen?.beats ?? []).map((beat, i) => ({
      beat,
      at: [...path, 'lastTen', 'beats', i, 'id'],
      place: 'the last ten seconds',
    })),
  ];
  for (const { beat, at, place } of all) {
    const before = seen.get(beat.id);
    if (before !== undefined)
      report.add('id-twice', at, `The beat id "${beat.id}" is already used in ${before}. Give this beat another.`);
    else seen.set(beat.id, place);
  }
}
