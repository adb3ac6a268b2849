import type { RunnerCue } from '../chance/runner-cues.ts';

/** All cues that a man without the ball can be taught for a run, in the order in which tables number them: his own, then who of the others has the ball. */
export function runnerVocabulary(runner: number): readonly RunnerCue[] {
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== runner);
  return [
    { kind: 'manGoesToBall' },
    { kind: 'manLooksAway' },
    { kind: 'manHasLeft' },
    { kind: 'placeIsOpen' },
    { kind: 'laneIsOpen' },
    { kind: 'wayIsOpen' },
    { kind: 'passerIsReady' },
    { kind: 'ballIsInAir' },
    ...mates.map((who): RunnerCue => ({ kind: 'ballIsWith', who })),
  ];
}
