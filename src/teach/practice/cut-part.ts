import type { Action, BeatId, Order, Play, SpotId, Trigger } from '../../engine/index.ts';
import { type PlayPicture, type PlayStep, playSteps } from '../../render/index.ts';
import type { TaughtLook } from './taught-looks.ts';

/** A part of a play for fewer men: what is left of its script when only they run it, up to one look. */
export interface PlayPart {
  /** As the play has them, the man who begins with the ball first. */
  readonly men: readonly SpotId[];
  readonly look: Pick<TaughtLook, 'from' | 'to' | 'kind'>;
  /** In the order of the play; what nobody of these men does anything in is left out, but for the last. */
  readonly steps: readonly PartStep[];
}

/** What these men do in one step of the play. */
export interface PartStep {
  readonly beat: BeatId;
  readonly when: Trigger;
  /** Actions of the step that stay, each as it stands there; the last step may end with what a read has its man do in place of his own throw or shot. */
  readonly actions: readonly Order[];
  /** Number of that read; `null` where all of it is the script's. */
  readonly read: number | null;
  /** Where everybody of the play stands as it begins, and who has the ball. */
  readonly before: PlayPicture;
}

/** Parts are for so many attackers against one defender fewer. */
export const partSizes = { least: 3, most: 5 } as const;

/**
 * The men who carry a look, `most` of them or fewer: who throws, who gets it, whose move draws the defender, who brings the ball; then those who move nearest to it
 * until they are three. `most` is 3 to 5.
 */
export function menOfPart(play: Play, look: TaughtLook, opener: SpotId | null, most: number): readonly SpotId[] {
  const { steps, end } = scriptTo(play, look);
  const feeder = lastFeeder(steps.slice(0, end + 1), look.from);
  const movers = steps
    .slice(0, end + 1)
    .reverse()
    .flatMap(({ beat }) => beat.actions.map(({ by }) => by));
  const others = nearestTo(play, look.to);
  const wanted = [look.from, look.to, opener, feeder].filter((spot) => spot !== null);
  const named = [...new Set(wanted)].slice(0, most);
  const all = [...new Set([...named, ...movers, ...others])];
  const men = all.slice(0, Math.max(partSizes.least, named.length));
  const { holder } = startOf(steps, end, look.from, men);
  return [holder, ...men.filter((man) => man !== holder)];
}

/**
 * What is left of a play when only `men` run it up to a look; a part of its script, action for action. RangeError when the men do not hold the two of the look.
 */
export function cutPart(play: Play, look: TaughtLook, men: readonly SpotId[]): PlayPart {
  if (!men.includes(look.from) || !men.includes(look.to))
    throw new RangeError(`invalid part: ${men.join(' ')} (expected ${look.from} and ${look.to} among them)`);
  const { steps, end } = scriptTo(play, look);
  const { start, holder } = startOf(steps, end, look.from, men);
  const shown = steps.slice(start, end + 1).map((step, at): PartStep => {
    const kept = step.beat.actions.filter((action) => stays(action, men));
    const isLast = start + at === end;
    const then = isLast && look.read !== null ? play.reads[look.read]!.then : null;
    const actions = then === null ? kept : [...kept.filter((action) => !givesUpBall(action, look.from)), then];
    return {
      beat: step.beat.id,
      when: step.beat.when,
      actions,
      read: then === null ? null : look.read,
      before: step.before,
    };
  });
  const finish = look.read === null && look.to !== look.from ? finishOf(steps[end + 1], look.to) : [];
  return {
    men: [holder, ...men.filter((man) => man !== holder)],
    look: { from: look.from, to: look.to, kind: look.kind },
    steps: [...shown.filter(({ actions }, at) => actions.length > 0 || at === shown.length - 1), ...finish],
  };
}

interface ScriptTo {
  readonly steps: readonly PlayStep[];
  /** Number of the step in which the look is taken. */
  readonly end: number;
}

function scriptTo(play: Play, { from, beat }: TaughtLook): ScriptTo {
  const steps = playSteps(play);
  const named = steps.findIndex((step) => step.beat.id === beat);
  if (named >= 0) return { steps, end: named };
  // A read that counts in every step is taken in the first in which he can have the ball.
  const his = steps.findIndex(({ before }) => before.ball === from);
  return { steps, end: his < 0 ? steps.length - 1 : his };
}

/** Of a longer way to the look only so many steps are run: what comes before is what a skeleton is for (common practice, no source). */
const mostSteps = 4;

/** The earliest step from which on the ball stays among the men, and who has it then. */
function startOf(
  steps: readonly PlayStep[],
  end: number,
  from: SpotId,
  men: readonly SpotId[],
): { readonly start: number; readonly holder: SpotId } {
  let start = end;
  while (
    start > Math.max(0, end + 1 - mostSteps) &&
    men.includes(steps[start - 1]!.before.ball) &&
    leads(steps[start - 1]!, men)
  )
    start -= 1;
  const { ball } = steps[start]!.before;
  // The ball comes to him in the very step of the read, from somebody outside the part.
  return { start, holder: men.includes(ball) ? ball : from };
}

/** Whether a step leaves the ball with one of the men. */
function leads({ after }: PlayStep, men: readonly SpotId[]): boolean {
  return men.includes(after.ball);
}

function lastFeeder(steps: readonly PlayStep[], to: SpotId): SpotId | null {
  for (const { beat } of [...steps].reverse())
    for (const action of beat.actions) if (action.kind === 'pass' && action.to === to) return action.by;
  return null;
}

function stays(action: Action, men: readonly SpotId[]): boolean {
  const about = { pass: 'to', fake: 'toward', pick: 'on', seal: 'on' } as const;
  const field = about[action.kind as keyof typeof about];
  const other = field === undefined ? undefined : (action as unknown as Record<string, SpotId>)[field];
  return men.includes(action.by) && (other === undefined || men.includes(other));
}

function givesUpBall(action: Action, by: SpotId): boolean {
  return action.by === by && (action.kind === 'pass' || action.kind === 'shot');
}

/** What the script has the receiver do when he has caught it. */
function finishOf(next: PlayStep | undefined, to: SpotId): readonly PartStep[] {
  if (next === undefined || next.before.ball !== to) return [];
  const actions = next.beat.actions.filter(({ by, kind }) => by === to && (kind === 'shot' || kind === 'stepIn'));
  if (actions.length === 0) return [];
  return [{ beat: next.beat.id, when: next.beat.when, actions, read: null, before: next.before }];
}

function nearestTo({ spots }: Play, spot: SpotId): readonly SpotId[] {
  const at = spots.find(({ id }) => id === spot)!.at;
  const far = (id: SpotId): number => {
    const other = spots.find((one) => one.id === id)!.at;
    return Math.hypot(other.x - at.x, other.y - at.y);
  };
  return spots.map(({ id }) => id).sort((a, b) => far(a) - far(b));
}
