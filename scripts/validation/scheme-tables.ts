import type { SchemeId } from '../../src/engine/index.ts';

/**
 * Ring tables from which man-down units are taught, as the rotations' roles give them. Written out here from the sources and apart
 * from the engine's own tests, so that a slip in one shows against the other.
 *
 * A duty in words: `ball` | `on TL` (his man, in whatever manner) | `split P TR` | `lane WR` | `crease C` (fronts, locks or plays him) | `-` (silent).
 */
export interface RingTable {
  readonly scheme: SchemeId;
  readonly set: string;
  readonly source: string;
  readonly columns: readonly string[];
  /** Ball spot, then a duty per column. */
  readonly rows: readonly (readonly string[])[];
}

const roles = 'roles of paperzz.com/doc/7108563 (Man Down Defense in Boys Lacrosse); tables derived';

export const ringTables: readonly RingTable[] = [
  {
    scheme: 'four-man-rotation',
    set: '3-3',
    source: roles,
    columns: ['tl', 'tr', 'll', 'lr', 'c'],
    rows: [
      ['WL', 'on TL', 'split P TR', 'ball', 'on WR', 'crease C'],
      ['TL', 'ball', 'on P', 'on WL', 'split TR WR', 'crease C'],
      ['P', 'on TL', 'ball', 'split WR WL', 'on TR', 'crease C'],
      ['TR', 'split WL TL', 'on P', 'on WR', 'ball', 'crease C'],
      ['WR', 'on WL', 'split TL P', 'ball', 'on TR', 'crease C'],
      ['TR', 'split TL WL', 'on P', 'on WR', 'ball', 'crease C'],
    ],
  },
  {
    scheme: 'four-man-rotation',
    set: '2-3-1',
    source: roles,
    columns: ['tl', 'tr', 'll', 'lr', 'c'],
    rows: [
      ['TL', 'ball', 'on TR', 'on WL', 'split WR X', 'crease C'],
      ['TR', 'on TL', 'ball', 'split WL X', 'on WR', 'crease C'],
      ['WR', 'split TL WL', 'on TR', 'on X', 'ball', 'crease C'],
      ['X', 'on WL', 'split TL TR', 'ball', 'on WR', 'crease C'],
      ['WL', 'ball', 'on TL', 'on X', 'split TR WR', 'crease C'],
      ['TL', 'on WL', 'ball', 'split X WR', 'on TR', 'crease C'],
    ],
  },
  {
    scheme: 'box-string',
    set: '1-3-2',
    source: 'coachesinsider.com/lacrosse/man-down-defense-against-2-1-3',
    columns: ['tr', 'tl', 'lr', 'll', 'c'],
    rows: [
      ['BR', 'on WR', 'split P WL', 'ball', 'on BL', 'crease C'],
      ['WR', 'ball', '-', 'lane C', 'on C', 'on P'],
      ['P', 'lane WR', 'lane WL', 'on C', 'on C', 'ball'],
    ],
  },
  {
    scheme: 'five-man-rotation',
    set: '3-3',
    source: 'row P: slideplayer.com/amp/2345932; the rest extended from its rules',
    columns: ['pt', 'tr', 'tl', 'lr', 'll'],
    rows: [
      ['P', 'ball', 'lane WR', 'lane WL', 'crease C', '-'],
      ['TR', 'on P', 'ball', 'split TL WL', 'on WR', 'crease C'],
      ['WR', 'split P TL', 'on TR', 'on WL', 'ball', 'crease C'],
      ['TR', 'on P', 'ball', 'split TL WL', 'on WR', 'crease C'],
      ['WL', 'on TL', 'split P TR', 'ball', 'crease C', '-'],
    ],
  },
  {
    scheme: 'two-down',
    set: '3-3',
    source: 'coachesinsider.com/lacrosse/two-men-down-vs-1-3-2-drill-article',
    columns: ['tr', 'tl', 'lr', 'll'],
    rows: [
      ['TR', 'ball', 'on P', 'on WR', 'crease C'],
      ['WR', 'lane P', 'crease C', 'ball', 'crease C'],
    ],
  },
  {
    scheme: 'two-down',
    set: '1-4-1',
    source: 'coachesinsider.com/lacrosse/two-men-down-vs-1-3-2-drill-article',
    columns: ['tr', 'tl', 'lr', 'll'],
    rows: [['WR', 'ball', 'lane CR', 'lane CL', 'split CR CL']],
  },
];
