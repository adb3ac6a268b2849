import {
  bestAimInto,
  createAim,
  createAthlete,
  createKeeper,
  createShotOdds,
  createShotSituation,
  createShotView,
  defaultShotParameters,
  ellipseOdds,
  everywhere,
  faceKeeperInto,
  goalMouthAngle,
  keeperPlaceInto,
  type Level,
  metres,
  rectangleOdds,
  releaseInto,
  type Scatter,
  shotOddsInto,
} from '../../src/engine/index.ts';
import { factRow, type Group, nearRow, printedRow, type Row, rangeRow } from './row.ts';

const unit = (correlation: number): Scatter => ({ meanX: 0, meanY: 0, deviationX: 1, deviationY: 1, correlation });
const square = { left: -1, right: 1, bottom: -1, top: 1 };

const rectangles = [
  { id: 'square', what: 'square of side 2, rho 0', scatter: unit(0), area: square, value: 0.466064942674, digits: 12 },
  {
    id: 'square-half',
    what: 'square of side 2, rho .5',
    scatter: unit(0.5),
    area: square,
    value: 0.497971777839,
    digits: 12,
  },
  {
    id: 'quadrant',
    what: 'quadrant, rho .5: 1/4 + asin(.5) / 2 pi',
    scatter: unit(0.5),
    area: { ...everywhere, left: 0, bottom: 0 },
    value: 1 / 3,
    digits: 12,
  },
  {
    id: 'below',
    what: 'below (.5, 1), rho .3',
    scatter: unit(0.3),
    area: { ...everywhere, right: 0.5, top: 1 },
    value: 0.6093086778,
    digits: 9,
  },
] as const;

/** Circle of this radius at (offset, 0) under the unit normal: 1 - e^{-r^2/2}, and non-central chi square. */
const circles = [
  { radius: 1, offset: 0, value: 0.39346934, digits: 8 },
  { radius: 2, offset: 0, value: 0.864664717, digits: 9 },
  { radius: 1, offset: 1, value: 0.267120196203, digits: 12 },
  { radius: 1, offset: 2, value: 0.081892303631, digits: 12 },
] as const;

/** Goal of 1.83 m by 1.83 m, keeper an ellipse of half axes .55 and .85 m: on target, hit, goal. Metres. */
const mouth = { left: -0.915, right: 0.915, bottom: 0, top: 1.83 };
const aims = [
  { x: 0.65, y: 0.3, deviation: 0.25, keeperX: 0, onTarget: 0.75699392, hit: 0.16998472, goal: 0.5870092 },
  { x: 0, y: 0.915, deviation: 0.3, keeperX: 0, onTarget: 0.99542841, hit: 0.89991829, goal: 0.09551012 },
  { x: 0.65, y: 1.5, deviation: 0.25, keeperX: 0.1, onTarget: 0.77551577, hit: 0.21205268, goal: 0.5634631 },
] as const;

/** Angle between the pipes, depth and side in metres. */
const angles = [
  { depth: 5, side: 0, value: 0.361995 },
  { depth: 10, side: 0, value: 0.182492 },
  { depth: 8, side: 5, value: 0.164555 },
  { depth: 4, side: 4, value: 0.230713 },
] as const;

export function shotGroup(): Group {
  return {
    id: 'shot',
    title: 'Shot',
    about:
      "The integrals that shot odds rest on; where the best aim goes; and two anchors of shooting that nothing was fitted on: shots from outside, and the free shot of the women's game. That one is another game: sticks, ball speed and keepers differ, so it is a distant check of size.",
    rows: [
      ...rectangles.map(rectangleRow),
      ...circles.map(circleRow),
      ...aims.flatMap(aimRows),
      wideScatterRow(),
      ...angles.map(angleRow),
      ...bestAimRows(),
      farRow(),
      unguardedRow(),
    ],
  };
}

const integral = 'integral, computed apart';

function rectangleRow({ id, what, scatter, area, value, digits }: (typeof rectangles)[number]): Row {
  return printedRow({ id: `mass-${id}`, what, source: integral }, value, rectangleOdds(scatter, area), digits);
}

function circleRow({ radius, offset, value, digits }: (typeof circles)[number]): Row {
  const ours = ellipseOdds(unit(0), { x: offset, y: 0, halfWidth: radius, halfHeight: radius });
  return printedRow(
    { id: `circle-${radius}-${offset}`, what: `circle of radius ${radius}, ${offset} off`, source: integral },
    value,
    ours,
    digits,
  );
}

function round(meanX: number, meanY: number, deviation: number): Scatter {
  return { meanX, meanY, deviationX: deviation, deviationY: deviation, correlation: 0 };
}

function aimRows({ x, y, deviation, keeperX, onTarget, hit, goal }: (typeof aims)[number]): readonly Row[] {
  const scatter = round(x, y, deviation);
  const target = rectangleOdds(scatter, mouth);
  const stopped = ellipseOdds(scatter, { x: keeperX, y: 0.85, halfWidth: 0.55, halfHeight: 0.85 }, mouth);
  const at = `aim (${x}, ${y}) m, scatter ${deviation} m`;
  const id = `aim-${x}-${y}`;
  return [
    printedRow({ id: `${id}-target`, what: `${at}: on target`, source: integral }, onTarget, target, 8),
    printedRow({ id: `${id}-hit`, what: `${at}: at the keeper`, source: integral }, hit, stopped, 8),
    // The goal is the difference of the two and was printed from the rounded ones.
    nearRow({ id: `${id}-goal`, what: `${at}: goal`, source: integral }, goal, target - stopped, 1.5e-8, 8),
  ];
}

function wideScatterRow(): Row {
  return printedRow(
    { id: 'wide-scatter', what: 'aim (.65, .3) m, scatter .4 m: on target', source: integral },
    0.5769869,
    rectangleOdds(round(0.65, 0.3, 0.4), mouth),
    7,
  );
}

function angleRow({ depth, side, value }: (typeof angles)[number]): Row {
  const ours = goalMouthAngle(metres(side), metres(depth), metres(1.83));
  return printedRow(
    {
      id: `angle-${depth}-${side}`,
      what: `mouth from ${depth} m out, ${side} m aside, rad`,
      source: 'atan2, computed apart',
    },
    value,
    ours,
    6,
  );
}

/** Best aim of a shot from straight in front against a keeper who covers an ellipse `keeperAcross` yards off the middle. */
function bestAcross(deviation: number, keeperAcross: number): number {
  const view = {
    ...createShotView(),
    distance: 10,
    left: -1,
    right: 1,
    deviation,
    keeperAcross,
    keeperUp: 0.93,
    bodyWidth: 0.6,
    bodyHeight: 0.9,
    reachWidth: 0.6,
    reachHeight: 0.9,
  };
  const aim = createAim();
  bestAimInto(aim, view, { ...defaultShotParameters, bodyOdds: 1, reachOdds: 1 });
  return aim.across;
}

function bestAimRows(): readonly Row[] {
  const source = 'Tibshirani, Price and Taylor 2011 (darts), by analogy';
  const away = [bestAcross(0.3, -0.4), bestAcross(0.3, 0.4)];
  const inward = [0.1, 0.5, 1.5].map((deviation) => bestAcross(deviation, -0.2));
  const words = (values: readonly number[]) => values.map((value) => value.toFixed(2)).join(', ');
  return [
    factRow(
      { id: 'aim-away', what: 'best aim, keeper .4 yd left and .4 yd right of the middle: yards across', source },
      'right, left',
      words(away),
      away[0]! > 0 && away[1]! < 0,
    ),
    factRow(
      { id: 'aim-inward', what: 'best aim as scatter grows from .1 over .5 to 1.5 yd', source },
      'falls toward the middle',
      words(inward),
      inward[0]! > inward[1]! && inward[1]! > inward[2]!,
    ),
  ];
}

/** Mean goal odds of usual men's shots from these places, yards, with time and room or `rush`, the keeper on his spot. */
function meanOdds(level: Level, places: readonly (readonly [number, number])[], rush: number): number {
  const shooter = createAthlete({ level, hand: 'right', crosse: 'short' });
  const keeper = createKeeper({ level });
  const odds = createShotOdds();
  const point = new Float64Array(2);
  let sum = 0;
  for (const [x, y] of places) {
    const shot = createShotSituation();
    shot.x = x;
    shot.y = y;
    releaseInto(shot, shooter.shotSpeed, shooter.shotScatter, rush, 0, 1, defaultShotParameters);
    faceKeeperInto(shot, keeper);
    keeperPlaceInto(point, x, y);
    shot.keeperX = point[0]!;
    shot.keeperY = point[1]!;
    shotOddsInto(odds, shot);
    sum += odds.goal;
  }
  return sum / places.length;
}

const outside = [
  [0, 17],
  [6, 16],
  [9, 14.5],
  [0, 18],
  [-6, 16],
  [-9, 14.5],
] as const;

function farRow(): Row {
  return rangeRow(
    {
      id: 'far-model',
      what: 'pro shot from 16.5 to 18 yd with time and room, by the model alone',
      source: 'Keegan, Lacrosse Magazine Apr 2016: pro 2015, beyond 16 yd',
      use: 'held out',
    },
    '0.135',
    meanOdds('pro', outside, 0),
    0.1,
    0.18,
  );
}

/** The hashes of the fan lie on an arc 8 m (8.75 yd) from the goal's middle, to about 45 degrees on either side. */
const fan = [-45, -30, -15, 0, 15, 30, 45].map((degree) => {
  const angle = (degree * Math.PI) / 180;
  return [metres(8) * Math.sin(angle), metres(8) * Math.cos(angle)] as const;
});

function unguardedRow(): Row {
  return rangeRow(
    {
      id: 'unguarded',
      what: "college shot from 8 m, nobody near, by the model alone (theirs: women's free shot, mean and 10 to 90 % of 120 teams)",
      source: 'SCORE, NCAA women 2022-23 (free_position_pctg)',
      use: 'held out',
    },
    '0.432 (0.346 to 0.513)',
    meanOdds('college', fan, 0),
    0.346,
    0.513,
  );
}
