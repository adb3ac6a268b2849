import { passReason } from '../chance/pass.ts';
import { ballMode, type ChanceState } from '../chance/state.ts';
import type { OwnThrow } from './own-throws.ts';

/** Whether the play asks the man with the ball for this pass now, and he can throw it (`canAct`) or has just done so. */
export function isAskedFor({ unit, ball }: ChanceState, own: OwnThrow, canAct: boolean): boolean {
  const { from, to, asked, beat } = own;
  if (asked === 'read') return canAct && (beat < 0 || unit.newestBeat === beat);
  // Two beats may name the same pass: his order is that of the beat which began when he got it.
  if (unit.passSince[from] !== unit.beatStarted[beat]) return false;
  const thrown = ball.mode === ballMode.windUp && ball.why === passReason.script && ball.to === to;
  return thrown || (canAct && unit.passTo[from] === to);
}
