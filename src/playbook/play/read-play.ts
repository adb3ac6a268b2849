import type { Action, Beat, Play, Point, Read, Spot, Trigger } from '../../engine/index.ts';
import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { type FieldLimits, isInBox, isInCrease, isOutOfBounds } from '../field-limits.ts';
import type { JsonPath } from '../json/json-node.ts';
import { parseAction, parseCarrierAction } from '../language/parse-action.ts';
import { parseCue } from '../language/parse-cue.ts';
import { parseTrigger } from '../language/parse-trigger.ts';
import { type PhraseReading, unknownName } from '../language/phrase.ts';
import { isSpot, likelySpot, type PlayNames, unknownBeat, unknownSpot } from '../language/play-names.ts';
import type { Report } from '../report.ts';
import type { BeatEntry, OwnSet, PlayEntry, ReadEntry } from '../schema.ts';
import { boundsWords, moveSpots, pointOf, readSet, type SetSpots } from './read-set.ts';

/** What reading a play of the document gave. */
export interface PlayReading {
  /** The engine's play; absent when anything is wrong. */
  readonly value?: Play;
  /** The play as it was most likely meant, for the checks of the play as a whole; absent when its set is not known. */
  readonly draft?: PlayDraft;
}

/** A play with wrong names replaced by the likeliest. Beats, actions and reads stand in the places that they have in the document. */
export interface PlayDraft {
  readonly play: Play;
  /** Reads of which a part could not be read. */
  readonly unsureReads: ReadonlySet<Read>;
  /** Men of phrases in a beat that could not be read at all; `unknownName` when not even the man is known. */
  readonly unreadMen: ReadonlyMap<Beat, readonly string[]>;
}

/**
 * Reads a play of the document and reports every name, place and phrase in it that is wrong.
 * What the play as a whole cannot do is looked at afterwards (check-beats, check-flow, check-walk).
 */
export function readPlay(
  play: PlayEntry,
  path: JsonPath,
  ownSets: readonly OwnSet[],
  field: FieldLimits,
  report: Report,
): PlayReading {
  let sound = true;
  const watching: Report = {
    ...report,
    add(...all) {
      sound = false;
      report.add(...all);
    },
  };
  const set = readSet(play, path, ownSets, watching);
  const spots = set === undefined ? [] : moveSpots(play, path, set, field, watching);
  const reader = createReader(spots, set, field, watching);
  const main = reader.script(play.beats, play.reads ?? [], path);
  const lastTen =
    play.lastTen && reader.script(play.lastTen.beats ?? [], play.lastTen.reads ?? [], [...path, 'lastTen']);
  checkBeatIds(play, path, watching);
  const starter = reader.spot(play.start.ball, [...path, 'start', 'ball']);
  const resetter = reader.spot(play.reset.ball, [...path, 'reset', 'ball']);
  checkRestart(pointOf(play.start.restart), [...path, 'start', 'restart'], field, watching);
  if (set === undefined) return {};
  const read: Play = {
    id: play.id,
    name: play.name,
    spots,
    start: { ball: starter, restart: pointOf(play.start.restart) },
    ...main,
    reset: { ...play.reset, ball: resetter },
    ...(lastTen && { lastTen }),
  };
  return { ...(sound && { value: read }), draft: { play: read, ...reader.gaps } };
}

interface ScriptReader {
  script(
    beats: readonly BeatEntry[],
    reads: readonly ReadEntry[],
    path: JsonPath,
  ): { readonly beats: readonly Beat[]; readonly reads: readonly Read[] };
  /** The spot, or the likeliest one after reporting one that is not there. */
  spot(id: string, path: JsonPath): string;
  readonly gaps: Omit<PlayDraft, 'play'>;
}

/** An order that changes nothing, in the place of one that could not be read. */
const noAction: Extract<Action, { kind: 'hold' }> = { kind: 'hold', by: unknownName, seconds: 0 };
/** What may start at any time, in the place of a trigger that could not be read. */
const anyTrigger: Trigger = { kind: 'catch', by: unknownName };

function createReader(
  spots: readonly Spot[],
  set: SetSpots | undefined,
  field: FieldLimits,
  report: Report,
): ScriptReader {
  const homes = new Map(spots.map((spot) => [spot.id, spot.at]));
  const spotNames = {
    spots: homes,
    ...(set === undefined ? { anySpot: true as const } : set.mixUp && { mixUp: set.mixUp }),
  };
  const unsureReads = new Set<Read>();
  const unreadMen = new Map<Beat, readonly string[]>();

  function likeliest<T>(reading: PhraseReading<T>, path: JsonPath): T | undefined {
    for (const fault of reading.faults) report.add(fault.code, path, fault.message, fault.offset);
    return reading.value ?? reading.guess;
  }

  function readBeat(beat: BeatEntry, path: JsonPath, names: PlayNames): Beat {
    const unread: string[] = [];
    const when = likeliest(parseTrigger(beat.on, names), [...path, 'on']) ?? anyTrigger;
    const actions = beat.do.map((text, i) => {
      const reading = parseAction(text, names);
      const action = likeliest(reading, [...path, 'do', i]);
      if (action === undefined) unread.push(reading.by ?? unknownName);
      return action ?? noAction;
    });
    const read: Beat = { id: beat.id, when, actions };
    if (unread.length > 0) unreadMen.set(read, unread);
    return read;
  }

  function readRead(read: ReadEntry, path: JsonPath, names: PlayNames): Read {
    const { during } = read;
    const knowsCarrier = isSpot(read.carrier, names);
    if (!knowsCarrier) report.add('spot-unknown', [...path, 'carrier'], unknownSpot(read.carrier, names));
    const carrier = knowsCarrier ? read.carrier : (likelySpot(read.carrier, names) ?? unknownName);
    const knowsBeat = during === undefined || names.beats.has(during);
    if (!knowsBeat) report.add('beat-unknown', [...path, 'during'], unknownBeat(during, names));
    const cues = read.if.map((text) => parseCue(text, carrier, names));
    const found = cues.map((cue, i) => likeliest(cue, [...path, 'if', i])).filter((cue) => cue !== undefined);
    const then = parseCarrierAction(read.then, carrier, names);
    const action = likeliest(then, [...path, 'then']) ?? noAction;
    const known: Read = { carrier, ...(during !== undefined && { during }), cues: found, then: action };
    const whole = knowsCarrier && knowsBeat && [...cues, then].every((part) => part.faults.length === 0);
    if (!whole) unsureReads.add(known);
    return known;
  }

  return {
    gaps: { unsureReads, unreadMen },
    script(beats, reads, path) {
      const names: PlayNames = {
        ...spotNames,
        beats: new Set(beats.map((beat) => beat.id)),
        placeFault: (point) => placeFault(point, field),
      };
      return {
        beats: beats.map((beat, i) => readBeat(beat, [...path, 'beats', i], names)),
        reads: reads.map((read, i) => readRead(read, [...path, 'reads', i], names)),
      };
    },
    spot(id, path) {
      if (isSpot(id, spotNames)) return id;
      report.add('spot-unknown', path, unknownSpot(id, spotNames));
      return likelySpot(id, spotNames) ?? unknownName;
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
      report.add('id-twice', at, `The step id "${beat.id}" is already used in ${before}. Give this step another.`);
    else seen.set(beat.id, place);
  }
}
