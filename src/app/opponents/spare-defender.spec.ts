import { expect, it } from 'vitest';
import { spareDefender } from './spare-defender.ts';

it('one more man has a name and a home of his own, until six play', () => {
  let men: Record<string, readonly [number, number]> = { tr: [5, 10], tl: [-5, 10], c: [0.5, 5.5] };
  const added: string[] = [];
  for (let spare = spareDefender(men); spare !== undefined; spare = spareDefender(men)) {
    const { name, at } = spare;
    for (const [x, y] of Object.values(men)) expect(Math.hypot(x - at.x, y - at.y)).toBeGreaterThanOrEqual(1.5);
    added.push(name);
    men = { ...men, [name]: [at.x, at.y] };
  }
  expect(added).toEqual(['m', 'lr', 'll']);
});
