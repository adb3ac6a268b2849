import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirrorPlay, mirrorSpotId } from './mirror.ts';
import type { Action, Beat, Cue, Play, Read, Spot, Trigger } from './play.ts';

/** Plays of any shape, for laws: the ids are real ones, the rest is anything that the types allow. */
const spotId = fc.constantFrom('P', 'TR', 'TL', 'WR', 'WL', 'C', 'CR', 'CL', 'X', 'BR', 'BL', 'L1', 'R', 'A2');
const beatId = fc.constantFrom('swing', 'feed', 'go', 'reset');
const yards = fc.integer({ min: -240, max: 240 }).map((eighths) => eighths / 8);
const point = fc.record({ x: yards, y: yards });
const seconds = fc.integer({ min: 0, max: 40 }).map((tenths) => tenths / 10);
const weight = fc.integer({ min: 0, max: 3 });

const spot: fc.Arbitrary<Spot> = fc.record({
  id: spotId,
  at: point,
  hand: fc.constantFrom('left', 'right', 'either'),
  needs: fc.record({ feed: weight, shoot: weight, inside: weight, handle: weight }),
  safety: fc.constantFrom('backUp', 'getBack', 'none'),
});

const trigger: fc.Arbitrary<Trigger> = fc.oneof(
  fc.constant({ kind: 'start' } as const),
  fc.record({ kind: fc.constant('catch'), by: spotId }),
  fc.record({ kind: fc.constant('pass'), from: spotId }),
  fc.record({ kind: fc.constant('pass'), from: spotId, to: spotId }),
  fc.record({ kind: fc.constant('arrival'), who: spotId }),
  fc.record({ kind: fc.constant('call'), beat: beatId, seconds }),
);

const path = fc.array(point, { minLength: 1, maxLength: 3 });
const carrierActions = [
  fc.record({ kind: fc.constant('pass'), by: spotId, to: spotId, style: fc.constantFrom('adjacent', 'skip', 'feed') }),
  fc.record({ kind: fc.constant('carry'), by: spotId, path }),
  fc.record({ kind: fc.constant('fake'), by: spotId, toward: spotId }),
  fc.record({ kind: fc.constant('hold'), by: spotId, seconds }),
  fc.record({ kind: fc.constant('stepIn'), by: spotId, to: point }),
  fc.record({ kind: fc.constant('shot'), by: spotId }),
] as const;
const order: fc.Arbitrary<Read['then']> = fc.oneof(
  ...carrierActions,
  fc.record({ kind: fc.constantFrom('runIn' as const, 'reset' as const), by: spotId }),
);
const action: fc.Arbitrary<Action> = fc.oneof(
  ...carrierActions,
  fc.record({
    kind: fc.constant('run'),
    run: fc.constantFrom('cut', 'pop', 'sneak', 'flash', 'replace', 'backUp', 'getBack'),
    by: spotId,
    path,
    go: fc.constantFrom('now', 'whenOpen'),
  }),
  fc.record({ kind: fc.constant('pick'), by: spotId, at: point, on: spotId }),
  fc.record({ kind: fc.constant('seal'), by: spotId, on: spotId }),
);

const beat: fc.Arbitrary<Beat> = fc.record({ id: beatId, when: trigger, actions: fc.array(action, { maxLength: 4 }) });
const cue: fc.Arbitrary<Cue> = fc.oneof(
  fc.constant({ kind: 'iAmFree' } as const),
  fc.constant({ kind: 'iAmPressed' } as const),
  fc.record({
    kind: fc.constantFrom(
      'nextSteps' as const,
      'myManLeaves' as const,
      'creaseUp' as const,
      'farLowLooksAway' as const,
      'farLowCrosses' as const,
    ),
  }),
  fc.record({ kind: fc.constantFrom('open' as const, 'left' as const, 'laneTaken' as const), who: spotId }),
);
const read: fc.Arbitrary<Read> = fc.oneof(
  fc.record({ carrier: spotId, cues: fc.array(cue, { maxLength: 2 }), then: order }),
  fc.record({ carrier: spotId, during: beatId, cues: fc.array(cue, { maxLength: 2 }), then: order }),
);

const arbitraryPlay: fc.Arbitrary<Play> = fc
  .record(
    {
      id: fc.constant('any'),
      name: fc.constant('Any'),
      spots: fc.array(spot, { minLength: 6, maxLength: 6 }),
      start: fc.record({ ball: spotId, restart: point }),
      beats: fc.array(beat, { maxLength: 5 }),
      reads: fc.array(read, { maxLength: 4 }),
      reset: fc.record({ ball: spotId, then: fc.constantFrom('again' as const, 'free' as const) }),
      lastTen: fc.record({ beats: fc.array(beat, { maxLength: 2 }), reads: fc.array(read, { maxLength: 2 }) }),
    },
    { requiredKeys: ['id', 'name', 'spots', 'start', 'beats', 'reads', 'reset'] },
  )
  // Records without a prototype would never equal the plain objects that mirroring returns.
  .map((play) => JSON.parse(JSON.stringify(play)) as Play);

describe('mirrorPlay', () => {
  test('twice gives the play back, exactly', () => {
    fc.assert(
      fc.property(arbitraryPlay, (play) => {
        expect(mirrorPlay(mirrorPlay(play))).toStrictEqual(play);
      }),
    );
  });

  test('keeps the order of spots, beats, actions and reads, and every y', () => {
    fc.assert(
      fc.property(arbitraryPlay, (play) => {
        const mirrored = mirrorPlay(play);
        expect(mirrored.spots.map((spot) => spot.at.y)).toEqual(play.spots.map((spot) => spot.at.y));
        expect(mirrored.beats.map((beat) => [beat.id, beat.actions.map((action) => action.kind)])).toEqual(
          play.beats.map((beat) => [beat.id, beat.actions.map((action) => action.kind)]),
        );
        expect(mirrored.reads.map((read) => read.then.kind)).toEqual(play.reads.map((read) => read.then.kind));
      }),
    );
  });

  test('leaves no place, id or hand on its old side', () => {
    fc.assert(
      fc.property(arbitraryPlay, (play) => {
        const mirrored = mirrorPlay(play);
        const flatten = (value: unknown): readonly (readonly [string, unknown])[] =>
          typeof value === 'object' && value !== null
            ? Object.entries(value).flatMap(([key, inner]) =>
                typeof inner === 'object' ? flatten(inner) : [[key, inner] as const],
              )
            : [];
        const before = flatten(play);
        const after = flatten(mirrored);
        expect(after.length).toBe(before.length);
        for (const [i, [key, value]] of before.entries()) {
          const now = after[i]![1];
          if (key === 'x') expect((now as number) + (value as number)).toBe(0);
          else if (spotKeys.has(key) && typeof value === 'string') expect(now).toBe(mirrorSpotId(value));
          else if (key === 'hand')
            expect([value, now].sort()).toEqual(value === 'either' ? ['either', 'either'] : ['left', 'right']);
        }
      }),
    );
  });

  test('spots that are distinct stay distinct', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.stringMatching(/^[A-Z][A-Z0-9]{0,3}$/)), (ids) => {
        expect(new Set(ids.map(mirrorSpotId)).size).toBe(ids.length);
        expect(ids.map(mirrorSpotId).map(mirrorSpotId)).toEqual(ids);
      }),
    );
  });
});

const spotKeys = new Set(['ball', 'by', 'to', 'from', 'who', 'on', 'toward', 'carrier']);
