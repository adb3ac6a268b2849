import type { AnswersSnapshot, SchemeAnswer } from './answers-snapshot.ts';
import type { Answers } from './create-answers.ts';

/**
 * The stages of an answer, as they are called among the browser's measures. Each runs from the moment of the question to that in which every
 * scheme has come so far: its first guess, then an interval of goals a chance of that half width.
 */
export const answerStages = ['sliderule:first-answer', 'sliderule:within-0.05', 'sliderule:within-0.03'] as const;
type AnswerStage = (typeof answerStages)[number];

/** The part of the browser's `performance` that is used. */
type Watch = Pick<Performance, 'now' | 'measure' | 'clearMeasures'>;

/**
 * Leaves a measure in the browser's own record for each stage that the answers come to, for `npm run bench:app` and for whoever looks into the
 * browser's tools. A question whose answer was known already leaves none. Returns what ends it.
 */
export function markAnswers(answers: Pick<Answers, 'snapshot' | 'subscribe'>, watch: Watch = performance): () => void {
  let ask: AnswersSnapshot['ask'] = null;
  let start = 0;
  let left: readonly AnswerStage[] = [];
  return answers.subscribe(() => {
    const snapshot = answers.snapshot();
    if (snapshot.ask !== ask) {
      ask = snapshot.ask;
      // An edit in the middle of an answer, such as a drag that goes on, begins to wait anew.
      start = watch.now();
      left = answerStages.filter((stage) => !hasCome(snapshot, stage));
      return;
    }
    const [come, wait] = [
      left.filter((stage) => hasCome(snapshot, stage)),
      left.filter((stage) => !hasCome(snapshot, stage)),
    ];
    left = wait;
    for (const stage of come) {
      // Only the last of each is kept: a season of edits must not fill the memory. An observer has seen them all.
      watch.clearMeasures(stage);
      watch.measure(stage, { start, end: watch.now() });
    }
  });
}

function hasCome({ schemes }: AnswersSnapshot, stage: AnswerStage): boolean {
  const asked = schemes.filter(({ state }) => state !== 'refused');
  return asked.length > 0 && asked.every((answer) => isThere(answer, stage));
}

function isThere({ state, goals, stale }: SchemeAnswer, stage: AnswerStage): boolean {
  if (goals === null || stale.goals) return false;
  const halfWidth = (goals.high - goals.low) / 2;
  switch (stage) {
    case 'sliderule:first-answer':
      return true;
    case 'sliderule:within-0.05':
      return state === 'done' || (state === 'sharpening' && halfWidth <= 0.05);
    case 'sliderule:within-0.03':
      return state === 'done' || (state === 'sharpening' && halfWidth <= 0.03);
    default:
      return exhaustive(stage);
  }
}

function exhaustive(stage: never): never {
  throw new TypeError(`unknown stage: ${stage}`);
}
