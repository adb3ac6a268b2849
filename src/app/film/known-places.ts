import { landmarksOf, type Markings, type Point } from '../../engine/index.ts';

/** A place of the field that is painted on it, or stands on it, so that it can be found in a frame. */
export interface KnownPlace {
  readonly id: string;
  readonly at: Point;
  /** As a coach would say it; left and right looking in at the goal. */
  readonly words: string;
}

/** A painted straight line, from one end of it to the other. */
export interface KnownLine {
  readonly id: string;
  readonly ends: readonly [Point, Point];
  readonly words: string;
}

export interface KnownField {
  readonly places: readonly KnownPlace[];
  readonly lines: readonly KnownLine[];
}

/** What a rule code paints on the half field round a goal: corners and crossings of lines, the goal, and the lines themselves. */
export function knownField(markings: Markings): KnownField {
  const { sideline, boxSide, restrainingLine, endLine, midfieldLine, leftPost, rightPost, netPeg, creaseRadius } =
    landmarksOf(markings);
  const boxWords = (side: string): string => `Corner of the box on top, ${side}`;
  const places: readonly KnownPlace[] = [
    { id: 'left-post', at: leftPost, words: 'Left pipe, where it stands on the ground' },
    { id: 'right-post', at: rightPost, words: 'Right pipe, where it stands on the ground' },
    { id: 'net', at: netPeg, words: 'Back corner of the net on the ground' },
    { id: 'crease-top', at: { x: 0, y: creaseRadius }, words: 'Top of the crease' },
    { id: 'crease-left', at: { x: -creaseRadius, y: 0 }, words: 'Crease at the goal line, left' },
    { id: 'crease-right', at: { x: creaseRadius, y: 0 }, words: 'Crease at the goal line, right' },
    ...(boxSide === null
      ? []
      : [
          { id: 'box-left', at: { x: -boxSide, y: restrainingLine }, words: boxWords('left') },
          { id: 'box-right', at: { x: boxSide, y: restrainingLine }, words: boxWords('right') },
          { id: 'box-end-left', at: { x: -boxSide, y: endLine }, words: 'Box at the end line, left' },
          { id: 'box-end-right', at: { x: boxSide, y: endLine }, words: 'Box at the end line, right' },
        ]),
    ...(boxSide === null
      ? [
          { id: 'line-left', at: { x: -sideline, y: restrainingLine }, words: 'Restraining line at the left sideline' },
          {
            id: 'line-right',
            at: { x: sideline, y: restrainingLine },
            words: 'Restraining line at the right sideline',
          },
        ]
      : []),
    { id: 'corner-left', at: { x: -sideline, y: endLine }, words: 'Corner of the field, left' },
    { id: 'corner-right', at: { x: sideline, y: endLine }, words: 'Corner of the field, right' },
    { id: 'mid-left', at: { x: -sideline, y: midfieldLine }, words: 'Midfield at the left sideline' },
    { id: 'mid-right', at: { x: sideline, y: midfieldLine }, words: 'Midfield at the right sideline' },
  ];
  const across = (id: string, y: number, half: number, words: string): KnownLine => ({
    id,
    ends: [
      { x: -half, y },
      { x: half, y },
    ],
    words,
  });
  const along = (id: string, x: number, to: number, words: string): KnownLine => ({
    id,
    ends: [
      { x, y: endLine },
      { x, y: to },
    ],
    words,
  });
  const lines: readonly KnownLine[] = [
    across('top-line', restrainingLine, boxSide ?? sideline, 'Line across the top of the box'),
    across('end-line', endLine, sideline, 'End line'),
    ...(boxSide === null
      ? []
      : [
          along('box-side-left', -boxSide, restrainingLine, 'Left side of the box'),
          along('box-side-right', boxSide, restrainingLine, 'Right side of the box'),
        ]),
    along('side-left', -sideline, midfieldLine, 'Left sideline'),
    along('side-right', sideline, midfieldLine, 'Right sideline'),
    across('mid-line', midfieldLine, sideline, 'Midfield line'),
  ];
  return { places, lines };
}

/** Steps into which the crease is cut to be drawn. */
const creaseSteps = 32;

/** Everything that is drawn over a frame to see whether the fit is good: short straight ways, yards. */
export function drawnLines(markings: Markings): readonly (readonly [Point, Point])[] {
  const { leftPost, rightPost, netPeg, creaseRadius } = landmarksOf(markings);
  const round = (step: number): Point => {
    const turn = (2 * Math.PI * step) / creaseSteps;
    return { x: creaseRadius * Math.cos(turn), y: creaseRadius * Math.sin(turn) };
  };
  return [
    ...knownField(markings).lines.map(({ ends }) => ends),
    ...Array.from({ length: creaseSteps }, (_, step) => [round(step), round(step + 1)] as const),
    [leftPost, rightPost],
    [leftPost, netPeg],
    [netPeg, rightPost],
  ];
}
