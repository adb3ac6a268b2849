import type { Point } from '../../engine/index.ts';
import { distance } from '../arrow.ts';
import { samplesPerSecond } from '../clip/track.ts';
import { type FieldMarkings, fieldScene } from '../field-scene.ts';
import { defenderLabels } from '../people-labels.ts';
import { attackerRadius, defenderMarks, keeperMark, usualSizes } from '../people-marks.ts';
import { type Primitive, polyline, type SceneLayer, type View } from '../scene.ts';
import type { TraceFrame } from '../trace-frame.ts';
import { attackerDiscs, attackerWords, ballInFlightOrHands } from '../trace-marks.ts';
import type { TraceNames } from '../trace-names.ts';
import { openRings } from '../watch-marks.ts';
import { type Drawn, markAt, type NameOffsets, nameOffsets, wordsRoom } from './film-names.ts';
import { ballAt, type FilmPart, momentAt, openMenOf, runOf } from './film-part.ts';

/** The ground of a film's field: the same in every picture of a part. */
export function filmGround(field: FieldMarkings, view: View): SceneLayer {
  return { view, items: fieldScene(field, view) };
}

/** How long a run is shown behind a man, and a flight after it has ended, s of the play. */
const trailShown = 1;
const flightShown = 1;
const offenseCount = 6;

/** Who is on the field at `time` of the play and what the ball does, in the shapes of every other drawing. */
export function filmPeople(
  part: FilmPart,
  time: number,
  spots: readonly string[],
  drawn: Drawn,
  offsets: NameOffsets,
): SceneLayer {
  const { view } = drawn;
  const sizes = usualSizes;
  const frame = momentAt(part, time);
  const names = namesOf(part, spots);
  const { open } = wordsRoom(frame, part, time, names, drawn);
  return {
    view,
    items: [
      ...trails(part, time),
      ...flights(part, time),
      ...keeperMark(frame.keeper, sizes),
      ...openRings(frame, openMenOf(part, time), sizes),
      ...attackerDiscs(frame, view, sizes),
      ...defenderMarks(frame.defense, sizes),
      ...attackerWords(frame, names, view),
      ...defenderNames(frame, names, offsets[sampleAt(part, time)] ?? []),
      ballInFlightOrHands(frame, view, sizes),
      ...open,
    ],
  };
}

/** Places of a part's names, found once for all of its pictures. */
export function filmNames(part: FilmPart, spots: readonly string[], drawn: Drawn): NameOffsets {
  return nameOffsets(part, namesOf(part, spots), drawn);
}

function sampleAt({ scheme }: FilmPart, time: number): number {
  return Math.min(Math.floor(time * samplesPerSecond + 1e-6), scheme.samples - 1);
}

function defenderNames(
  frame: TraceFrame,
  names: TraceNames,
  offsets: readonly (Point | undefined)[],
): readonly Primitive[] {
  return defenderLabels(frame, names).flatMap((label, index) => {
    const offset = offsets[index];
    return offset === undefined ? [] : [markAt(label, frame.defense[index]!, offset)];
  });
}

function namesOf({ scheme }: FilmPart, spots: readonly string[]): TraceNames {
  return {
    play: '',
    scheme: scheme.name,
    offense: spots,
    defense: scheme.defenders,
    reads: [],
    lastTenReads: [],
    beats: {},
  };
}

function trails(part: FilmPart, time: number): readonly Primitive[] {
  return Array.from({ length: offenseCount }, (_, man) => runOf(part, man, time - trailShown, time))
    .filter((path) => distance(path[0]!, path.at(-1)!) > attackerRadius)
    .flatMap((path) => polyline('trail', path));
}

/** The ball's way, dashed as on paper: strong while it flies, faint afterwards. */
function flights(part: FilmPart, time: number): readonly Primitive[] {
  return part.scheme.flights
    .filter(([from, to]) => from < time && time <= to + flightShown)
    .flatMap(([from, to, kind]) => {
      const style = kind === 'shot' ? 'shot' : time <= to ? 'pass' : 'passPast';
      return polyline(style, [ballAt(part, from), ballAt(part, Math.min(time, to))]);
    });
}
