import { lookName } from '../../render/index.ts';
import type { LookAnswer, ShownTrialChoice } from '../answers/answers-snapshot.ts';

/** Why this trial stands on the field, in a sentence: one of so many in which there is something to see, and none that were usual. */
export function shownSentence(shown: ShownTrialChoice): string {
  switch (shown.kind) {
    case 'look':
      return `The field shows ${oneOf(shown)} in which the ${lookName(shown.look)} opens.`;
    case 'throw': {
      const pass = `${shown.from} to ${shown.to}`;
      return shown.isLast
        ? `The field shows ${oneOf(shown)} that ${comes(shown)} to the last pass, ${pass}.`
        : `The field shows ${oneOf(shown)} that ${comes(shown)} as far as the pass ${pass}; none comes farther.`;
    }
    case 'first':
      return `The field shows the first of ${shown.watched} trials: the play comes to none of its passes in any.`;
  }
}

/** The same so short that it fits under a small field; `first` is the look that is named above it. */
export function shownShort(
  shown: ShownTrialChoice,
  first: Pick<LookAnswer, 'kind' | 'from' | 'to'> | undefined,
): string {
  switch (shown.kind) {
    case 'look': {
      const { look, among, watched } = shown;
      const isNamed = first?.from === look.from && first.to === look.to;
      const open = isNamed ? 'it opens' : `the ${lookName(look)} opens`;
      return `shown: one where ${open}, as in ${among} of ${watched}`;
    }
    case 'throw':
      return `shown: one that comes to the pass ${shown.from} to ${shown.to}, as in ${shown.among} of ${shown.watched}`;
    case 'first':
      return `shown: the first of ${shown.watched}; the play throws in none`;
  }
}

function oneOf({ among, watched }: { readonly among: number; readonly watched: number }): string {
  return among === 1 ? `the one in ${watched} trials` : `one of the ${among} in ${watched} trials`;
}

function comes({ among }: { readonly among: number }): string {
  return among === 1 ? 'comes' : 'come';
}
