import { describe, expect, it } from 'vitest';
import type { SchemeBelief } from '../../engine/index.ts';
import { type Chance, demoPlaybook, type Playbook, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { proposeSchemes } from '../../teach/index.ts';
import { acceptBelief, keptShares } from './accept-belief.ts';

const believed = (shares: Readonly<Record<string, number>>): Pick<SchemeBelief, 'schemes'> => ({
  schemes: Object.entries(shares).map(([scheme, share]) => ({ scheme, before: 0.5, share, discipline: {}, stars: [] })),
});
const belief = believed({ jump: 0.9, 'box-zone': 0.0951, shutoff: 0.0049 });
const chance = (id: string, side: Chance['side']): Chance => ({ id, side, opponent: 'copper-falls', result: 'saved' });
const book: Playbook = { ...demoPlaybook, chances: [chance('a', 'others'), chance('b', 'ours'), chance('c', 'ours')] };
const [opponent] = book.opponents!;

function accepted(from: Playbook): Playbook {
  const edit = acceptBelief(from, opponent!, belief, ['a', 'b']);
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

describe('what the marks say, taken for what they play', () => {
  const taken = accepted(book);

  it('becomes the weights of the opponent and stays with the man-ups that said it', () => {
    expect(taken.opponents![0]!.schemes).toEqual({ jump: 90, 'box-zone': 9.5 });
    expect(taken.chances!.map((one) => one.belief)).toEqual([keptShares(belief), keptShares(belief), undefined]);
    const { diagnostics } = parsePlaybook(serializePlaybook(taken));
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('is not counted once more by the season, and taking it twice counts it once', () => {
    expect(proposeSchemes(taken)).toEqual([]);
    expect(taken.opponents![0]!.counted).toEqual({ jump: 1 });
    expect(accepted(taken).opponents![0]!.counted).toEqual({ jump: 1 });
    // One that is seen afterwards still counts.
    const later = { ...taken, chances: [...taken.chances!, { ...chance('d', 'ours'), scheme: 'box-zone' }] };
    expect(proposeSchemes(later)).toHaveLength(1);
  });

  it('keeps shares that never add up to more than all', () => {
    const sum = Object.values(keptShares(believed({ a: 1 / 3, b: 1 / 3, c: 1 / 3 }))).reduce(
      (one, two) => one + two,
      0,
    );
    expect(sum).toBeLessThanOrEqual(1);
  });
});
