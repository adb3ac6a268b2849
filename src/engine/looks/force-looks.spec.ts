import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { recordTrace } from '../chance/run.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { schemes } from '../defense/schemes.ts';
import { estimateOdds } from '../trials/estimate-goals.ts';
import { playForced } from './force-looks.ts';
import { valueLooks } from './plan-forced.ts';
import { watchLooks } from './watch.ts';

const model = compileChance(sampleMatchup({ level: 'pro', scheme: schemes['four-man-rotation'] }), 3);
const state = createChanceState(model);
const plan = watchLooks(model, state, 0, 60)
  .filter(({ completion }) => completion > 0)
  .map(({ trial, from, to, seenAt }) => ({ trial, from, to, time: seenAt }));
const { goals_byForced, odds_byForced } = playForced(model, state, plan);

describe('looks that are taken', () => {
  it('score what the same trial scores when it is recorded', () => {
    expect(plan.length).toBeGreaterThan(100);
    for (const [at, look] of plan.slice(0, 30).entries()) {
      const { events } = recordTrace(model, look.trial, look);
      expect(goals_byForced[at]).toBe(events.filter(({ kind }) => kind === 'goal').length);
      const shots = events.flatMap((event) => (event.kind === 'shot' && event.time >= look.time ? [event] : []));
      const odds = shots.reduce((sum, { goalOdds }) => sum + goalOdds, 0);
      expect(odds_byForced[at]).toBeCloseTo(odds, 5);
    }
  });

  it('have odds that are their goals on average', () => {
    // Goal less odds is 0 in the mean, trial by trial: within 4 standard errors (looks of one trial share some luck).
    const apart = plan.map((_, at) => goals_byForced[at]! - odds_byForced[at]!);
    const mean = apart.reduce((sum, one) => sum + one, 0) / apart.length;
    const variance = apart.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (apart.length - 1);
    expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(variance / apart.length));
  });

  it('are worth the same by their odds as by their goals, and known better', () => {
    const byGoals = valueLooks(plan, goals_byForced);
    const byOdds = valueLooks(plan, odds_byForced, estimateOdds);
    const often = byOdds.filter(({ trials }) => trials >= 20);
    expect(often.length).toBeGreaterThan(2);
    for (const odds of often) {
      const goals = byGoals.find(({ from, to }) => from === odds.from && to === odds.to)!;
      expect(odds.value).toBeGreaterThan(goals.valueLow);
      expect(odds.value).toBeLessThan(goals.valueHigh);
      expect(odds.valueHigh - odds.valueLow).toBeLessThan(goals.valueHigh - goals.valueLow);
    }
  });
});
