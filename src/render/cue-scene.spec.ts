import { describe, expect, it } from 'vitest';
import type { Cue } from '../engine/index.ts';
import { cueMarks } from './cue-marks.ts';
import { cueInstant, cueScene } from './cue-scene.ts';
import { handMadeNames, handMadeTrace } from './hand-made.fixture.ts';
import { stampSizes } from './people-marks.ts';
import { frameAt } from './trace-frame.ts';
import { smallWatchOptions, watchScene } from './watch-scene.ts';

const trace = handMadeTrace();
const time = heldAt();
const holder = frameAt(trace, time).holder;
const carrier = handMadeNames.offense[holder.kind === 'attacker' ? holder.index : -1]!;
const read = { carrier, cues: [{ kind: 'iAmPressed' }] } as const;

/** The first moment at which somebody of the offense has the ball. */
function heldAt(): number {
  const times = Array.from({ length: trace.frames }, (_, frame) => frame * trace.step);
  return times.find((each) => frameAt(trace, each).holder.kind === 'attacker')!;
}

const scene = (marked: boolean, cues: Parameters<typeof cueScene>[3]['cues'] = read.cues) =>
  cueScene(trace, time, handMadeNames, { carrier, cues, marked });

describe('the moment of a read', () => {
  it('is the usual small field, and under it a ring round the man who reads', () => {
    const usual = watchScene(trace, time, handMadeNames, { ...smallWatchOptions, reads: false });
    const { view, items } = scene(false);
    expect(view).toEqual(usual.view);
    expect(items.slice(1)).toEqual(usual.items);
    const { x, y } = frameAt(trace, time).offense[handMadeNames.offense.indexOf(carrier)]!;
    expect(items[0]).toMatchObject({ kind: 'circle', style: 'readRing', centre: { x, y } });
  });

  it('has the marks of each of its cues, above everybody, when it is marked', () => {
    const cues = handMadeNames.offense.map((who): Cue => ({ kind: 'open', who }));
    const marks = cues.flatMap((cue) => cueMarks(trace, time, cue, handMadeNames, stampSizes));
    expect(marks.length).toBeGreaterThan(1);
    const { items } = scene(true, cues);
    expect(items.slice(-marks.length)).toEqual(marks);
    const flights = new Set(['pass', 'passPast', 'shot']);
    const others = scene(false, cues).items.filter(({ style }) => !flights.has(style));
    expect(items.slice(0, -marks.length)).toEqual(others);
  });

  it('has no ring for a man whom nobody knows', () => {
    const styles = cueScene(trace, time, handMadeNames, { carrier: 'ZZ', cues: [], marked: true }).items;
    expect(styles.map(({ style }) => style)).not.toContain('readRing');
  });
});

describe('where the picture of a read stands still', () => {
  const instant = (cues: Parameters<typeof cueInstant>[3], at = time): number =>
    cueInstant(trace, at, handMadeNames, cues);
  const marksAt = (cue: Cue, at: number): number => cueMarks(trace, at, cue, handMadeNames).length;
  const all: readonly Cue[] = [
    { kind: 'iAmFree' },
    { kind: 'iAmPressed' },
    { kind: 'nextSteps' },
    { kind: 'creaseUp' },
    ...handMadeNames.offense.map((who): Cue => ({ kind: 'open', who })),
    ...handMadeNames.offense.map((who): Cue => ({ kind: 'left', who })),
  ];
  const times = Array.from({ length: trace.frames }, (_, frame) => frame * trace.step);

  it('is the nearest instant at which its cue can be marked, if there is one near', () => {
    const moved = new Set<boolean>();
    for (const at of times) {
      for (const cue of all) {
        const found = instant([cue], at);
        const near = times.filter((other) => Math.abs(other - at) < 0.4 - 1e-6 && marksAt(cue, other) > 0);
        const nearest = Math.min(...near.map((other) => Math.abs(other - at)));
        if (near.length > 0) {
          expect(marksAt(cue, found)).toBeGreaterThan(0);
          expect(Math.abs(found - at)).toBeLessThan(nearest + 1e-6);
        }
        if (Math.abs(found - at) > 1e-6) expect(marksAt(cue, at)).toBe(0);
        moved.add(found !== at);
      }
    }
    expect(moved).toEqual(new Set([true, false]));
  });

  it('is the moment itself for a read without a cue', () => {
    expect(instant([])).toBe(time);
  });
});
