import type { Trace } from '../engine/index.ts';
import { percent } from './number-text.ts';
import { seconds } from './play-words.ts';
import type { Scene } from './scene.ts';
import { frameAt } from './trace-frame.ts';
import { withoutAbsent } from './trace-marks.ts';
import { attackerName, type TraceNames } from './trace-names.ts';
import { dutySentence, sentenceAt } from './trace-scene.ts';
import type { LaneOdds, OpenMan } from './watch-marks.ts';

/** The same moment in words: what happened last, who is open, how sure each lane is, and what each defender does. */
export function watchWords(
  trace: Trace,
  time: number,
  names: TraceNames,
  layers: { readonly lanes?: readonly LaneOdds[]; readonly open?: readonly OpenMan[] } = {},
): Pick<Scene, 'title' | 'description'> {
  const frame = withoutAbsent(frameAt(trace, time), trace, names);
  const sentences = [
    sentenceAt(trace, frame.time, names),
    openSentence(layers.open ?? [], names),
    frame.holder.kind === 'attacker' ? laneSentence(frame.holder.index, layers.lanes ?? [], names) : '',
    dutySentence(frame, names),
  ];
  return {
    title: `${names.play} against ${names.scheme}, ${seconds(frame.time)}`,
    description: sentences.filter((sentence) => sentence !== '').join(' '),
  };
}

function openSentence(open: readonly OpenMan[], names: TraceNames): string {
  return open.map(({ who, word }) => `${attackerName(names, who)} is ${word}.`).join(' ');
}

function laneSentence(from: number, lanes: readonly LaneOdds[], names: TraceNames): string {
  if (lanes.length === 0) return '';
  const each = lanes.map(({ to, completion }) => `${attackerName(names, to)} ${percent(Math.min(completion, 0.99))}`);
  return `Odds of a pass by ${attackerName(names, from)}: ${each.join(', ')}.`;
}
