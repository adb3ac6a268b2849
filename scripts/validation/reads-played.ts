import { learnKeeping, tableOf, worthOf, worthsUnder } from '../../src/engine/index.ts';
import { meanByLuck } from './mean-by-luck.ts';
import { askedRow, estimateWords, type Group, type Row } from './row.ts';
import type { StudiedCarrier } from './studied-carrier.ts';

/** Written down before the first run: goals a chance between table and play, and the share of chances that are the same. */
const asked = { difference: 0.01, same: 0.9 } as const;

/**
 * Goals. The table follows a chance for 8 s from the look at which he acts, the play for 8 s from his first look, and what is in hand then is worth a
 * little more or less: that is a matter of reckoning, no other course of the chance.
 */
const alike = 0.01;

/** What cards do in the full simulation beside what the search reckoned. */
export function readsPlayedGroup(carriers: readonly StudiedCarrier[]): Group {
  return {
    id: 'reads-played',
    title: 'Reads, cards played',
    about:
      'The cards of the first group once more, played as reads of the play in the full simulation, in the same held man-ups and with the same luck as the table that the search reckoned with. A chance is the same when it comes to the same within 0.01 goals: the table follows it for 8 s from the look at which he acts, the play for 8 s from his first look, and a ball that is still in hand is worth a little more or less then. (To the last digit was asked until a trial with nine man-ups a scheme had been seen.)',
    rows: carriers.flatMap((carrier) =>
      carrier.played_byCard.flatMap((_, at) => (isLonger(carrier, at + 1) ? [playedRow(carrier, at + 1)] : [])),
    ),
  };
}

/** Whether the card of so many reads has more of them than the one before: else it is the same card. */
function isLonger({ study }: StudiedCarrier, reads: number): boolean {
  return study.cards[reads]!.list.rules.length > study.cards[reads - 1]!.list.rules.length;
}

function playedRow({ id, name, man, learn, held, study, played_byCard }: StudiedCarrier, reads: number): Row {
  const keeping = learnKeeping(learn.flatMap(({ chances }) => chances));
  const reckoned = worthsUnder(study.cards[reads]!.list, tableOf(man, held, keeping));
  const differences = played_byCard[reads - 1]!.map((outcome, chance) => worthOf(outcome, keeping) - reckoned[chance]!);
  const lucks = held.flatMap(({ chances }) => chances.map(({ trial }) => trial));
  const difference = meanByLuck(differences.map((value, chance) => ({ luck: lucks[chance]!, value })));
  const same = differences.filter((each) => Math.abs(each) < alike).length / differences.length;
  return askedRow(
    {
      id: `reads-played-${id}-${reads}`,
      what: `${name}, ${reads} read${reads === 1 ? '' : 's'}: played less reckoned`,
    },
    'the same',
    `${estimateWords(difference)}; ${(100 * same).toFixed(0)} of 100 the same`,
    `within ${asked.difference}, and ${100 * asked.same} of 100 the same`,
    Math.abs(difference.mean) <= asked.difference && same >= asked.same,
  );
}
