import type { Cue } from '../../engine/index.ts';

/** Each cue as it is written; those of a mate end in his spot. None is the beginning of another. */
export const cuePhrases: Readonly<Record<Cue['kind'], string>> = {
  iAmFree: 'free',
  iAmPressed: 'pressed',
  nextSteps: 'next steps',
  myManLeaves: 'my man leaves',
  creaseUp: 'crease up',
  farLowLooksAway: 'far low looks away',
  farLowCrosses: 'far low crosses',
  open: 'open',
  left: 'left',
  laneTaken: 'lane taken',
};
