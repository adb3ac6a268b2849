import { drill } from './bodies/drill.ts';
import { runFlatArrays } from './bodies/flat-arrays.ts';
import { runObjects } from './bodies/objects.ts';
import { runYuka } from './bodies/yuka-vehicles.ts';
import { cpuSeconds, medianInTurn } from './measure.ts';

/** One way to move the bodies. */
export interface BodySpeed {
  readonly name: string;
  /** Million steps of one man a CPU second. */
  readonly speed: number;
  /** Of the engine's own on the same work. */
  readonly ratio: number;
}

const versions: readonly { readonly name: string; readonly run: () => Float64Array; readonly against: number }[] = [
  { name: 'ours, flat arrays, motion', run: () => runFlatArrays(false), against: 0 },
  { name: 'objects and new vectors, motion', run: () => runObjects(false), against: 0 },
  { name: 'yuka 0.7.8, Vehicle and ArriveBehavior, motion', run: runYuka, against: 0 },
  { name: 'ours, flat arrays, motion and contacts', run: () => runFlatArrays(true), against: 3 },
  { name: 'objects and new vectors, motion and contacts', run: () => runObjects(true), against: 3 },
];

/** The speed of each version over `runs` drills, the median of `repeats` taken in turn. */
export function measureBodies(runs: number, repeats: number): readonly BodySpeed[] {
  checkSamePlaces();
  const measurements = versions.map(({ run }) => () => {
    const seconds = cpuSeconds(() => {
      for (let index = 0; index < runs; index++) run();
    });
    return (runs * drill.men * drill.steps) / seconds / 1e6;
  });
  for (const measurement of measurements) measurement();
  const speeds = medianInTurn(repeats, measurements);
  return versions.map(({ name, against }, index) => ({
    name,
    speed: speeds[index]!,
    ratio: speeds[index]! / speeds[against]!,
  }));
}

/** Yards by which rounding may part the two versions in twenty seconds. */
const sameWithin = 1e-6;

/** Objects that end elsewhere would not do the same work. */
function checkSamePlaces(): void {
  const ours = runFlatArrays(false);
  const theirs = runObjects(false);
  ours.forEach((value, index) => {
    if (!(Math.abs(value - theirs[index]!) < sameWithin))
      throw new RangeError(`bodies differ at ${index}: ${value} and ${theirs[index]}`);
  });
}
