import type { CompiledCue } from '../chance/program.ts';

/** All cues that a carrier can be taught, in the order in which tables number them: those of himself, then those of each mate. */
export function cueVocabulary(carrier: number): readonly CompiledCue[] {
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== carrier);
  return [
    { kind: 'iAmFree' },
    { kind: 'iAmPressed' },
    ...mates.map((who): CompiledCue => ({ kind: 'open', who })),
    ...mates.map((who): CompiledCue => ({ kind: 'left', who })),
  ];
}
