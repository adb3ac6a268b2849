import { schemeById } from '../../engine/index.ts';
import { type Chance, chanceResultWords, chanceTitle, clockText, type Playbook } from '../../playbook/index.ts';
import { type Facts, factsOf, line } from './difference.ts';
import { numberText } from './place-text.ts';

/** All that a man-up which was played says, in a coach's words. */
export function chanceFacts(chance: Chance, { plays, schemes, opponents }: Playbook): Facts {
  const schemeName = (id: string): string =>
    schemes?.find((one) => one.id === id)?.name ?? schemeById(id)?.notes.name ?? id;
  const { penalty, look, expected } = chance;
  return factsOf([
    ['Man-up', [chanceTitle(chance)]],
    ['Opponent', line(opponents?.find(({ id }) => id === chance.opponent)?.name ?? chance.opponent)],
    ['Game', line(chance.game)],
    ['Clock', line(chance.clock === undefined ? undefined : clockText(chance.clock))],
    [
      'Penalty',
      line(
        penalty &&
          `${numberText(penalty.seconds)} s${penalty.fixed ? ', stays after a goal' : ''}${penalty.men ? `, ${penalty.men} men` : ''}`,
      ),
    ],
    ['Began', line(chance.start)],
    ['Unit', line(chance.unit)],
    ['Call', line(plays.find(({ id }) => id === chance.call)?.name ?? chance.call)],
    ['Side', line(chance.fromSide)],
    ['Scheme', line(chance.scheme && schemeName(chance.scheme))],
    ['How likely', Object.entries(chance.belief ?? {}).map(([id, share]) => `${schemeName(id)} ${numberText(share)}`)],
    [
      'By its marks',
      Object.entries(chance.byMarks ?? {}).map(([id, share]) => `${schemeName(id)} ${numberText(share)}`),
    ],
    ['Result', [chanceResultWords[chance.result]]],
    ...(['shots', 'onTarget', 'firstShot', 'passes', 'scorer', 'assist'] as const).map(
      (field) => [countWords[field], chance[field] === undefined ? [] : [numberText(chance[field])]] as const,
    ),
    ['Look', line(look && [look.kind, look.from, look.to && `to ${look.to}`].filter(Boolean).join(' '))],
    ['Cleared', chance.clear === undefined ? [] : [chance.clear ? 'yes' : 'no']],
    ['Expected goals', line(expected && [expected.goals, expected.low, expected.high].map(numberText).join(', '))],
    ['Marks', (chance.marks ?? []).map((mark) => `At ${numberText(mark.time)} s: ${JSON.stringify(mark)}`)],
    ['Notes', line(chance.notes)],
  ]);
}

const countWords = {
  shots: 'Shots',
  onTarget: 'Shots on goal',
  firstShot: 'Seconds to the first shot',
  passes: 'Passes before it',
  scorer: 'Shooter',
  assist: 'Passer',
} as const;
