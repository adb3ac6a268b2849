import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { practiceEffort } from '../../worker/index.ts';
import { createFakePool } from '../answers/fake-pool.fixture.ts';
import { readsQuestion } from './reads-question.ts';
import { type AskedPractice, type PracticeNews, searchPractice } from './search-practice.ts';

const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
/** Everybody the best in all but shooting, so that little is left to try; short man-ups. */
const best = { speed: 5, catch: 5, pass: 5, feed: 5, inside: 5, handle: 5, sense: 5 };
const playbook = {
  ...demoPlaybook,
  settings: { penaltySeconds: 10 },
  plays: [ferry],
  team: {
    ...demoPlaybook.team,
    roster: demoPlaybook.team.roster.map(({ measured: _, ...player }) => ({
      ...player,
      hand: 'both' as const,
      grades: best,
    })),
  },
};
const effort = practiceEffort(20);

function asked(roster = playbook.team.roster): AskedPractice {
  const against = { kind: 'alike', schemes: ['box-zone'] } as const;
  const { setups } = readsQuestion(playbook, ferry, 'P', undefined, against);
  return { playbook: { ...playbook, team: { ...playbook.team, roster } }, play: 'ferry', setups, question: 'q' };
}

async function newsOf(onNews: (count: number, stop: () => void) => void = () => undefined, breaks = false) {
  const pool = createFakePool();
  if (breaks) pool.breakDown();
  const news: PracticeNews[] = [];
  const controller = new AbortController();
  const tell = (one: PracticeNews): void => {
    news.push(one);
    onNews(news.length, () => controller.abort());
  };
  await searchPractice(pool, asked(), tell, controller.signal, effort);
  return news;
}

describe('the search for what practice is worth', () => {
  it('tells what all six gain first, then what each man gains, and how far it is', async () => {
    const news = await newsOf();
    const found = news.flatMap((one) => ('found' in one ? [one.found] : []));
    // Three rounds of each, and all of it at the end.
    expect(found.map(({ worths }) => worths.each?.rows.length ?? null)).toEqual([null, null, null, 6, 6, 6, 6]);
    const isKnown = found.map(({ worths }) => [worths.unit.leaders !== null, worths.each?.leaders !== null]);
    expect(isKnown.slice(0, 3).map(([unit]) => unit)).toEqual([false, false, true]);
    expect(isKnown.slice(3).map(([, each]) => each)).toEqual([false, false, true, true]);
    expect(found[2]!.worths.unit).toEqual(found[6]!.worths.unit);
    expect(found[6]!.worths.unit.rows.map(({ skill }) => skill)).toEqual(['shoot']);
    expect(found[6]).toMatchObject({ play: 'ferry', question: 'q' });
    const steps = news.flatMap((one) => ('search' in one && one.search.kind === 'finding' ? [one.search] : []));
    expect(steps[0]!.answered).toBe(0);
    expect(steps.length).toBeGreaterThan(8);
    for (const { answered, planned } of steps) expect(answered).toBeLessThanOrEqual(planned);
    expect(news.at(-1)).toEqual({ search: { kind: 'idle' } });
  });

  it('tells nothing more once it is stopped', async () => {
    const news = await newsOf((count, stop) => count === 3 && stop());
    expect(news).toHaveLength(3);
  });

  it('says why it failed', async () => {
    const news = await newsOf(undefined, true);
    expect(news.at(-1)).toEqual({ search: { kind: 'failed', reason: 'a thread of trials broke' } });
  });

  it('says so when there are too few players', async () => {
    const news: PracticeNews[] = [];
    const few = asked(playbook.team.roster.slice(0, 3));
    await searchPractice(createFakePool(), few, (one) => void news.push(one), new AbortController().signal, effort);
    expect(news).toEqual([{ search: { kind: 'failed', reason: expect.stringContaining('too few field players') } }]);
  });
});
