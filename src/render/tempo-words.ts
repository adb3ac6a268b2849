import type { Trigger } from '../engine/index.ts';
import { actionWords, readWords, seconds, triggerWords } from './play-words.ts';
import type { BallLeg, ChartAction, ChartBeat, TempoChart } from './tempo-chart.ts';

/** The chart in words, one sentence for each beat in the order in which they start, then a shot that no beat asks for, and what comes open. */
export function tempoChartWords(chart: TempoChart): readonly string[] {
  const beats = chart.beats.map((beat) => beatSentence(beat, chart));
  const asked = chart.beats.flatMap(({ actions }) => actions.map(({ action }) => action));
  const shots = chart.ball.flatMap((leg) =>
    leg.kind === 'shot' && !asked.some((one) => one.kind === 'shot' && one.by === leg.by) ? [shotSentence(leg)] : [],
  );
  return [...beats, ...shots, ...windowSentence(chart)];
}

/** What starts a beat, as short as the chart needs it: "catch TL", "arrive X", "call curl + 0.8". */
export function triggerName(trigger: Trigger): string {
  switch (trigger.kind) {
    case 'start':
      return 'start';
    case 'catch':
      return `catch ${trigger.by}`;
    case 'pass':
      return trigger.to === undefined ? `${trigger.from} passes` : `${trigger.from} to ${trigger.to}`;
    case 'arrival':
      return `arrive ${trigger.who}`;
    case 'call':
      return `call ${trigger.beat} + ${tenth(trigger.seconds)}`;
    default:
      return exhaustive(trigger);
  }
}

/** An action with its time: "X carries, 4.1 to 5.6 s". */
export function timedActionWords({ action, start, end }: ChartAction): string {
  return `${actionWords(action)}, ${tenth(start)} to ${seconds(end)}`;
}

function beatSentence({ id, trigger, starts, actions }: ChartBeat, { ball, reads }: TempoChart): string {
  const done = actions.map((one) => `${actionWords(one.action)} ${whenWords(one, ball)}`);
  const own = reads.filter(({ read }) => read.during === id).map(({ read }) => readWords(read));
  const what = done.length === 0 ? 'nobody is told anything' : done.join('; ');
  return `${seconds(starts)}, "${id}", ${triggerWords(trigger)}: ${what}.${own.length === 0 ? '' : ` Reads: ${own.join('; ')}.`}`;
}

// Of a throw it matters when it leaves and arrives; of anything else, until when it lasts.
function whenWords({ action, start, end }: ChartAction, ball: readonly BallLeg[]): string {
  if (action.kind === 'pass') {
    const leg = ball.find(
      (one) => one.kind === 'pass' && one.from === action.by && one.to === action.to && one.arrives >= start,
    );
    if (leg?.kind === 'pass')
      return `at ${tenth(leg.leaves)}, there at ${seconds(leg.arrives)}${leg.lost === undefined ? '' : ` (${leg.lost})`}`;
  }
  if (action.kind === 'shot') {
    const leg = ball.find((one) => one.kind === 'shot' && one.by === action.by);
    return `at ${seconds(end)}${leg?.kind === 'shot' && leg.result !== undefined ? ` (${leg.result})` : ''}`;
  }
  return end - start < 0.05 ? `at ${seconds(start)}` : `from ${tenth(start)} to ${seconds(end)}`;
}

function shotSentence({ by, leaves, result }: Extract<BallLeg, { kind: 'shot' }>): string {
  return `${by} shoots at ${seconds(leaves)}${result === undefined ? '' : `: ${result}`}.`;
}

function windowSentence({ windows }: TempoChart): readonly string[] {
  if (windows.length === 0) return [];
  const each = windows.map(
    ({ spot, opens, closes, worth }) =>
      `${spot} from ${tenth(opens)} to ${seconds(closes)} (worth ${worth.toFixed(2)})`,
  );
  return [`Open: ${each.join('; ')}.`];
}

function tenth(value: number): string {
  return (Math.round(value * 10) / 10 + 0).toFixed(1);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
