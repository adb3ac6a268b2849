import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirrorPlay, type Play, type Point } from '../../engine/index.ts';
import { demoPlaybook } from '../demo.ts';
import type { OwnSet, Playbook, PlayEntry } from '../schema.ts';
import { toEnginePlay } from '../to-engine.ts';
import { movePathPoint } from './edit-paths.ts';
import type { PlayEdit } from './edit-result.ts';
import { moveSpot } from './edit-spots.ts';
import { mirrorEntry } from './mirror-entry.ts';
import { groundOf, playSpots } from './play-ground.ts';

const ground = groundOf(demoPlaybook);

function edited(edit: PlayEdit): PlayEntry {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.play;
}

/** The spots in one order: a mirrored play names them in its set's. */
function sorted(play: Play): Play {
  return { ...play, spots: [...play.spots].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

const spotMoves = fc.array(
  fc.record({
    spot: fc.nat(5),
    to: fc.record({
      x: fc.double({ min: -20, max: 20, noNaN: true }),
      y: fc.double({ min: -10, max: 20, noNaN: true }),
    }),
  }),
  { maxLength: 4 },
);
const demo = fc.constantFrom(...demoPlaybook.plays);

/** A demo play with some of its men and one way led elsewhere, as far as the field allows it. */
function moved(play: PlayEntry, moves: readonly { readonly spot: number; readonly to: Point }[]): PlayEntry {
  const ids = playSpots(play, ground).map((spot) => spot.id);
  return moves.reduce((before, { spot, to }) => {
    const after = moveSpot(before, ground, ids[spot]!, to);
    const way = movePathPoint(
      after.kind === 'edited' ? after.play : before,
      ground,
      { beat: 'down', action: 1 },
      0,
      to,
    );
    return way.kind === 'edited' ? way.play : after.kind === 'edited' ? after.play : before;
  }, play);
}

const inBook = (play: PlayEntry): Playbook => ({ ...demoPlaybook, plays: [play] });

describe('a play written from the other side', () => {
  test('is the mirror image to the engine', () => {
    fc.assert(
      fc.property(demo, spotMoves, (play, moves) => {
        const entry = moved(play, moves);
        const image = toEnginePlay(inBook(edited(mirrorEntry(entry, ground))), entry.id);
        expect(sorted(image)).toEqual(sorted(mirrorPlay(toEnginePlay(inBook(entry), entry.id))));
      }),
    );
  });

  test('and written again is the play as it was, letter for letter', () => {
    fc.assert(
      fc.property(demo, spotMoves, (play, moves) => {
        const entry = moved(play, moves);
        const twice = edited(mirrorEntry(edited(mirrorEntry(entry, ground)), ground));
        expect(JSON.stringify(twice)).toBe(JSON.stringify(entry));
      }),
    );
  });

  test('a set that has no other side is refused', () => {
    const spots: OwnSet['spots'] = {
      P: { at: [0, 15] },
      TR: { at: [8, 12], needs: { shoot: 3 } },
      TL: { at: [-8, 12] },
      C: { at: [0, 6] },
      B1: { at: [5, -4] },
      X: { at: [0, -6] },
    };
    const own = { ...ground, sets: [{ id: 'own', name: 'Own', spots }] };
    const play: PlayEntry = {
      ...demoPlaybook.plays[0]!,
      set: 'own',
      beats: [{ id: 'go', on: 'start', do: ['P pass TR'] }],
      reads: [],
    };
    expect(mirrorEntry(play, own)).toMatchObject({
      kind: 'refused',
      reason: expect.stringMatching(/"own" has no other side/),
    });
  });

  test('a place by the name of a spot is the twin by its name', () => {
    const play = { ...demoPlaybook.plays[0]!, beats: [{ id: 'go', on: 'start', do: ['TL replace to TR'] }], reads: [] };
    expect(edited(mirrorEntry(play, ground)).beats[0]!.do).toEqual(['TR replace to TL']);
  });
});
