import { ArriveBehavior, Vector3, Vehicle } from 'yuka';
import { drill } from './drill.ts';

/**
 * The drill with a general-purpose steering library: vehicles that arrive. Its arrival slows down linearly and its force is bounded
 * instead of dragged, so that the ways differ; the work (one body, one place, one step) is the same. No contacts.
 */
export function runYuka(): Float64Array {
  const { men, steps, each, places, starts, topSpeed, drag, step } = drill;
  const team = Array.from({ length: men }, (_, man) => {
    const vehicle = new Vehicle();
    vehicle.maxSpeed = topSpeed;
    vehicle.maxForce = drag * topSpeed;
    vehicle.updateOrientation = false;
    vehicle.position.set(starts[2 * man]!, 0, starts[2 * man + 1]!);
    const target = new Vector3();
    vehicle.steering.add(new ArriveBehavior(target, 1, 0.01));
    return { vehicle, target };
  });
  for (let now = 0; now < steps; now++) {
    const base = 2 * men * Math.floor(now / each);
    for (let man = 0; man < men; man++) {
      const { vehicle, target } = team[man]!;
      target.set(places[base + 2 * man]!, 0, places[base + 2 * man + 1]!);
      vehicle.update(step);
    }
  }
  return Float64Array.from(team.flatMap(({ vehicle }) => [vehicle.position.x, vehicle.position.z]));
}
