import { type CarrierStudy, type SchemeChances, type SearchLimits, studyCarrier } from '../engine/index.ts';
import { RefusedSetup } from './measure-matchups.ts';
import type { TrialSetup, WorkerRequest } from './protocol.ts';
import type { AnswerOptions, TrialPool } from './trial-pool.ts';

/** A setup, and how likely it is to be met. */
export interface WeighedSetup {
  readonly setup: TrialSetup;
  readonly weight: number;
}

/** How much is simulated for the reads of one carrier. The same effort gives the same answer, for any number of threads. */
export interface ReadsEffort {
  /** Man-ups against each scheme that decisions are learnt from, and as many others that they are measured in. */
  readonly trials: number;
  /** What comes within so many seconds of a decision counts for it. */
  readonly horizon: number;
  readonly limits: SearchLimits;
}

/** Man-ups in one request: a second of work at most. */
const batch = 20;

/**
 * Gathers what one carrier (offense index) could do against every setup and studies it; `null` when the play hardly ever brings him the
 * ball. The study itself runs here: some seconds without a pause. Rejects with a `RefusedSetup` when a setup names something that its playbook does not have.
 */
export async function studyReads(
  pool: TrialPool,
  setups: readonly WeighedSetup[],
  carrier: number,
  effort: ReadsEffort,
  options: AnswerOptions & { readonly onPlan?: (requests: number) => void } = {},
): Promise<CarrierStudy | null> {
  const { trials, horizon, limits } = effort;
  const gather = async (first: number): Promise<readonly SchemeChances[]> => {
    const requests = setups.flatMap(({ setup }) =>
      starts(trials).map((start): WorkerRequest => {
        const range = { from: first + start, to: first + Math.min(trials, start + batch) };
        return { kind: 'decisions', setup, carrier, range, horizon };
      }),
    );
    options.onPlan?.(requests.length);
    const answers = await pool.answer(requests, options);
    const parts = answers.map((answer) => {
      if (answer.kind === 'refused') throw new RefusedSetup(answer.reason);
      if (answer.kind !== 'decisions') throw new TypeError(`expected decisions, not ${answer.kind}`);
      return answer.chances;
    });
    const each = starts(trials).length;
    return setups.map(({ setup, weight }, at) => {
      const chances = parts.slice(at * each, (at + 1) * each).flat();
      return { scheme: setup.scheme, weight, trials, chances };
    });
  };
  const [learn, held] = [await gather(0), await gather(trials)];
  return studyCarrier(carrier, learn, held, limits);
}

function starts(trials: number): readonly number[] {
  return Array.from({ length: Math.ceil(trials / batch) }, (_, at) => at * batch);
}
