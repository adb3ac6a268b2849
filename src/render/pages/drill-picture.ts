import type { Action, Order, Play, Point, SpotId } from '../../engine/index.ts';
import { type FieldMarkings, viewAround } from '../field-scene.ts';
import { placeLabels, placesRound } from '../label-places.ts';
import { defenderMark, usualSizes } from '../people-marks.ts';
import { stepMarks } from '../play-scene.ts';
import { type PlayStep, playSteps } from '../play-steps.ts';
import type { Primitive, SceneLayer, View } from '../scene.ts';
import { pxPerYard } from '../svg-styles.ts';
import { bareField } from './bare-field.ts';
import { scaledField } from './scaled-play.ts';

/** One moment of a drill: who stands where, who has the ball, what they do next, and who is in their way. Yards. */
export interface DrillStep {
  readonly men: readonly { readonly spot: SpotId; readonly at: Point }[];
  readonly ball: SpotId;
  readonly actions: readonly Order[];
  readonly defenders: readonly { readonly name: string; readonly at: Point }[];
}

/** The part of the field that a picture of a drill shows at least, yards. */
const closeView: View = { left: -8, top: -4.5, width: 16, height: 13 };

/**
 * The steps of a drill as pictures with one view, so that the eye goes from one to the next. `share` above 0 to 1 is how much of the ground is shown on the same paper:
 * with less of it men and letters are larger beside it. `shape` is height over width of the place that they go to.
 */
export function drillPictures(
  steps: readonly DrillStep[],
  field: FieldMarkings,
  share: number,
  shape: number,
): readonly SceneLayer[] {
  const small = steps.map((step) => scaledStep(step, share));
  const places = small.flatMap((step) => {
    const { before, after } = playStepOf(step);
    const defenders = step.defenders.map(({ at }) => at);
    return [...Object.values(before.places), ...Object.values(after.places), ...defenders];
  });
  const view = shaped(viewAround(places, scaledView(share)), shape);
  return small.map((step) => {
    const drawn = [
      ...bareField(scaledField(field, share), view),
      ...step.defenders.flatMap(({ at }) => defenderMark(at)),
      ...stepMarks(playOf(step), 1, playStepOf(step)),
    ];
    return { view, items: [...drawn, ...namesOf(step, view, drawn)] };
  });
}

/** A drill as a play of one step, which is what draws plays know. */
function playOf({ men, ball, actions }: DrillStep): Play {
  return {
    id: 'drill',
    name: 'drill',
    spots: men.map(({ spot, at }) => ({
      id: spot,
      at,
      hand: 'either',
      needs: { feed: 0, shoot: 0, inside: 0, handle: 0 },
      safety: 'none',
    })),
    start: { ball, restart: { x: 0, y: 0 } },
    beats: [{ id: 'step', when: { kind: 'start' }, actions: actions.flatMap((order) => drawnAction(order, men)) }],
    reads: [],
    reset: { ball, then: 'free' },
  };
}

function playStepOf(step: DrillStep): PlayStep {
  return playSteps(playOf(step))[0]!;
}

/** How far a man steps in of whom it is only said that he does, yd. */
const stepIn = 3;

/** A step in has no place of its own in a read: it goes toward the goal. The reset is nothing to draw. */
function drawnAction(order: Order, men: DrillStep['men']): readonly Action[] {
  if (order.kind === 'reset') return [];
  if (order.kind !== 'runIn') return [order];
  const at = men.find(({ spot }) => spot === order.by)?.at;
  if (at === undefined) return [];
  const far = Math.hypot(at.x, at.y);
  const left = Math.max(0, far - stepIn) / Math.max(far, stepIn);
  return [{ kind: 'stepIn', by: order.by, to: { x: at.x * left, y: at.y * left } }];
}

/** How far a defender's name stands from the middle of his cross, to the side and up or down, yd. */
const nameSide = 1.6;
const nameHeight = 1.45;

/** Names beside the crosses, where there is room for them; letters of men and words of the step keep theirs. */
function namesOf({ defenders, men }: DrillStep, view: View, drawn: readonly Primitive[]): readonly Primitive[] {
  const { attacker, cross } = usualSizes;
  return placeLabels(
    defenders.map(({ at, name }) => ({
      style: 'defenderText' as const,
      text: name,
      places: placesRound(at, nameSide, nameHeight),
    })),
    {
      view,
      fixed: drawn.flatMap((item) => (item.kind === 'text' ? [item] : [])),
      obstacles: [
        ...men.map(({ at }) => ({ at, radius: attacker })),
        ...defenders.map(({ at }) => ({ at, radius: cross })),
      ],
      pxPerYard,
    },
  );
}

/** As much more of the field to the sides or below as makes the picture fill its place. */
function shaped({ left, top, width, height }: View, shape: number): View {
  const wide = Math.max(width, height / shape);
  return { left: left - (wide - width) / 2, top, width: wide, height: Math.max(height, wide * shape) };
}

function scaledView(share: number): View {
  return {
    left: closeView.left * share,
    top: closeView.top * share,
    width: closeView.width * share,
    height: closeView.height * share,
  };
}

function scaledStep(step: DrillStep, share: number): DrillStep {
  const near = ({ x, y }: Point): Point => ({ x: x * share, y: y * share });
  return {
    ...step,
    men: step.men.map(({ spot, at }) => ({ spot, at: near(at) })),
    defenders: step.defenders.map(({ name, at }) => ({ name, at: near(at) })),
    actions: step.actions.map((action) => scaledOrder(action, near)),
  };
}

function scaledOrder(order: Order, near: (at: Point) => Point): Order {
  switch (order.kind) {
    case 'carry':
    case 'run':
      return { ...order, path: order.path.map(near) };
    case 'pick':
      return { ...order, at: near(order.at) };
    case 'stepIn':
      return { ...order, to: near(order.to) };
    default:
      return order;
  }
}
