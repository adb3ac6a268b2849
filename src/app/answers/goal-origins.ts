import type { Trace, TraceEvent } from '../../engine/index.ts';

/**
 * What a unit was at when it shot. `play`: the play was being run, and the shot or the pass before it is one of its own steps or reads, or its
 * carrier shot in place of a step. `beside`: the play was left for a man who came open. `round`: the ball went round, before the play or after it
 * could not go on. `loose`: a loose ball or a rebound was picked up, and nothing was set up since.
 */
export const origins = ['play', 'beside', 'round', 'loose'] as const;
export type Origin = (typeof origins)[number];

/** Where goals come from. */
export interface GoalOrigins {
  /** Chances that were followed. */
  readonly chances: number;
  /** Share of the goals that the shots are worth on average, 0 to 1 each; all 0 when nobody shot. */
  readonly shares: Readonly<Record<Origin, number>>;
}

/** Follows whole chances shot by shot. Each shot counts by its odds and not by its luck, as goals per chance do. */
export function goalOrigins(traces: readonly Pick<Trace, 'events'>[]): GoalOrigins {
  const odds: Record<Origin, number> = { play: 0, beside: 0, round: 0, loose: 0 };
  for (const { events } of traces) {
    let at: Origin = 'round';
    for (const event of events) {
      at = originAfter(at, event);
      if (event.kind === 'shot') odds[at] += event.goalOdds;
    }
  }
  const all = origins.reduce((sum, origin) => sum + odds[origin], 0);
  const share = (origin: Origin): number => (all === 0 ? 0 : odds[origin] / all);
  return {
    chances: traces.length,
    shares: { play: share('play'), beside: share('beside'), round: share('round'), loose: share('loose') },
  };
}

function originAfter(before: Origin, event: TraceEvent): Origin {
  switch (event.kind) {
    case 'restart':
    case 'reset':
      return 'round';
    case 'beat':
      return 'play';
    case 'leave':
      return 'beside';
    case 'groundBall':
      return event.won === 'offense' ? 'loose' : before;
    default:
      return before;
  }
}
