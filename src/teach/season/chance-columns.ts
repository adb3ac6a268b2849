import { schemeList } from '../../engine/index.ts';
import {
  type Chance,
  type ChanceLookKind,
  chanceLooks,
  chanceResults,
  chanceSides,
  chanceStarts,
  clockText,
  isDay,
  limits,
  type NewChance,
  type Playbook,
} from '../../playbook/index.ts';

/** What a cell was read as: a part of a man-up, or what is wrong with it in a sentence. */
export type CellRead =
  | { readonly kind: 'read'; readonly change: (chance: NewChance) => NewChance }
  | { readonly kind: 'problem'; readonly text: string };

/** A column of a table of man-ups. */
export interface ChanceColumn {
  /** What stands at its head. */
  readonly head: string;
  /** What else it may be called; small letters. */
  readonly also: readonly string[];
  /** What stands in its cell; empty for what is not known. */
  readonly print: (chance: Chance) => string;
  /** Reads a cell that is not empty. */
  readonly read: (cell: string, playbook: Playbook) => CellRead;
}

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

function plainWords(cell: string): string {
  return cell
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

function text(
  head: string,
  also: readonly string[],
  longest: number,
  print: (chance: Chance) => string | undefined,
  take: (text: string) => Partial<NewChance>,
  check: (cell: string) => string | undefined = () => undefined,
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => print(chance) ?? '',
    read: (cell) => {
      const wrong = cell.length > longest ? `It has ${cell.length} letters; ${longest} is the most.` : check(cell);
      return wrong === undefined ? read((chance) => ({ ...chance, ...take(cell) })) : problem(wrong);
    },
  };
}

/** Something of the playbook by its name or id, kept by its id; what the playbook does not have is kept as it stands. */
function named(
  head: string,
  also: readonly string[],
  print: (chance: Chance) => string | undefined,
  take: (id: string) => Partial<NewChance>,
  known: (playbook: Playbook) => readonly { readonly id: string; readonly name: string }[],
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => print(chance) ?? '',
    read: (cell, playbook) => {
      const plain = cell.toLowerCase();
      const list = known(playbook);
      const one =
        list.find(({ id }) => id === cell) ?? list.find(({ name, id }) => name.toLowerCase() === plain || id === plain);
      const id = one?.id ?? cell;
      return id.length > limits.id
        ? problem(`It has ${id.length} letters; ${limits.id} is the most.`)
        : read((chance) => ({ ...chance, ...take(id) }));
    },
  };
}

function choice<Value extends string>(
  head: string,
  also: readonly string[],
  values: readonly Value[],
  print: (chance: Chance) => Value | undefined,
  take: (value: Value) => Partial<NewChance>,
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => print(chance) ?? '',
    read: (cell) => {
      const value = values.find((one) => plainWords(one) === plainWords(cell));
      return value === undefined
        ? problem(`${quoted(cell)} is not one of ${values.join(', ')}.`)
        : read((chance) => ({ ...chance, ...take(value) }));
    },
  };
}

function number(
  head: string,
  also: readonly string[],
  most: number,
  print: (chance: Chance) => number | undefined,
  take: (value: number) => Partial<NewChance>,
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => String(print(chance) ?? ''),
    read: (cell) => {
      const value = numberOf(cell);
      return value === undefined || value > most
        ? problem(`${quoted(cell)} is no number from 0 to ${most}.`)
        : read((chance) => ({ ...chance, ...take(value) }));
    },
  };
}

function whole(
  head: string,
  also: readonly string[],
  least: number,
  most: number,
  print: (chance: Chance) => number | undefined,
  take: (value: number) => Partial<NewChance>,
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => String(print(chance) ?? ''),
    read: (cell) => {
      const value = Number(cell.replace(/^#/, ''));
      return /^#?\d+$/.test(cell) && value >= least && value <= most
        ? read((chance) => ({ ...chance, ...take(value) }))
        : problem(`${quoted(cell)} is no whole number from ${least} to ${most}.`);
    },
  };
}

function penalty(
  head: string,
  also: readonly string[],
  print: (penalty: NonNullable<Chance['penalty']>) => string,
  take: (cell: string) => string | Partial<NonNullable<Chance['penalty']>>,
): ChanceColumn {
  return {
    head,
    also,
    print: (chance) => (chance.penalty === undefined ? '' : print(chance.penalty)),
    read: (cell) => {
      const taken = take(cell);
      if (typeof taken === 'string') return problem(taken);
      // Whether its seconds are there is looked at when the whole row is known.
      return read((chance) => ({ ...chance, penalty: { ...(chance.penalty ?? { seconds: Number.NaN }), ...taken } }));
    },
  };
}

function expected(head: string, part: 'goals' | 'low' | 'high'): ChanceColumn {
  return {
    head,
    also: part === 'goals' ? ['expected goals'] : [],
    print: (chance) => String(chance.expected?.[part] ?? ''),
    read: (cell) => {
      const value = numberOf(cell);
      if (value === undefined || value > 10) return problem(`${quoted(cell)} is no number of goals from 0 to 10.`);
      const none = { goals: Number.NaN, low: Number.NaN, high: Number.NaN };
      return read((chance) => ({ ...chance, expected: { ...none, ...chance.expected, [part]: value } }));
    },
  };
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

function clockCell(seconds: number): string {
  return Number.isInteger(seconds) ? clockText(seconds) : String(seconds);
}

function secondsOf(cell: string): number | undefined {
  const parts = /^(\d{1,3}):([0-5]\d(?:\.\d+)?)$/.exec(cell);
  return parts === null ? numberOf(cell) : Number(parts[1]) * 60 + Number(parts[2]);
}

function numberOf(cell: string): number | undefined {
  return /^(?:\d+(?:\.\d*)?|\.\d+)(?:e-?\d+)?$/i.test(cell) ? Number(cell) : undefined;
}

function yesOf(cell: string): boolean | undefined {
  const plain = cell.toLowerCase();
  if (['yes', 'y', 'true', '1', 'x'].includes(plain)) return true;
  return ['no', 'n', 'false', '0'].includes(plain) ? false : undefined;
}

function yesText(value: boolean): string {
  return value ? 'yes' : 'no';
}

/** Letters of a cell that are shown in a sentence. */
const longestShown = 30;

function quoted(cell: string): string {
  return `"${cell.length > longestShown ? `${cell.slice(0, longestShown)}…` : cell}"`;
}

function read(change: (chance: NewChance) => NewChance): CellRead {
  return { kind: 'read', change };
}

function problem(words: string): CellRead {
  return { kind: 'problem', text: words };
}
