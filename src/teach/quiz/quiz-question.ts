import type { CarrierMoment, Cue, Interval, MomentAction, MomentTraces, Play } from '../../engine/index.ts';
import {
  againstWords,
  type ClipScheme,
  choiceWords,
  clipOfScript,
  cueMarks,
  type Primitive,
  type QuizQuestion,
  type ReasonedChoice,
  readWords,
  reasonWords,
  supportOf,
  type TraceNames,
  taughtWords,
  traceEnd,
  traceNames,
  type Worth,
} from '../../render/index.ts';
import type { Cast } from '../../worker/index.ts';
import { applyingRead, cuesAt } from './applying-read.ts';
import { nearTie, type OfferedChoice, type OfferedMoment } from './offered-choices.ts';

/** A question as the page carries it: the moment, its choices in words, and what led to it and comes of each as films. */
export function quizQuestion(
  cast: Cast,
  moment: CarrierMoment,
  offered: OfferedMoment,
  traces: MomentTraces,
): QuizQuestion {
  const { play } = cast;
  const names = traceNames(cast);
  const carrier = play.spots[moment.carrier]!.id;
  const seen = { carrier, cues: cuesAt(play, moment) };
  const reasoned = offered.choices.map((choice) => reasonedChoice(play, moment, choice));
  const best = reasoned[offered.best]!;
  const byWorth = [best, ...reasoned.filter((one) => one !== best).sort((one, other) => other.worth - one.worth)];
  return {
    carrier: moment.carrier,
    scheme: cast.scheme.id,
    before: filmOf(traces.runUp, play, names),
    choices: offered.choices.map(({ action, judged, right }, at) => ({
      words: reasoned[at]!.words,
      target: action.kind === 'pass' ? action.to : -1,
      worth: toThousandths(judged.worth),
      behind: toThousandths(judged.behind),
      right,
      why: right ? '' : againstWords(reasoned[at]!, best, seen),
      after: filmOf(traces.after[at]!, play, names),
    })),
    best: offered.best,
    reason: reasonWords(byWorth, seen),
    taught: taughtOf(play, moment, offered),
    marks: supportOf(best, seen).flatMap((cue) => marksOf(traces.runUp, cue, names)),
  };
}

/** The cues of a moment that show a choice on the field. */
export function signsOf(play: Play, moment: CarrierMoment, action: MomentAction): readonly Cue[] {
  const mate = action.kind === 'pass' ? play.spots[action.to]!.id : undefined;
  return supportOf(
    { kind: action.kind, mate },
    { carrier: play.spots[moment.carrier]!.id, cues: cuesAt(play, moment) },
  );
}

function reasonedChoice(play: Play, moment: CarrierMoment, choice: OfferedChoice): ReasonedChoice {
  const { action, drawn, judged, right } = choice;
  const [x, y] = moment.at;
  return {
    words: choiceWords(play, moment.carrier, action, { x, y }, drawn),
    kind: action.kind,
    mate: action.kind === 'pass' ? play.spots[action.to]!.id : undefined,
    // As the page shows it: a number that is rounded twice would stand there in two ways.
    worth: toThousandths(judged.worth)[0],
    right,
  };
}

function filmOf(trace: MomentTraces['runUp'], play: Play, names: TraceNames): ClipScheme {
  return clipOfScript({ trial: 0, trace, began: 0, windows: [] }, play, names, '');
}

function taughtOf(play: Play, moment: CarrierMoment, { taughtBehind }: OfferedMoment): string {
  const read = applyingRead(play, moment);
  if (read === undefined) return '';
  const words = readWords(play.reads[read]!);
  if (taughtBehind === null) return play.reads[read]!.then.kind === 'fake' ? taughtWords(words, { kind: 'fake' }) : '';
  return taughtWords(words, taughtBehind <= nearTie ? { kind: 'right' } : { kind: 'behind', goals: taughtBehind });
}

function marksOf(
  trace: MomentTraces['runUp'],
  cue: Parameters<typeof cueMarks>[2],
  names: TraceNames,
): readonly Primitive[] {
  return cueMarks(trace, traceEnd(trace), cue, names).map(
    (mark) =>
      JSON.parse(
        JSON.stringify(mark, (_, value) => (typeof value === 'number' ? hundredth(value) : value)),
      ) as Primitive,
  );
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

function toThousandths({ mean, low, high }: Interval): Worth {
  const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
  return [rounded(mean), rounded(low), rounded(high)];
}
