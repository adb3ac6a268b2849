import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Player } from '../../playbook/index.ts';
import { readingSummary } from './reading-summary.ts';

const units = { speed: 'mph', height: 'ftIn' } as const;
const man = (measured: Player['measured']): Player => ({ number: 7, name: 'Noel', hand: 'left', measured });

/** The number after "Counts as". */
function countsAs(
  measured: Player['measured'],
  name: 'shotSpeedMph' | 'sprint20ydSeconds',
  speed: 'mph' | 'kmh' = 'mph',
): number {
  const text = readingSummary(demoPlaybook, man(measured), name, { ...units, speed });
  return Number(/Counts as ([\d.]+)/.exec(text ?? '')?.[1]);
}

function usualOf(measured: Player['measured'], name: 'shotSpeedMph' | 'sprint20ydSeconds'): number {
  return Number(/toward ([\d.]+)/.exec(readingSummary(demoPlaybook, man(measured), name, units) ?? '')?.[1]);
}

describe('what readings count as', () => {
  it('lies between their mean and the usual, and nearer to the mean the more there are', () => {
    const usual = usualOf({ shotSpeedMph: [75] }, 'shotSpeedMph');
    const one = countsAs({ shotSpeedMph: [75] }, 'shotSpeedMph');
    const five = countsAs({ shotSpeedMph: [75, 75, 75, 75, 75] }, 'shotSpeedMph');
    expect(usual).toBeLessThan(one);
    expect(one).toBeLessThan(five);
    expect(five).toBeLessThan(75);
  });

  it('is told for a sprint in seconds, where less is better', () => {
    const usual = usualOf({ sprint20ydSeconds: [2.8] }, 'sprint20ydSeconds');
    const one = countsAs({ sprint20ydSeconds: [2.8] }, 'sprint20ydSeconds');
    expect(one).toBeGreaterThan(2.8);
    expect(one).toBeLessThan(usual);
  });

  it('is told in the unit of the coach', () => {
    const inMiles = countsAs({ shotSpeedMph: [75] }, 'shotSpeedMph');
    // The mile is 1.609344 km by definition.
    expect(countsAs({ shotSpeedMph: [75] }, 'shotSpeedMph', 'kmh')).toBeCloseTo(inMiles * 1.609344, 0);
  });

  it('says which way a shot chart moves his aim', () => {
    const text = (hits: number) => readingSummary(demoPlaybook, man({ onGoal: { hits, shots: 50 } }), 'onGoal', units);
    expect(text(45)).toMatch(/% less/);
    expect(text(15)).toMatch(/% more/);
    expect(text(31)).toContain('as is usual');
  });

  it('is not told without readings, nor for those that nobody can have', () => {
    expect(readingSummary(demoPlaybook, man(undefined), 'onGoal', units)).toBeUndefined();
    expect(readingSummary(demoPlaybook, man({ shotSpeedMph: [600] }), 'shotSpeedMph', units)).toBeUndefined();
  });
});
