import {
  createMovers,
  motionStride,
  resolveContacts,
  type Steering,
  setMover,
  stepAll,
} from '../../src/engine/index.ts';
import { type Drill, drill } from './drill.ts';

/** The engine's own step over flat arrays; places of all men at the end, x and y in turn. */
export function runFlatArrays(contacts: boolean): Float64Array {
  const { men, steps, each, places } = drill;
  const { movers, motion, steering, planted } = memory;
  placeAll(drill);
  for (let step = 0; step < steps; step++) {
    if (step % each === 0) {
      const base = 2 * men * (step / each);
      for (let at = 0; at < 2 * men; at++) steering.target[at] = places[base + at]!;
    }
    stepAll(movers, motion, steering);
    if (contacts) resolveContacts(motion, 0, men, planted);
  }
  return Float64Array.from({ length: 2 * men }, (_, index) => motion[motionStride * (index >> 1) + (index & 1)]!);
}

const steering: Steering = {
  target: new Float64Array(2 * drill.men),
  arrive: new Uint8Array(drill.men).fill(1),
  effort: new Float64Array(drill.men).fill(1),
  present: new Uint8Array(drill.men).fill(1),
};

const memory = {
  movers: createMovers(drill.men, drill.step),
  motion: new Float64Array(motionStride * drill.men),
  steering,
  planted: new Uint8Array(drill.men),
};
for (let man = 0; man < drill.men; man++) setMover(memory.movers, man, drill.topSpeed, drill.drag);

function placeAll({ men, starts }: Drill): void {
  const { motion } = memory;
  motion.fill(0);
  for (let man = 0; man < men; man++) {
    motion[motionStride * man] = starts[2 * man]!;
    motion[motionStride * man + 1] = starts[2 * man + 1]!;
  }
}
