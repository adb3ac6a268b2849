import { type Label, type LabelRoom, placesRound } from './label-places.ts';
import type { MarkSizes } from './people-marks.ts';
import type { Primitive, View } from './scene.ts';
import type { TraceFrame } from './trace-frame.ts';
import { attackerWords, ballInFlightOrHands } from './trace-marks.ts';
import type { TraceNames } from './trace-names.ts';

/** How far a defender's name stands from the middle of his cross, to the side and up or down, yd. */
const nameSide = 1.45;
const nameHeight = 1.35;

/** What is drawn beside the men, and how. */
export interface DrawnAround {
  readonly view: View;
  readonly pxPerYard: number;
  readonly keeper: readonly Primitive[];
  readonly ground: readonly Primitive[];
}

/** Room that a figure on the ground takes, yd: half of ".20". */
const groundFigure = 0.55;

/** What labels at one moment keep clear of: the men's letters always; circles, crosses, keeper, ball and the ground's figures where they can. */
export function roomAmongPeople(
  frame: TraceFrame,
  names: TraceNames,
  sizes: MarkSizes,
  { view, pxPerYard, keeper, ground }: DrawnAround,
): LabelRoom {
  const ball = ballInFlightOrHands(frame, view, sizes);
  return {
    view,
    fixed: [...attackerWords(frame, names, view), ...keeper].flatMap((item) => (item.kind === 'text' ? [item] : [])),
    obstacles: [
      ...frame.offense.map((at) => ({ at, radius: sizes.attacker })),
      ...frame.defense.map((at) => ({ at, radius: sizes.cross })),
      { at: frame.keeper, radius: sizes.keeper },
      ...(ball.kind === 'circle' ? [{ at: ball.centre, radius: ball.radius }] : []),
      ...ground.flatMap((item) => (item.kind === 'text' ? [{ at: item.at, radius: groundFigure }] : [])),
    ],
    pxPerYard,
  };
}

/** The defenders' names, each beside its cross; a man without one is new. */
export function defenderLabels(frame: TraceFrame, names: TraceNames): readonly Label[] {
  return frame.defense.map((at, index) => ({
    style: 'defenderText',
    text: names.defense[index] ?? 'new',
    places: placesRound(at, nameSide, nameHeight),
  }));
}
