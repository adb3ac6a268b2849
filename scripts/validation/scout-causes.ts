/** Why each red row of docs/validation-scout.md is red, by the row's id: one plain sentence, and what would mend it where that is known. */
export const scoutCauses: Readonly<Record<string, string>> = {
  'scout-1':
    'The observer knows how this very play begins: who brings the ball in, on which way, and for how long everybody has then stood. Ours reckons with several ways in which the first ball may have come. Exact places of the six, the time since the ball came and the man who is shut off were given to ours for a trial (90 man-ups) and did not help.',
};
