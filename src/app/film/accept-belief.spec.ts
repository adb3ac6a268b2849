import { describe, expect, it } from 'vitest';
import type { SchemeBelief } from '../../engine/index.ts';
import {
  type Chance,
  demoPlaybook,
  type Playbook,
  type PlaybookEdit,
  parsePlaybook,
  serializePlaybook,
  setSchemeWeight,
} from '../../playbook/index.ts';
import { proposeSchemes, schemesSeenOf, scoutBelief, scoutedBefore, scoutSchemesBefore } from '../../teach/index.ts';
import type { TrialPool } from '../../worker/index.ts';
import { acceptBelief, isTaken, keptShares } from './accept-belief.ts';

const marks: Chance['marks'] = [{ time: 1, ball: [0, 14], defenders: [[0, 8]], by: 'film' }];
const chance = (id: string, side: Chance['side'], more: Partial<Chance> = {}): Chance => ({
  ...{ id, side, opponent: 'copper-falls', result: 'saved', marks },
  ...more,
});
const book: Playbook = { ...demoPlaybook, chances: [chance('a', 'others'), chance('b', 'ours')] };

const them = (playbook: Playbook) => playbook.opponents!.find(({ id }) => id === 'copper-falls')!;

/** As the marks of two man-ups would say it, whatever was believed before: the share is Bayes of one look at what is asked. */
function seen(before: ReturnType<typeof scoutSchemesBefore>): Pick<SchemeBelief, 'schemes' | 'manUps'> {
  const odds = before.map(({ id }) => (id === 'jump' ? 20 : 1));
  const sharesOf = (weights: readonly number[]) => {
    const all = weights.reduce((sum, one) => sum + one, 0);
    return weights.map((one) => one / all);
  };
  const prior = sharesOf(before.map(({ weight }) => weight));
  const after = sharesOf(prior.map((share, at) => share * odds[at]!));
  const reading = { share_byScheme: after, alone_byScheme: sharesOf(odds) };
  return {
    schemes: before.map(({ id }, at) => ({
      ...{ scheme: id, before: prior[at]!, share: after[at]!, discipline: {}, stars: [] },
    })),
    manUps: [reading, reading],
  };
}

function taken(from: Playbook): Playbook {
  const before = scoutSchemesBefore(from, them(from));
  return edited(acceptBelief(from, them(from), { belief: seen(before), before, chances: ['a', 'b'] }));
}

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

/**
 * As a thread answers of two man-ups that are surely jumps: one scheme throughout, or a mix drawn from an urn. The likelier jumps were before, the less it tells that both
 * are: a prior of .02 and one of .22 both come to .87.
 */
function twoJumps(schemes: readonly { readonly id: string; readonly weight: number }[]): SchemeBelief {
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  const priorOf = (id: string) => schemes.find((one) => one.id === id)!.weight / all;
  const p = priorOf('jump');
  const oneScheme = 1 / (1 + (2 * p + 1) / 3);
  const told = schemes.map(({ id }) => (id === 'jump' ? 1 : 0));
  const reading = { share_byScheme: told, alone_byScheme: told };
  return {
    schemes: schemes.map(({ id }) => ({
      ...{ scheme: id, before: priorOf(id), discipline: {}, stars: [] },
      share: id === 'jump' ? oneScheme + ((1 - oneScheme) * (2 * p + 2)) / 4 : ((1 - oneScheme) * 2 * priorOf(id)) / 4,
    })),
    ...{ manUps: [reading, reading], oneScheme, moments: [], reasons: [], tickReasons: [] },
    ...{ alike: [], between: [0, 0] },
  };
}

/** What Scout would take now. */
async function asked(playbook: Playbook) {
  const question = {
    play: playbook.plays[0]!.id,
    side: 'right',
    level: null,
    ...scoutedBefore(playbook, them(playbook)),
  };
  const pool = {
    answer: async ([{ asked: of }]: readonly [{ readonly asked: Parameters<typeof twoJumpsOf>[0] }]) => [
      { kind: 'belief', belief: twoJumpsOf(of) },
    ],
  } as unknown as TrialPool;
  const belief = await scoutBelief(pool, playbook, question as Parameters<typeof scoutBelief>[2], { manUps: [] });
  return { belief, before: question.schemes, chances: ['a', 'b'] };
}

const twoJumpsOf = ({ schemes }: { readonly schemes: Parameters<typeof twoJumps>[0] }) => twoJumps(schemes);

describe('man-ups that were named, after marks were taken', () => {
  const shareOf = (playbook: Playbook) => {
    const { schemes = {} } = them(playbook);
    return schemes.jump! / Object.values(schemes).reduce((sum, one) => sum + one, 0);
  };
  const filmed = {
    ...demoPlaybook,
    chances: [chance('a', 'others'), chance('b', 'others')],
  };

  // 93 % by the marks and 95 % by a man-up of the bench; taking the marks again made 93 % of it.
  it('stay counted when the marks are taken again, which changes nothing', async () => {
    const once = edited(acceptBelief(filmed, them(filmed), await asked(filmed)));
    const played = { ...once, chances: [...once.chances!, chance('d', 'ours', { scheme: 'jump', marks: [] })] };
    const [proposal] = proposeSchemes(played);
    const accepted = edited(proposal!.edit!(played));
    expect(shareOf(accepted)).toBeGreaterThan(shareOf(once) + 0.005);
    const again = await asked(accepted);
    expect(isTaken(accepted, them(accepted), again)).toBe(true);
    const twice = edited(acceptBelief(accepted, them(accepted), again));
    expect(shareOf(twice)).toBeCloseTo(shareOf(accepted), 2);
    expect(them(twice).before).toEqual(Object.fromEntries(again.before.map(({ id, weight }) => [id, weight])));
    expect(proposeSchemes(twice)).toEqual([]);
    expect(await asked(twice)).toEqual(again);
  });

  it('come to the same when they are counted before the marks are taken', async () => {
    const named = chance('d', 'ours', { scheme: 'jump', marks: [] });
    const marked = edited(acceptBelief(filmed, them(filmed), await asked(filmed)));
    const later = { ...marked, chances: [...marked.chances!, named] };
    const last = edited(proposeSchemes(later)[0]!.edit!(later));
    const early = { ...filmed, chances: [...filmed.chances, named] };
    const counted = edited(proposeSchemes(early)[0]!.edit!(early));
    const first = edited(acceptBelief(counted, them(counted), await asked(counted)));
    expect(Math.abs(shareOf(first) - shareOf(last))).toBeLessThan(0.02);
    expect(proposeSchemes(first)).toEqual([]);
  });

  it('rule no scheme out when they are taken back', async () => {
    const named = { ...filmed, chances: [chance('d', 'ours', { scheme: 'man-to-man', marks: [] })] };
    const { belief } = await asked(named);
    expect(belief.schemes.every(({ share }) => share > 0)).toBe(true);
  });
});

describe('what the marks say, taken for what they play', () => {
  it('becomes the weights of the opponent, and stays with the man-ups that said it', () => {
    const once = taken(book);
    expect(Object.values(them(once).schemes!).reduce((sum, each) => sum + each, 0)).toBeGreaterThan(85);
    expect(once.chances!.map(({ byMarks }) => byMarks?.jump)).toEqual([0.689, 0.689]);
    const { value, diagnostics } = parsePlaybook(serializePlaybook(once));
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(value).toEqual(once);
  });

  // One moment of five men: 41 %, and 80, 93, 97 % for pressing the button three times.
  it('counts once: taken again and again, also from the file, it changes nothing', () => {
    const once = taken(book);
    expect(taken(once)).toEqual(once);
    const read = parsePlaybook(serializePlaybook(once)).value!;
    expect(taken(taken(read))).toEqual(once);
    const before = scoutSchemesBefore(once, them(once));
    expect(before).toEqual(scoutSchemesBefore(book, them(book)));
    expect(isTaken(once, them(once), { belief: seen(before), before, chances: ['a', 'b'] })).toBe(true);
    expect(isTaken(book, them(book), { belief: seen(before), before, chances: ['a', 'b'] })).toBe(false);
  });

  it('is not counted once more by the season, whose names count on both sides of the marks', () => {
    const once = taken(book);
    expect(proposeSchemes(once)).toEqual([]);
    const later = { ...once, chances: [...once.chances!, chance('d', 'ours', { scheme: 'box-zone', marks: [] })] };
    const [proposal] = proposeSchemes(later);
    const named = edited(proposal!.edit!(later));
    const share = (playbook: Playbook) => {
      const before = scoutSchemesBefore(playbook, them(playbook));
      const all = before.reduce((sum, { weight }) => sum + weight, 0);
      return before.find(({ id }) => id === 'box-zone')!.weight / all;
    };
    expect(share(named)).toBeCloseTo((4 * share(once) + 1) / 5, 3);
    expect(proposeSchemes(named)).toEqual([]);
  });

  it('takes a man-up that was counted by its name by its marks, once it has some', () => {
    const unmarked = chance('d', 'ours', { scheme: 'jump', marks: [] });
    const season = { ...demoPlaybook, chances: [unmarked] };
    const counted = edited(proposeSchemes(season)[0]!.edit!(season));
    expect(them(counted).counted).toEqual({ jump: 1 });
    const marked = { ...counted, chances: [{ ...unmarked, marks }] };
    const [plain, again] = [demoPlaybook, marked].map((one) => scoutSchemesBefore(one, them(one)));
    again!.forEach(({ weight }, at) => {
      expect(weight).toBeCloseTo(plain![at]!.weight, 0);
    });
    expect(them(taken(marked)).counted).toEqual({ jump: 0 });
    expect(proposeSchemes(taken(marked))).toEqual([]);
  });

  it('is seen only as far as marks tell it, whatever weight it was given before', () => {
    const raised = taken(book);
    expect(schemesSeenOf(raised, 'copper-falls')).toMatchObject([{ scheme: 'jump', times: 2 }]);
    const before = scoutSchemesBefore(book, them(book)).map((one) =>
      one.id === 'box-string' ? { ...one, weight: 1000 } : one,
    );
    const even = before.map(() => 1 / before.length);
    const hunch = {
      schemes: before.map(({ id, weight }) => ({
        ...{ scheme: id, before: weight / 1100, share: weight / 1100, discipline: {}, stars: [] },
      })),
      manUps: [even, even].map((share) => ({ share_byScheme: share, alone_byScheme: share })),
    };
    const hoped = edited(acceptBelief(book, them(book), { belief: hunch, before, chances: ['a', 'b'] }));
    expect(schemesSeenOf(hoped, 'copper-falls')).toEqual([]);
    // His number keeps its meaning beside the others, which are as they were.
    expect(scoutSchemesBefore(hoped, them(hoped))).toEqual(before);
  });

  it('follows what the coach says of the mix afterwards', () => {
    const once = taken(book);
    const share = them(once).schemes!.jump!;
    const twice = edited(setSchemeWeight(once, 'copper-falls', 'jump', 2 * share));
    const odds = (playbook: Playbook) => {
      const found = seen(scoutSchemesBefore(playbook, them(playbook))).schemes;
      const of = (id: string) => found.find(({ scheme }) => scheme === id)!.share;
      return of('jump') / of('box-zone');
    };
    expect(odds(twice)).toBeCloseTo(2 * odds(once), 6);
  });

  it('keeps the name that a coach gave, and shares that never add up to more than all', () => {
    const named = taken({ ...book, chances: [chance('a', 'ours', { scheme: 'shutoff' }), chance('b', 'ours')] });
    expect(named.chances![0]!.scheme).toBe('shutoff');
    const sum = Object.values(keptShares([{ id: 'a' }, { id: 'b' }, { id: 'c' }], [1 / 3, 1 / 3, 1 / 3]));
    expect(sum.reduce((one, two) => one + two, 0)).toBeLessThanOrEqual(1);
  });
});
