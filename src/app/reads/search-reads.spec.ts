import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { createFakePool } from '../answers/fake-pool.fixture.ts';
import { findRounds } from './find-rounds.ts';
import { readsQuestion } from './reads-question.ts';
import { type AskedReads, type ReadsNews, searchReads } from './search-reads.ts';

const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
/** Enough for a study of the man who starts against one scheme, and no more. */
const [round] = findRounds;
const rounds = [50, 55].map((trials) => ({
  ...round!,
  trials,
  horizon: 2,
  limits: { ...round!.limits, mostReads: 1 },
}));

function asked(carrier: string): AskedReads {
  const against = { kind: 'alike', schemes: ['box-zone'] } as const;
  const question = readsQuestion(demoPlaybook, ferry, carrier, undefined, against);
  return { play: toEnginePlay(demoPlaybook, 'ferry'), carrier, question };
}

async function newsOf(carrier: string, onNews: (news: ReadsNews, stop: () => void) => void = () => undefined) {
  const pool = createFakePool();
  const news: ReadsNews[] = [];
  const controller = new AbortController();
  const tell = (one: ReadsNews): void => {
    news.push(one);
    onNews(one, () => controller.abort());
  };
  await searchReads(pool, asked(carrier), tell, controller.signal, rounds);
  return news;
}

describe('the search for reads', () => {
  it('finds them round after round, the first rough, and says rightly how far each is', async () => {
    const news = await newsOf('P');
    const found = news.flatMap((one) => ('found' in one ? [[one.found.trials, one.found.isRough]] : []));
    expect(found).toEqual([
      [50, true],
      [55, false],
    ]);
    const search = news.flatMap((one) => ('search' in one ? [one.search] : []));
    for (const { trials } of rounds) {
      const steps = search.flatMap((one) => (one.kind === 'finding' && one.trials === trials ? [one] : []));
      expect(steps[0]?.answered).toBe(0);
      expect(steps.at(-1)?.answered).toBe(steps[0]?.planned);
    }
    expect(search.at(-1)).toEqual({ kind: 'idle' });
  });

  it('says so when the play does not bring the man the ball, after one more round', async () => {
    const news = await newsOf('X');
    expect(news.some((one) => 'found' in one)).toBe(false);
    expect(news.at(-1)).toEqual({ search: { kind: 'never', carrier: 'X' } });
  });

  it('tells nothing more once it is stopped', async () => {
    let told = 0;
    const news = await newsOf('P', (_, stop) => {
      told += 1;
      if (told === 3) stop();
    });
    expect(news).toHaveLength(3);
  });

  it('says why it failed', async () => {
    const pool = createFakePool();
    pool.breakDown();
    const news: ReadsNews[] = [];
    await searchReads(pool, asked('P'), (one) => void news.push(one), new AbortController().signal, rounds);
    expect(news.at(-1)).toEqual({ search: { kind: 'failed', reason: 'a thread of trials broke' } });
  });
});
