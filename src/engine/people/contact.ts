import { motionStride } from './motion.ts';

/**
 * Half the room that a man takes, yd: the distance from his body centre at which another man's body stops him.
 *
 * Common practice, no source: a padded player is about half a metre across at the shoulders and holds his crosse in front
 * of them, which puts two bodies in contact at about 0.75 yd (0.69 m) between centres.
 */
export const bodyRadius = 0.375;

/**
 * Speed at which a man who has run into a set pick works his way off it, along the contact, at least, yd/s.
 *
 * Common practice, no source: a defender who feels a set pick is past it in about half a second, which is a body's breadth
 * at this speed. Without it one who meets a pick dead centre would push against it for ever.
 */
export const aroundSpeed = 1.5;

/**
 * Push apart the bodies of agents `from` (included) to `to` (excluded) that overlap, once.
 *
 * Each pair is moved apart along the line between its centres until they touch, half each, and their speed toward each other
 * is taken away, half each; along the contact they slide. A planted agent (`planted[i]` is not 0: a set pick) neither moves nor
 * loses speed, so the other takes it all: he stops, and goes round on the side to which he already slides. Pairs are taken in index order, and one pass
 * may leave a small overlap in a crowd (`crowdTolerance`); the next step takes it up. Writes `motion` in place,
 * allocates nothing. The mirror image gives exactly the negated result.
 */
export function resolveContacts(motion: Float64Array, from: number, to: number, planted: Uint8Array): void {
  let i = from;
  let other = from + 1;
  for (;;) {
    const pair = nextContact(motion, i, other, to);
    if (pair < 0) return;
    i = Math.floor(pair / to);
    const j = pair % to;
    separate(motion, i * motionStride, j * motionStride, planted[i] !== 0, planted[j] !== 0);
    other = j + 1;
  }
}

/**
 * The first overlapping pair from (i, other) on, as i * to + other; -1 when there is none, which is nearly always so.
 *
 * Alone in its function because it makes up most of what contacts cost: beside `separate` it ran at half the speed. One test on the
 * square, not a box first: a branch that is hard to foresee costs more than two products.
 */
function nextContact(motion: Float64Array, i: number, other: number, to: number): number {
  const end = to * motionStride;
  for (let first = i, at = other * motionStride; first < to - 1; first++, at = (first + 1) * motionStride) {
    const x = motion[first * motionStride]!;
    const y = motion[first * motionStride + 1]!;
    // Two at a time: the second man's numbers are on their way while the first is tested.
    for (; at + motionStride < end; at += 2 * motionStride) {
      const apartX = motion[at]! - x;
      const apartY = motion[at + 1]! - y;
      const nextX = motion[at + motionStride]! - x;
      const nextY = motion[at + motionStride + 1]! - y;
      if (apartX * apartX + apartY * apartY < contactSquared) return first * to + at / motionStride;
      if (nextX * nextX + nextY * nextY < contactSquared) return first * to + at / motionStride + 1;
    }
    if (at < end) {
      const apartX = motion[at]! - x;
      const apartY = motion[at + 1]! - y;
      if (apartX * apartX + apartY * apartY < contactSquared) return first * to + at / motionStride;
    }
  }
  return -1;
}

const contactSquared = 2 * bodyRadius * (2 * bodyRadius);

/** Overlap that one pass may leave in a crowd of twelve, yd: two thirds of a body's radius in the worst pile, see the tests. */
export const crowdTolerance = 0.25;

function separate(motion: Float64Array, a: number, b: number, plantedA: boolean, plantedB: boolean): void {
  if (plantedA && plantedB) return;
  const apartX = motion[b]! - motion[a]!;
  const apartY = motion[b + 1]! - motion[a + 1]!;
  const distance = Math.sqrt(apartX * apartX + apartY * apartY);
  // On the same spot the line between them has no direction: along y, the one that a mirror image leaves alone.
  const normalX = distance > 0 ? apartX / distance : 0;
  const normalY = distance > 0 ? apartY / distance : 1;
  const shareA = plantedA ? 0 : plantedB ? 1 : 0.5;
  const shareB = plantedB ? 0 : plantedA ? 1 : 0.5;
  const overlap = 2 * bodyRadius - distance;
  motion[a] = motion[a]! - shareA * overlap * normalX;
  motion[a + 1] = motion[a + 1]! - shareA * overlap * normalY;
  motion[b] = motion[b]! + shareB * overlap * normalX;
  motion[b + 1] = motion[b + 1]! + shareB * overlap * normalY;
  const closing = (motion[a + 2]! - motion[b + 2]!) * normalX + (motion[a + 3]! - motion[b + 3]!) * normalY;
  if (!(closing > 0)) return;
  motion[a + 2] = motion[a + 2]! - shareA * closing * normalX;
  motion[a + 3] = motion[a + 3]! - shareA * closing * normalY;
  motion[b + 2] = motion[b + 2]! + shareB * closing * normalX;
  motion[b + 3] = motion[b + 3]! + shareB * closing * normalY;
  if (plantedA) goAround(motion, b, normalX, normalY);
  else if (plantedB) goAround(motion, a, normalX, normalY);
}

/** Give the man at `moving` at least `aroundSpeed` along the contact whose normal is given, on the side to which he slides. */
function goAround(motion: Float64Array, moving: number, normalX: number, normalY: number): void {
  const vx = motion[moving + 2]!;
  const vy = motion[moving + 3]!;
  const slide = vy * normalX - vx * normalY;
  if (slide >= aroundSpeed || slide <= -aroundSpeed) return;
  const side = slide !== 0 ? Math.sign(slide) : deadCentreSide(motion[moving]!, normalX, normalY);
  const missing = side * aroundSpeed - (side === 0 ? 0 : slide);
  motion[moving + 2] = vx - missing * normalY;
  motion[moving + 3] = vy + missing * normalX;
}

/**
 * The way round a pick met dead centre: toward midfield, or toward the middle when that does not decide.
 *
 * Neither choice changes in a mirror image. On the middle line itself there is none, and he stays where he is.
 */
function deadCentreSide(x: number, normalX: number, normalY: number): number {
  return normalX !== 0 ? Math.sign(normalX) : Math.sign(x * normalY);
}
