import {
  createDraws,
  type MarkedFilm,
  type MarkedMoment,
  normal,
  type Play,
  type Point,
  type Trace,
} from '../../src/engine/index.ts';

/** How a trial is filmed: by whom the marks are set, and how badly. */
export interface FilmChoice {
  /** Standard deviation of a mark along each axis, yards. */
  readonly error: number;
  readonly seed: number;
  /** Whether the six are marked too. */
  readonly offense?: boolean;
  /** Whether it is said how long the ball has been there. */
  readonly since?: boolean;
}

/** A mark is set this long after the ball came, or as it leaves when that is sooner. Seconds. */
const touch = 1;
/** Whoever had the ball for less than this passed it on at once: nobody marks him. Seconds. */
const shortest = 0.3;

/** A trial as a coach would mark it on film: a moment for each man who has the ball, from when the set is up, defenders in no order, each mark off by chance. */
export function filmOfTrace(trace: Trace, play: Play, choice: FilmChoice): MarkedFilm {
  const draws = createDraws(choice.seed);
  const setUp = trace.events.find(({ kind }) => kind === 'setUp')?.time ?? 0;
  const first = Math.ceil(setUp / trace.step);
  const moments: MarkedMoment[] = [];
  const off = (place: Point, who: number, at: number): Point => ({
    x: place.x + choice.error * normal(draws, at, who, 0, 0),
    y: place.y + choice.error * normal(draws, at, who, 1, 0),
  });
  for (const { holder, from, to } of holdsOf(trace, first)) {
    const frame = Math.min(to, from + Math.round(touch / trace.step));
    if ((frame - from) * trace.step < shortest) continue;
    const at = moments.length;
    const order = Array.from({ length: trace.defenders }, (_, defender) => defender).sort(
      (one, other) => normal(draws, at, one, 2, 0) - normal(draws, at, other, 2, 0),
    );
    moments.push({
      time: frame * trace.step,
      ball: holder,
      ...(choice.since === true && { since: (frame - from) * trace.step }),
      defenders: order.map((defender) => off(placeOf(trace, frame, 6 + defender), 6 + defender, at)),
      ...(choice.offense !== false && {
        offense: [0, 1, 2, 3, 4, 5].map((man) => off(placeOf(trace, frame, man), man, at)),
      }),
    });
  }
  // Who knows which play was called knows where it is restarted.
  return { spots: play.spots.map(({ at }) => at), restart: play.start.restart, moments };
}

interface Hold {
  readonly holder: number;
  readonly from: number;
  readonly to: number;
}

/** Who had the ball from which frame to which, up to the first loss or shot. */
function holdsOf(trace: Trace, first: number): readonly Hold[] {
  const end = trace.events.find(({ kind }) => kind === 'shot' || kind === 'turnover' || kind === 'released');
  const last = Math.min(trace.frames - 1, end === undefined ? trace.frames - 1 : Math.floor(end.time / trace.step));
  const holds: Hold[] = [];
  for (let frame = first; frame <= last; frame++) {
    const holder = trace.holder_byFrame[frame]!;
    if (holder < 0 || holder > 5) continue;
    const before = holds.at(-1);
    if (before?.holder === holder && before.to === frame - 1) holds[holds.length - 1] = { ...before, to: frame };
    else holds.push({ holder, from: frame, to: frame });
  }
  return holds;
}

function placeOf(trace: Trace, frame: number, agent: number): Point {
  const at = 2 * (frame * trace.agents + agent);
  return { x: trace.places_byFrame[at]!, y: trace.places_byFrame[at + 1]! };
}
