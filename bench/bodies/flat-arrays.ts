import { createMovers, motionStride, resolveContacts, setMover, stepToward } from '../../src/engine/index.ts';
import { type Drill, drill } from './drill.ts';

/** The engine's own step over flat arrays; places of all men at the end, x and y in turn. */
export function runFlatArrays(contacts: boolean): Float64Array {
  const { men, steps, each, places } = drill;
  const { movers, motion, planted } = memory;
  placeAll(drill);
  for (let step = 0; step < steps; step++) {
    const base = 2 * men * Math.floor(step / each);
    for (let man = 0; man < men; man++)
      stepToward(movers, motion, man, places[base + 2 * man]!, places[base + 2 * man + 1]!, 1, 1);
    if (contacts) resolveContacts(motion, 0, men, planted);
  }
  return Float64Array.from({ length: 2 * men }, (_, index) => motion[motionStride * (index >> 1) + (index & 1)]!);
}

const memory = {
  movers: createMovers(drill.men, drill.step),
  motion: new Float64Array(motionStride * drill.men),
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
