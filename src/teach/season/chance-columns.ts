import { schemeList } from '../../engine/index.ts';
import {
  type Chance,
  type ChanceLookKind,
  type ChanceStart,
  chanceLooks,
  chanceResultWords,
  limits,
  type NewChance,
  type Playbook,
} from '../../playbook/index.ts';
import { clockCell, plainWords, quoted, secondsOf, yesOf } from './cell-words.ts';
import {
  type ChanceColumn,
  choice,
  clockTime,
  expected,
  named,
  neitherYesNorNo,
  number,
  penalty,
  text,
  type ValueRead,
  valueColumn,
  valueOr,
  whole,
  yesNo,
} from './column-kinds.ts';
import { readDay } from './day-cell.ts';
import { periodOf } from './period-words.ts';

/** How a chance began, as it stands on the screen. */
const startWords: Readonly<Record<ChanceStart, string>> = {
  restart: 'a restart after the whistle',
  flagDown: 'with the flag down',
  transition: 'on the run',
};

/** All columns, in the order in which they are written. Marks and shares of schemes are no matter of a table: they stay in the playbook. */
export const chanceColumns: readonly ChanceColumn[] = [
  choice({ head: 'side', key: 'side', words: { ours: 'ours', theirs: 'theirs', others: 'others' } }),
  valueColumn<string>(
    { head: 'date', also: ['day'], key: 'date' },
    {
      may: '2026-03-17, or 3/17/2026',
      print: (day) => day,
      read: (cell, { days }) => {
        const found = readDay(cell, days);
        if (found.kind === 'day') return { kind: 'value', value: found.day };
        return {
          kind: 'problem',
          text:
            found.kind === 'none'
              ? `${quoted(cell)} is no day; write it as 2026-03-14.`
              : `${quoted(cell)} may be ${found.monthFirst} or ${found.dayFirst}; say whether the month or the day stands first.`,
        };
      },
    },
  ),
  named({
    head: 'opponent',
    also: ['against'],
    key: 'opponent',
    may: 'a name, the same every time',
    isChosen: false,
    known: ({ opponents }) => opponents ?? [],
  }),
  text({ head: 'game', key: 'game', longest: limits.tag, may: 'a short word that tells two games of one day apart' }),
  whole({
    head: 'period',
    also: ['quarter'],
    key: 'period',
    least: 1,
    most: 20,
    orElse: ', or OT, OT 2 after the fourth',
    readWhole: periodOf,
  }),
  clockTime({ head: 'clock', also: ['time left'], key: 'clock', most: 3600, print: clockCell }),
  penalty({
    head: 'penalty',
    also: ['penalty seconds'],
    part: 'seconds',
    may: '60 or 1:00',
    readPart: (cell) => {
      const seconds = secondsOf(cell);
      return valueOr(
        seconds === undefined || seconds <= 0 || seconds > 600 ? undefined : seconds,
        `${quoted(cell)} is no length of a penalty; write its seconds, up to 600.`,
      );
    },
  }),
  penalty({
    head: 'fixed',
    also: ['non-releasable'],
    part: 'fixed',
    may: 'yes or no: yes when a goal does not end it',
    isYes: true,
    readPart: (cell) => valueOr(yesOf(cell), neitherYesNorNo(cell)),
  }),
  penalty({
    head: 'men',
    also: ['men down'],
    part: 'men',
    may: '1, 2 or 3: how many serve',
    readPart: (cell) => valueOr(/^[123]$/.test(cell) ? Number(cell) : undefined, `${quoted(cell)} is not 1, 2 or 3.`),
  }),
  choice({ head: 'start', also: ['began'], key: 'start', words: startWords }),
  text({ head: 'unit', key: 'unit', longest: limits.tag, may: 'a short word' }),
  named({
    head: 'call',
    also: ['play'],
    key: 'call',
    may: 'the name of a play',
    isChosen: true,
    known: ({ plays }) => plays,
  }),
  choice({ head: 'from', also: ['from side'], key: 'fromSide', words: { left: 'left', right: 'right' } }),
  named({
    head: 'scheme',
    also: ['defense'],
    key: 'scheme',
    may: 'the name of a scheme that was seen',
    isChosen: true,
    known: knownSchemes,
  }),
  choice({ head: 'result', also: ['outcome'], key: 'result', words: chanceResultWords }),
  whole({ head: 'shots', key: 'shots', least: 0, most: 50 }),
  whole({ head: 'on target', also: ['on goal'], key: 'onTarget', least: 0, most: 50 }),
  number({
    head: 'first shot',
    also: ['first shot seconds'],
    key: 'firstShot',
    most: 600,
    may: 'seconds from its start, such as 14 or 14.5',
  }),
  whole({ head: 'passes', key: 'passes', least: 0, most: 200 }),
  valueColumn<Look>(
    { head: 'look', key: 'look' },
    { may: 'feed X C, skip TR WL, pass WL P or shot TR', print: lookCell, read: readLook },
  ),
  whole({
    head: 'scorer',
    also: ['shooter'],
    key: 'scorer',
    least: 0,
    most: 999,
    may: 'the number of the last shooter, goal or not',
  }),
  whole({
    head: 'assist',
    also: ['feeder'],
    key: 'assist',
    least: 0,
    most: 999,
    may: 'the number of who passed to him',
  }),
  yesNo({ head: 'clear', also: ['cleared'], key: 'clear' }),
  expected('expected', 'goals', 'goals a chance, such as 0.36, that the simulation gave it'),
  expected('expected low', 'low', 'at least; may be left out together with the next'),
  expected('expected high', 'high', 'at most'),
  text({ head: 'notes', also: ['note'], key: 'notes', longest: limits.note, may: 'anything' }),
];

type Look = NonNullable<Chance['look']>;

/** The parts of a chance that a table and the form write; what else it has stays where it is. */
export const tabledKeys: ReadonlySet<keyof NewChance> = new Set(chanceColumns.map(({ key }) => key));

/** All schemes that a chance may name. */
export function knownSchemes({ schemes }: Playbook): readonly { readonly id: string; readonly name: string }[] {
  return [...(schemes ?? []), ...schemeList.map(({ id, notes }) => ({ id, name: notes.name }))];
}

/** The column of a head, whatever the size of its letters, its blanks and dashes. */
export function chanceColumnOf(head: string): ChanceColumn | undefined {
  const plain = plainWords(head);
  return chanceColumns.find((column) => column.head === plain || column.also.includes(plain));
}

function lookCell({ kind, from, to }: Look): string {
  return [kind, from ?? (to && '?'), to].filter(Boolean).join(' ');
}

const spotPattern = /^(?:[A-Z][A-Z0-9]*|\?)$/;

/** "feed X C", "skip TR to WL", "shot by P", "shot". */
function readLook(cell: string): ValueRead<Look> {
  const [kind, ...others] = cell.split(/\s+/).filter((word) => !['to', 'by'].includes(word.toLowerCase()));
  const known = chanceLooks.find((one): one is ChanceLookKind => one === kind?.toLowerCase());
  const spots = others.map((spot) => spot.toUpperCase());
  const [from, to] = spots;
  const wrong = `${quoted(cell)} is no look; write a kind (${chanceLooks.join(', ')}) and its spots, such as "feed X C".`;
  if (known === undefined || spots.length > 2 || !spots.every((spot) => spotPattern.test(spot)))
    return valueOr<Look>(undefined, wrong);
  const look: Look = {
    kind: known,
    ...(from !== undefined && from !== '?' && { from }),
    ...(to !== undefined && to !== '?' && { to }),
  };
  return { kind: 'value', value: look };
}
