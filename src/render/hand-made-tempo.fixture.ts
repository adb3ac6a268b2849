import { handMadePlay } from './hand-made.fixture.ts';
import { type OpenWindow, type PlayTempo, type TempoChart, tempoChart } from './tempo-chart.ts';

/** `handMadePlay` with round times: P to TR .5 to 1, TR skips to WL 2.5 to 3.25, WL shoots at 4. */
export const handMadeTempo: PlayTempo = {
  beats: [
    {
      id: 'open',
      starts: 0,
      actions: [
        { start: 0, end: 0.5 },
        { start: 0, end: 1.5 },
        { start: 0, end: 0.5 },
      ],
    },
    {
      id: 'skip',
      starts: 1,
      actions: [
        { start: 1.2, end: 1.8 },
        { start: 1, end: 2 },
        { start: 1, end: 1.5 },
        { start: 1, end: 3.25 },
        { start: 1, end: 2.5 },
      ],
    },
    { id: 'finish', starts: 3.25, actions: [{ start: 3.25, end: 4 }] },
  ],
  ball: [
    { kind: 'held', spot: 'P', from: 0, to: 0.5 },
    { kind: 'pass', from: 'P', to: 'TR', leaves: 0.5, arrives: 1, style: 'adjacent' },
    { kind: 'held', spot: 'TR', from: 1, to: 2.5 },
    { kind: 'pass', from: 'TR', to: 'WL', leaves: 2.5, arrives: 3.25, style: 'skip' },
    { kind: 'held', spot: 'WL', from: 3.25, to: 4 },
    { kind: 'shot', by: 'WL', leaves: 4, arrives: 4.25 },
  ],
};

export const handMadeWindows: readonly OpenWindow[] = [
  { spot: 'WL', opens: 2, closes: 3.5, worth: 0.41 },
  { spot: 'C', opens: 1, closes: 1.5, worth: 0.1 },
];

export const handMadeReads = [
  {
    carrier: 'TR',
    during: 'skip',
    cues: [
      { kind: 'open', who: 'WL' },
      { kind: 'left', who: 'WL' },
    ],
    then: { kind: 'pass', by: 'TR', to: 'WL', style: 'skip' },
  },
  { carrier: 'TR', during: 'skip', cues: [], then: { kind: 'shot', by: 'TR' } },
  { carrier: 'WL', cues: [{ kind: 'iAmPressed' }], then: { kind: 'hold', by: 'WL', seconds: 1 } },
] as const;

export function handMadeChart(): TempoChart {
  return tempoChart({ ...handMadePlay, reads: handMadeReads }, handMadeTempo, handMadeWindows);
}
