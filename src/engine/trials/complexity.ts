import type { Action, Play } from '../offense/play.ts';
import type { PlayReport } from './report.ts';

/**
 * What one run of a play's script asks of the unit: passes (skips and feeds among them), skips, reads taught, and men who
 * move without the ball or with it. What changes in the last ten seconds is not counted.
 */
export function complexityOf(play: Play): PlayReport['complexity'] {
  const actions = play.beats.flatMap((beat) => beat.actions);
  const passes = actions.filter((action) => action.kind === 'pass');
  return {
    passes: passes.length,
    skips: passes.filter((pass) => pass.style === 'skip').length,
    reads: play.reads.length,
    movers: new Set(actions.filter(moves).map((action) => action.by)).size,
  };
}

function moves(action: Action): boolean {
  switch (action.kind) {
    case 'carry':
    case 'run':
    case 'pick':
    case 'seal':
    case 'stepIn':
      return true;
    case 'pass':
    case 'fake':
    case 'hold':
    case 'shot':
      return false;
    default:
      return exhaustive(action);
  }
}

function exhaustive(action: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(action)}`);
}
