import type { CompiledCue } from '../chance/program.ts';

/**
 * All cues that a carrier can be taught, in the order in which tables number them: those of himself and of the defense as a whole, then
 * each that is asked of a mate, mate after mate. 22 of the 30 that a table holds.
 */
export function cueVocabulary(carrier: number): readonly CompiledCue[] {
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== carrier);
  return [
    ...ownCues.map((kind): CompiledCue => ({ kind })),
    ...mateCues.flatMap((kind) => mates.map((who): CompiledCue => ({ kind, who }))),
  ];
}

const ownCues = [
  'iAmFree',
  'iAmPressed',
  'nextSteps',
  'myManLeaves',
  'creaseUp',
  'farLowLooksAway',
  'farLowCrosses',
] as const;
const mateCues = ['open', 'left', 'laneTaken'] as const;
