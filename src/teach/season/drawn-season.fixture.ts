import { type Chance, demoPlaybook, type Playbook } from '../../playbook/index.ts';

// A season with the luck of one seed, for tests and pictures: what is in it is counted again by hand in the tests that use it.

const calls = ['lantern', 'quarry', 'ferry'] as const;
const schemes = ['box-zone', 'box-string', 'jump', 'five-man-rotation'] as const;
const opponents = ['copper-falls', 'northgate', 'Harbor Prep'] as const;
const misses = ['saved', 'wide', 'pipe', 'blocked', 'turnover', 'expired', 'newFlag'] as const;

/** So many chances, three of four ours; lantern scores in .5 of them, the others in .3, whatever the defense. */
export function drawnChances(count: number, seed = 12345): Chance[] {
  let luck = seed;
  const draw = (): number => {
    luck = (Math.imul(luck, 1664525) + 1013904223) >>> 0;
    return luck / 2 ** 32;
  };
  const pick = <T>(values: readonly T[]): T => values[Math.floor(draw() * values.length)]!;
  return Array.from({ length: count }, (_, at): Chance => {
    const call = pick(calls);
    const odds = call === 'lantern' ? 0.5 : 0.3;
    const isGoal = draw() < odds;
    const result = isGoal ? 'goal' : pick(misses);
    const isShot = !['turnover', 'expired', 'newFlag'].includes(result);
    const shots = (isShot ? 1 : 0) + (draw() < 0.3 ? 1 : 0);
    const isOurs = draw() < 0.75;
    return {
      id: `drawn-${at}`,
      side: isOurs ? 'ours' : 'theirs',
      date: `2026-${String(2 + Math.floor(at / 60)).padStart(2, '0')}-${String(1 + (Math.floor(at / 5) % 28)).padStart(2, '0')}`,
      // A game has five, as it were.
      opponent: opponents[Math.floor(at / 5) % opponents.length]!,
      period: 1 + Math.floor(draw() * 4),
      clock: Math.floor(draw() * 720),
      penalty: { seconds: pick([30, 60, 60]) },
      unit: pick(['first', 'first', 'second']),
      ...(isOurs && { call }),
      fromSide: pick(['left', 'right']),
      scheme: pick(schemes),
      result,
      shots,
      ...(shots > 0 && { firstShot: Math.round(60 + draw() * 200) / 10, passes: 2 + Math.floor(draw() * 6) }),
      ...(isShot && { look: { kind: pick(['feed', 'skip', 'shot']), from: pick(['X', 'TR']), to: 'C' } }),
      ...(isShot && isOurs && { scorer: pick([4, 7, 12, 21]) }),
      ...(isOurs && { expected: { goals: odds, low: odds - 0.05, high: odds + 0.05 } }),
      ...(!isOurs && !isGoal && { clear: draw() < 0.7 }),
    };
  });
}

/** The demo with a season. */
export function drawnSeason(count = 200): Playbook {
  return { ...demoPlaybook, chances: drawnChances(count) };
}
