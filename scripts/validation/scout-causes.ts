/** Why each red row of docs/validation-scout.md is red, by the row's id: one plain sentence, and what would mend it where that is known. */
export const scoutCauses: Readonly<Record<string, string>> = {
  'scout-1':
    'Before the first mark the observer knows more than any mark says: that this unit always brings the ball in from the same place, by the same man, and has stood for so long. Ours reckons with several ways in which the ball may have come. A mark of the ball alone before the first moment would mend it.',
};
