import { schemeList } from '../../engine/index.ts';
import {
  type ChanceLookKind,
  chanceLooks,
  chanceResults,
  chanceSides,
  chanceStarts,
  isDay,
  limits,
  type Playbook,
} from '../../playbook/index.ts';
import {
  type CellRead,
  clockCell,
  plainWords,
  problem,
  quoted,
  read,
  secondsOf,
  yesOf,
  yesText,
} from './cell-words.ts';
import { type ChanceColumn, choice, expected, named, number, penalty, text, whole } from './column-kinds.ts';

/** All columns, in the order in which they are written. Marks and shares of schemes are no matter of a table: they stay in the playbook. */
export const chanceColumns: readonly ChanceColumn[] = [
  choice(
    'side',
    [],
    chanceSides,
    ({ side }) => side,
    (side) => ({ side }),
  ),
  text(
    'date',
    ['day'],
    10,
    ({ date }) => date,
    (date) => ({ date }),
    (cell) =>
      /^\d{4}-\d\d-\d\d$/.test(cell) && isDay(cell) ? undefined : `${quoted(cell)} is no day; write it as 2026-03-14.`,
  ),
  named(
    'opponent',
    ['against'],
    ({ opponent }) => opponent,
    (opponent) => ({ opponent }),
    ({ opponents }) => opponents ?? [],
  ),
  text(
    'game',
    [],
    limits.tag,
    ({ game }) => game,
    (game) => ({ game }),
  ),
  whole(
    'period',
    ['quarter'],
    1,
    20,
    ({ period }) => period,
    (period) => ({ period }),
  ),
  {
    head: 'clock',
    also: ['time left'],
    print: ({ clock }) => (clock === undefined ? '' : clockCell(clock)),
    read: (cell) => {
      const clock = secondsOf(cell);
      return clock === undefined || clock > 3600
        ? problem(`${quoted(cell)} is no time on the clock; write 7:11, or seconds.`)
        : read((chance) => ({ ...chance, clock }));
    },
  },
  penalty(
    'penalty',
    ['penalty seconds'],
    ({ seconds }) => String(seconds),
    (cell) => {
      const seconds = secondsOf(cell);
      return seconds === undefined || seconds <= 0 || seconds > 600
        ? `${quoted(cell)} is no length of a penalty; write its seconds, up to 600.`
        : { seconds };
    },
  ),
  penalty(
    'fixed',
    ['non-releasable'],
    ({ fixed }) => (fixed === undefined ? '' : yesText(fixed)),
    (cell) => {
      const fixed = yesOf(cell);
      return fixed === undefined ? `${quoted(cell)} is neither yes nor no.` : { fixed };
    },
  ),
  penalty(
    'men',
    ['men down'],
    ({ men }) => (men === undefined ? '' : String(men)),
    (cell) => (/^[123]$/.test(cell) ? { men: Number(cell) } : `${quoted(cell)} is not 1, 2 or 3.`),
  ),
  choice(
    'start',
    ['began'],
    chanceStarts,
    ({ start }) => start,
    (start) => ({ start }),
  ),
  text(
    'unit',
    [],
    limits.tag,
    ({ unit }) => unit,
    (unit) => ({ unit }),
  ),
  named(
    'call',
    ['play'],
    ({ call }) => call,
    (call) => ({ call }),
    ({ plays }) => plays,
  ),
  choice(
    'from',
    ['from side'],
    ['left', 'right'] as const,
    ({ fromSide }) => fromSide,
    (fromSide) => ({ fromSide }),
  ),
  named(
    'scheme',
    ['defense'],
    ({ scheme }) => scheme,
    (scheme) => ({ scheme }),
    knownSchemes,
  ),
  choice(
    'result',
    ['outcome'],
    chanceResults,
    ({ result }) => result,
    (result) => ({ result }),
  ),
  whole(
    'shots',
    [],
    0,
    50,
    ({ shots }) => shots,
    (shots) => ({ shots }),
  ),
  whole(
    'on target',
    ['on goal'],
    0,
    50,
    ({ onTarget }) => onTarget,
    (onTarget) => ({ onTarget }),
  ),
  number(
    'first shot',
    ['first shot seconds'],
    600,
    ({ firstShot }) => firstShot,
    (firstShot) => ({ firstShot }),
  ),
  whole(
    'passes',
    [],
    0,
    200,
    ({ passes }) => passes,
    (passes) => ({ passes }),
  ),
  {
    head: 'look',
    also: [],
    print: ({ look }) =>
      look === undefined ? '' : [look.kind, look.from ?? (look.to && '?'), look.to].filter(Boolean).join(' '),
    read: readLook,
  },
  whole(
    'scorer',
    ['shooter'],
    0,
    999,
    ({ scorer }) => scorer,
    (scorer) => ({ scorer }),
  ),
  whole(
    'assist',
    ['feeder'],
    0,
    999,
    ({ assist }) => assist,
    (assist) => ({ assist }),
  ),
  {
    head: 'clear',
    also: ['cleared'],
    print: ({ clear }) => (clear === undefined ? '' : yesText(clear)),
    read: (cell) => {
      const clear = yesOf(cell);
      return clear === undefined
        ? problem(`${quoted(cell)} is neither yes nor no.`)
        : read((chance) => ({ ...chance, clear }));
    },
  },
  expected('expected', 'goals'),
  expected('expected low', 'low'),
  expected('expected high', 'high'),
  text(
    'notes',
    ['note'],
    limits.note,
    ({ notes }) => notes,
    (notes) => ({ notes }),
  ),
];

function knownSchemes({ schemes }: Playbook): readonly { readonly id: string; readonly name: string }[] {
  return [...(schemes ?? []), ...schemeList.map(({ id, notes }) => ({ id, name: notes.name }))];
}

/** The column of a head, whatever the size of its letters, its blanks and dashes. */
export function chanceColumnOf(head: string): ChanceColumn | undefined {
  const plain = plainWords(head);
  return chanceColumns.find((column) => column.head === plain || column.also.includes(plain));
}

const spotPattern = /^(?:[A-Z][A-Z0-9]*|\?)$/;

/** "feed X C", "skip TR to WL", "shot by P", "shot". */
function readLook(cell: string): CellRead {
  const [kind, ...others] = cell.split(/\s+/).filter((word) => !['to', 'by'].includes(word.toLowerCase()));
  const known = chanceLooks.find((one): one is ChanceLookKind => one === kind?.toLowerCase());
  const spots = others.map((spot) => spot.toUpperCase());
  if (known === undefined || spots.length > 2 || !spots.every((spot) => spotPattern.test(spot)))
    return problem(
      `${quoted(cell)} is no look; write a kind (${chanceLooks.join(', ')}) and its spots, such as "feed X C".`,
    );
  const [from, to] = spots;
  const look = {
    kind: known,
    ...(from !== undefined && from !== '?' && { from }),
    ...(to !== undefined && to !== '?' && { to }),
  };
  return read((chance) => ({ ...chance, look }));
}
