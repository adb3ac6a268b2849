import { type Play, type RunOrder, runOrders } from '../../engine/index.ts';
import { toEnginePlay } from '../../playbook/index.ts';
import { type RunsEffort, requestsOfRunStudy, runsEffort, studyRuns } from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { wholeNumber } from '../conditions.ts';
import { badUse } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { startProgress } from '../progress.ts';
import { reportNames } from '../report-names.ts';
import { runnerJson } from '../runner-json.ts';
import { runnerText } from '../runner-text.ts';
import type { StudiedRun } from '../studied-run.ts';
import { weighedSetups } from '../weighed-setups.ts';
import { type AskedReads, chosenSpot, sameAgain, usualReadsTrials, wholeOf } from './reads-carrier.ts';

/** Reads on the card for a run when nobody names a number: one thing to look for (assumption). */
const usualReads = 1;

/** `sliderule reads FILE --runner SPOT`: when a man without the ball should go, for each run that the play asks of him. */
export async function runRunnerReads(io: Io, asked: AskedReads, named: string): Promise<void> {
  const { opened, play, conditions, against, json } = asked;
  const { playbook } = opened;
  const written = toEnginePlay(playbook, play, conditions.side);
  const orders = ordersOf(written, chosenSpot(written, named));
  const spot = written.spots[orders[0]!.runner]!.id;
  const reads = asked.card === undefined ? usualReads : wholeNumber('--card', asked.card, 0, 3);
  io.err(levelNote(playbook, conditions.level));
  const effort = runsEffort(conditions.trials ?? usualReadsTrials);
  const runs = await gather(io, asked, written, orders, effort);
  const { hash, penalty, level } = wholeOf(asked, { runner: spot, effort });
  if (json) {
    io.out(runnerJson(runs, written, reads, { seed: conditions.seed, hash, penalty, level }));
    return;
  }
  const names = reportNames(playbook, play);
  for (const run of runs) io.out(`${runnerText(run, written, reads, names)}\n\n`);
  const words = ['--runner', spot, '--against', against, '--card', String(reads)];
  io.out(sameAgain(io, asked, words, { penalty, trials: effort.trials, hash }));
}

/** The runs of the man at one spot; fails with the spots that have one when he has none. */
function ordersOf(play: Play, runner: number): readonly RunOrder[] {
  const orders = runOrders(play, runner);
  if (orders.length > 0) return orders;
  const others = play.spots.filter((_, man) => runOrders(play, man).length > 0).map(({ id }) => id);
  const hint = others.length === 0 ? 'It asks none of anybody.' : `Name one of ${others.join(', ')} after --runner.`;
  throw badUse(`the play asks no run of ${play.spots[runner]!.id}. ${hint}`);
}

async function gather(
  io: Io,
  { opened, play, foes, conditions }: AskedReads,
  written: Play,
  orders: readonly RunOrder[],
  effort: RunsEffort,
): Promise<readonly StudiedRun[]> {
  const setups = weighedSetups(opened, play, foes, conditions);
  const pool = createTrialPool({ threads: conditions.threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  progress.plan(orders.length * requestsOfRunStudy(setups.length, effort.trials));
  const runs: StudiedRun[] = [];
  try {
    for (const order of orders) {
      const options = { signal: io.signal, onAnswer: progress.step };
      runs.push({ order, study: await studyRuns(pool, setups, { play: written, run: order }, effort, options) });
    }
    return runs;
  } finally {
    progress.stop();
    await pool.close();
  }
}
