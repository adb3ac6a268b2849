import { type Action, type Play, scriptTimes } from '../engine/index.ts';
import type { PlayTiming } from '../playbook/index.ts';
import { type BallLeg, legStart, type PlayTempo, type TempoAction, type TempoBeat } from './tempo-chart.ts';

/** How long a shot is drawn on its way to the goal, s: what it would need from some ten yards. */
const shotShown = 0.3;

/**
 * A play's tempo as it is written. `play` is the one that `timing` was made from, with the beats of the script that was timed: for the last ten
 * seconds, the play with those beats in place of its own.
 */
export function tempoAsWritten(play: Play, timing: PlayTiming): PlayTempo {
  const beats = timing.beats.flatMap(({ beat: id, at }): readonly TempoBeat[] => {
    const beat = play.beats.find((one) => one.id === id);
    if (beat === undefined) return [];
    return [{ id, starts: at, actions: beat.actions.map((action, index) => timeOf(action, id, index, at, timing)) }];
  });
  return { beats, ball: ballLegs(play, timing) };
}

function timeOf(action: Action, beat: string, index: number, told: number, timing: PlayTiming): TempoAction | null {
  const isIts = ({ at }: { readonly at: { readonly beat: string; readonly action: number } }): boolean =>
    at.beat === beat && at.action === index;
  switch (action.kind) {
    case 'run':
    case 'carry':
    case 'pick':
    case 'stepIn': {
      const way = timing.ways.find(isIts);
      return way === undefined ? null : { start: way.starts, end: way.ends };
    }
    case 'pass': {
      const thrown = timing.throws.find(isIts);
      return thrown === undefined ? null : { start: told, end: thrown.leaves };
    }
    case 'shot': {
      const shot = timing.shots.find(isIts);
      return shot === undefined ? null : { start: told, end: shot.leaves };
    }
    case 'hold':
      return { start: told, end: told + action.seconds };
    case 'fake':
      return { start: told, end: told + scriptTimes.fake };
    case 'seal':
      return { start: told, end: sealEnd(action.by, told, timing) };
    default:
      return exhaustive(action);
  }
}

// Who seals stands until he is sent somewhere, at most as long as his patience and a second.
function sealEnd(by: string, told: number, { ways, ends }: PlayTiming): number {
  const sent = ways.filter(({ who, starts }) => who === by && starts > told).map(({ starts }) => starts);
  return Math.max(told, Math.min(told + scriptTimes.patience + 1, ends, ...sent));
}

function ballLegs(play: Play, { throws, shots, holds }: PlayTiming): readonly BallLeg[] {
  const legs: readonly BallLeg[] = [
    ...holds.map(({ who, from, until }) => ({ kind: 'held', spot: who, from, to: until }) as const),
    ...throws.map(({ at, from, to, leaves, arrives }) => {
      const action = play.beats.find(({ id }) => id === at.beat)?.actions[at.action];
      const style = action?.kind === 'pass' ? action.style : 'adjacent';
      return { kind: 'pass', from, to, leaves, arrives, style } as const;
    }),
    ...shots.map(({ who, leaves }) => ({ kind: 'shot', by: who, leaves, arrives: leaves + shotShown }) as const),
  ];
  return [...legs].sort((a, b) => legStart(a) - legStart(b));
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(value)}`);
}
