import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepsPerYard, trackOf, samplesPerSecond as writtenPerSecond } from '../render/index.ts';
import { decodeTrack, placeAt, samplesPerSecond } from './decode-track.ts';

/** Half of a tenth of a yard, and what adding tenths in binary costs. */
const rounding = 0.5 / stepsPerYard + 1e-9;

const places = fc.array(fc.double({ min: -60, max: 60, noNaN: true }), { minLength: 1, maxLength: 300 });

describe('a track', () => {
  it('comes back within half a tenth of a yard at each sample, however long it is', () => {
    fc.assert(
      fc.property(places, (written) => {
        const seconds = (written.length - 1) / writtenPerSecond;
        const read = decodeTrack(trackOf(seconds, (time) => written[Math.round(time * writtenPerSecond)]!));
        expect(read).toHaveLength(written.length);
        for (const [sample, place] of read.entries()) expect(Math.abs(place - written[sample]!)).toBeLessThan(rounding);
      }),
    );
  });

  it('is read at the rate at which it was written', () => {
    expect(samplesPerSecond).toBe(writtenPerSecond);
  });

  it('lies between its neighbours between two samples, and ends where it ends', () => {
    fc.assert(
      fc.property(places, fc.double({ min: -5, max: 40, noNaN: true }), (values, time) => {
        const last = values.length - 1;
        const exact = Math.min(Math.max(time * samplesPerSecond, 0), last);
        const around = [values[Math.floor(exact)]!, values[Math.ceil(exact)]!];
        const place = placeAt(values, time);
        expect(place).toBeGreaterThanOrEqual(Math.min(...around) - 1e-9);
        expect(place).toBeLessThanOrEqual(Math.max(...around) + 1e-9);
      }),
    );
  });

  it('holds no place that is no number', () => {
    expect(() => trackOf(1, () => Number.NaN)).toThrow(RangeError);
  });
});
