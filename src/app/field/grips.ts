import type { Play, Point, SpotId } from '../../engine/index.ts';
import { actionPath, openingPicture, type PlayPicture, type PlayStep, playSteps } from '../../render/index.ts';

/** Something on the field that can be taken hold of. Yards. */
export type Grip =
  | { readonly kind: 'man'; readonly spot: SpotId; readonly at: Point }
  | { readonly kind: 'restart'; readonly at: Point }
  /** The n-th point after his own place of the way that an action leads; the last one is its end. */
  | {
      readonly kind: 'point';
      readonly beat: string;
      /** Place among the beat's actions. */
      readonly action: number;
      readonly point: number;
      readonly by: SpotId;
      readonly isEnd: boolean;
      readonly at: Point;
    };

/** One step of a play as it lies on the field: step 0 is the set. */
export interface FieldStep {
  readonly step: number;
  /** The beat that the step draws; none for the set. */
  readonly beat: string | undefined;
  readonly picture: PlayPicture;
  /** Who has the ball at the end of the step: where the next pass comes from. */
  readonly ballAfter: SpotId;
  readonly grips: readonly Grip[];
}

/** The step of a play with all that can be taken hold of in it; the last step for a number beyond it. */
export function fieldStep(play: Play, step: number): FieldStep {
  const steps = playSteps(play);
  const at = Math.min(Math.max(0, step), steps.length);
  const shown = steps[at - 1];
  const picture = shown?.before ?? openingPicture(play);
  return {
    step: at,
    beat: shown?.beat.id,
    picture,
    ballAfter: shown?.after.ball ?? play.start.ball,
    // A man before the end of another's way that leads to him: he could not be taken hold of otherwise.
    grips: [...manGrips(play, picture), ...pointGrips(shown), ...(at === 0 ? restartGrip(play) : [])],
  };
}

function manGrips(play: Play, picture: PlayPicture): readonly Grip[] {
  return play.spots.map(({ id }) => ({ kind: 'man', spot: id, at: picture.places[id]! }));
}

function restartGrip(play: Play): readonly Grip[] {
  return [{ kind: 'restart', at: play.start.restart }];
}

function pointGrips(shown: PlayStep | undefined): readonly Grip[] {
  return (shown?.beat.actions ?? []).flatMap((action, index) => {
    const points = actionPath(action, shown!.before)?.slice(1) ?? [];
    return points.map(
      (at, point): Grip => ({
        kind: 'point',
        beat: shown!.beat.id,
        action: index,
        point,
        by: action.by,
        isEnd: point === points.length - 1,
        at,
      }),
    );
  });
}

/** The same grip after the play changed: told by what it holds, not by where it is. */
export function gripKey(grip: Grip): string {
  switch (grip.kind) {
    case 'man':
      return `man ${grip.spot}`;
    case 'restart':
      return 'restart';
    case 'point':
      return `point ${grip.beat} ${grip.action} ${grip.point}`;
    default:
      return exhaustive(grip);
  }
}

/** The grip nearest to a place, no farther than `reach` yards from it; the first of those that are as near. */
export function gripAt(grips: readonly Grip[], at: Point, reach: number): Grip | undefined {
  let best: Grip | undefined;
  let bestDistance = reach;
  for (const grip of grips) {
    const distance = Math.hypot(grip.at.x - at.x, grip.at.y - at.y);
    if (distance < bestDistance || (best === undefined && distance <= reach)) {
      best = grip;
      bestDistance = distance;
    }
  }
  return best;
}

function exhaustive(grip: never): never {
  throw new TypeError(`unknown grip: ${JSON.stringify(grip)}`);
}
