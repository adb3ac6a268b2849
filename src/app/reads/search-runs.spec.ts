import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { runsEffort } from '../../worker/index.ts';
import { setupsOf, usualSeed } from '../answers/ask.ts';
import { createFakePool } from '../answers/fake-pool.fixture.ts';
import { runsOfPlay } from './runs-of-play.ts';
import { type AskedRun, type RunNews, searchRuns } from './search-runs.ts';

const play = toEnginePlay(demoPlaybook, 'ferry');
/** Enough for a study of the first run of the play against one scheme, and no more. */
const rounds = [45, 50].map((trials) => ({ ...runsEffort(trials), horizon: 5 }));

function asked(): AskedRun {
  const ask = { playbook: demoPlaybook, play: 'ferry', schemes: ['box-zone'], side: 'right', seed: usualSeed } as const;
  const setups = setupsOf({ ...ask, penalty: null, level: null }).map((setup) => ({ setup, weight: 1 }));
  return { play, order: runsOfPlay(play)[0]!.order, setups, question: 'the first run' };
}

interface Given {
  readonly onNews?: (stop: () => void) => void;
  readonly isBroken?: boolean;
  readonly trials?: typeof rounds;
}

async function newsOf({
  onNews = () => undefined,
  isBroken = false,
  trials = rounds,
}: Given): Promise<readonly RunNews[]> {
  const pool = createFakePool();
  if (isBroken) pool.breakDown();
  const news: RunNews[] = [];
  const controller = new AbortController();
  const tell = (one: RunNews): void => {
    news.push(one);
    onNews(() => controller.abort());
  };
  await searchRuns(pool, asked(), tell, controller.signal, trials);
  return news;
}

describe('the search for when a man goes', () => {
  it('finds it round after round, the first rough, and says rightly how far each is', async () => {
    const news = await newsOf({});
    const found = news.flatMap((one) => ('found' in one ? [[one.found.trials, one.found.isRough]] : []));
    expect(found).toEqual([
      [45, true],
      [50, false],
    ]);
    const search = news.flatMap((one) => ('search' in one ? [one.search] : []));
    for (const { trials } of rounds) {
      const steps = search.flatMap((one) => (one.kind === 'finding' && one.trials === trials ? [one] : []));
      expect(steps[0]?.answered).toBe(0);
      expect(steps.at(-1)?.answered).toBe(steps[0]?.planned);
    }
    expect(search.at(-1)).toEqual({ kind: 'idle' });
  });

  it('says so when the run hardly ever comes, after one more round', async () => {
    const few = [10, 12].map((trials) => ({ ...rounds[0]!, trials }));
    const news = await newsOf({ trials: few });
    expect(news.some((one) => 'found' in one)).toBe(false);
    expect(news.at(-1)).toEqual({ search: { kind: 'never', runner: 'P' } });
  });

  it('tells nothing more once it is stopped', async () => {
    let told = 0;
    const news = await newsOf({
      onNews: (stop) => {
        told += 1;
        if (told === 3) stop();
      },
    });
    expect(news).toHaveLength(3);
  });

  it('says why it failed', async () => {
    const news = await newsOf({ isBroken: true });
    expect(news.at(-1)).toEqual({ search: { kind: 'failed', reason: 'a thread of trials broke' } });
  });
});
