import { expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { type AnswersSnapshot, emptySnapshot, type SchemeAnswer } from './answers-snapshot.ts';
import type { Ask } from './ask.ts';
import { markAnswers } from './mark-answers.ts';

const ask: Ask = {
  playbook: demoPlaybook,
  play: 'lantern',
  schemes: ['box-zone', 'jump'],
  side: 'right',
  penalty: null,
  level: null,
  seed: 1,
};

function answer(state: SchemeAnswer['state'], halfWidth: number | null, stale = false): SchemeAnswer {
  return {
    scheme: 'box-zone',
    state,
    reason: null,
    goals: halfWidth === null ? null : { mean: 0.3, low: 0.3 - halfWidth, high: 0.3 + halfWidth },
    trials: 0,
    change: null,
    overSetAlone: null,
    looks: [],
    watched: 0,
    report: null,
    cast: null,
    script: null,
    shown: null,
    stale: { goals: stale, looks: stale, script: stale },
  };
}

/** What was measured, as "name from-to", while the answers said one thing after another, each a millisecond later. */
function measured(said: readonly (readonly [Ask, readonly SchemeAnswer[]])[]): readonly string[] {
  const measures: string[] = [];
  let snapshot: AnswersSnapshot = emptySnapshot;
  let tell = (): void => undefined;
  let now = 0;
  const answers = {
    snapshot: () => snapshot,
    subscribe: (listener: () => void) => {
      tell = listener;
      return () => undefined;
    },
  };
  markAnswers(answers, {
    now: () => now,
    clearMeasures: () => undefined,
    measure: (name, options) => {
      const { start, end } = options as PerformanceMeasureOptions;
      measures.push(`${name.replace('sliderule:', '')} ${start}-${end}`);
      return {} as PerformanceMeasure;
    },
  });
  for (const [asked, schemes] of said) {
    now++;
    snapshot = { ...emptySnapshot, ask: asked, schemes };
    tell();
  }
  return measures;
}

const [nothing, guess, near, fair] = [
  answer('waiting', null),
  answer('coarse', 0.02),
  answer('sharpening', 0.04),
  answer('sharpening', 0.03),
];
const old = answer('done', 0.02, true);
const again = { ...ask };

it.each([
  [
    'each stage once, when the last scheme has come so far; a guess is never narrow',
    [
      [ask, [nothing, nothing]],
      [ask, [guess, nothing]],
      [ask, [guess, guess]],
      [ask, [near, fair]],
      [ask, [fair, fair]],
      [ask, [fair, fair]],
    ],
    ['first-answer 1-3', 'within-0.05 1-4', 'within-0.03 1-5'],
  ],
  [
    'nothing while the numbers are those of before',
    [
      [ask, [old, old]],
      [ask, [old, old]],
    ],
    [],
  ],
  [
    'from the last question on',
    [
      [ask, [nothing, nothing]],
      [again, [old, old]],
      [again, [guess, guess]],
    ],
    ['first-answer 2-3'],
  ],
  [
    'nothing for what was known already',
    [
      [ask, [fair, fair]],
      [ask, [fair, fair]],
    ],
    [],
  ],
  [
    'without the schemes that cannot answer',
    [
      [ask, [nothing, nothing]],
      [ask, [guess, answer('refused', null)]],
    ],
    ['first-answer 1-2'],
  ],
  [
    'what is as narrow as it becomes',
    [
      [ask, [nothing]],
      [ask, [answer('done', 0.06)]],
    ],
    ['first-answer 1-2', 'within-0.05 1-2', 'within-0.03 1-2'],
  ],
] as const)('measures %s', (_, said, expected) => {
  expect(measured(said)).toEqual(expected);
});
