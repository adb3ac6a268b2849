/**
 * One block of the counter-based generator Philox4x32-10: four independent 32-bit words for a counter and a key.
 *
 * Written to `out[0..3]`; nothing is kept between calls, so that any block can be had in any order and by any worker.
 * Only the low 32 bits of each counter and key word count.
 *
 * Source: Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011),
 * doi 10.1145/2063384.2063405, section 3.3; constants as in the Random123 library's philox.h.
 */
export function philoxInto(
  counter0: number,
  counter1: number,
  counter2: number,
  counter3: number,
  key0: number,
  key1: number,
  out: Uint32Array,
): void {
  let c0 = counter0 | 0;
  let c1 = counter1 | 0;
  let c2 = counter2 | 0;
  let c3 = counter3 | 0;
  let k0 = key0 | 0;
  let k1 = key1 | 0;
  for (let round = 0; round < rounds; round++) {
    const high0 = multiplyHigh(multiplier0High, multiplier0Low, c0);
    const high1 = multiplyHigh(multiplier1High, multiplier1Low, c2);
    const low0 = Math.imul(multiplier0, c0);
    const low1 = Math.imul(multiplier1, c2);
    c0 = high1 ^ c1 ^ k0;
    c1 = low1;
    c2 = high0 ^ c3 ^ k1;
    c3 = low0;
    k0 = (k0 + weyl0) | 0;
    k1 = (k1 + weyl1) | 0;
  }
  out[0] = c0;
  out[1] = c1;
  out[2] = c2;
  out[3] = c3;
}

const rounds = 10;
const multiplier0 = 0xd2511f53;
const multiplier1 = 0xcd9e8d57;
const multiplier0High = multiplier0 >>> 16;
const multiplier0Low = multiplier0 & 0xffff;
const multiplier1High = multiplier1 >>> 16;
const multiplier1Low = multiplier1 & 0xffff;
/** Golden ratio and sqrt(3) - 1: the key's step from round to round. */
const weyl0 = 0x9e3779b9 | 0;
const weyl1 = 0xbb67ae85 | 0;

/** Upper 32 bits of the 64-bit product of `high * 2^16 + low` and `b`. Halves of 16 bits keep every partial sum below 2^32. */
function multiplyHigh(high: number, low: number, b: number): number {
  const bHigh = b >>> 16;
  const bLow = b & 0xffff;
  const middle = (Math.imul(high, bLow) + (Math.imul(low, bLow) >>> 16)) | 0;
  const cross = (Math.imul(low, bHigh) + (middle & 0xffff)) | 0;
  return (Math.imul(high, bHigh) + (middle >>> 16) + (cross >>> 16)) | 0;
}
