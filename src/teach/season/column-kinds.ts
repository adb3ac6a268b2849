import { type Chance, limits, type NewChance, type Playbook } from '../../playbook/index.ts';
import { type CellRead, numberOf, plainWords, problem, quoted, read, secondsOf, yesOf, yesText } from './cell-words.ts';
import type { DayOrder } from './day-cell.ts';

/** What a cell is read with. */
export interface CellContext {
  readonly playbook: Playbook;
  /** What comes first in days such as 3/4/2026; undefined when nobody has said. */
  readonly days: DayOrder | undefined;
}

/** A column of a table of chances, and a field of the form that writes one: what may stand in it is said here alone. */
export interface ChanceColumn {
  /** What stands at its head. */
  readonly head: string;
  /** What else it may be called; small letters. */
  readonly also: readonly string[];
  /** The part of a chance that it writes. */
  readonly key: keyof NewChance;
  /** What may stand in it, for people. */
  readonly may: string;
  /** What is chosen from in a form; undefined where it is typed. */
  readonly choices: ((playbook: Playbook) => readonly ColumnChoice[]) | undefined;
  /** What stands in its cell; empty for what is not known. */
  readonly print: (chance: Chance) => string;
  /** Reads a cell that is not empty. */
  readonly read: (cell: string, context: CellContext) => CellRead;
}

export interface ColumnChoice {
  readonly value: string;
  readonly text: string;
}

/** Parts of a chance whose value is of one kind. */
type KeyOf<Value> = {
  [Key in keyof NewChance]-?: NonNullable<NewChance[Key]> extends Value ? Key : never;
}[keyof NewChance];

/** What every kind of column is told. */
interface ColumnOf<Value> {
  readonly head: string;
  readonly also?: readonly string[];
  readonly key: KeyOf<Value>;
}

/** A column whose part of a chance is one value: its cell is read as that value, or as what is wrong with it. */
export function valueColumn<Value>(
  { head, also = [], key }: ColumnOf<Value>,
  kind: {
    readonly may: string;
    readonly choices?: ChanceColumn['choices'];
    readonly print: (value: Value) => string;
    readonly read: (cell: string, context: CellContext) => ValueRead<Value>;
  },
): ChanceColumn {
  return {
    head,
    also,
    key,
    may: kind.may,
    choices: kind.choices,
    print: (chance) => {
      const value = chance[key] as Value | undefined;
      return value === undefined ? '' : kind.print(value);
    },
    read: (cell, context) => {
      const taken = kind.read(cell, context);
      return taken.kind === 'problem' ? problem(taken.text) : read((chance) => ({ ...chance, [key]: taken.value }));
    },
  };
}

export type ValueRead<Value> =
  | { readonly kind: 'value'; readonly value: Value }
  | { readonly kind: 'problem'; readonly text: string };

export function valueOr<Value>(value: Value | undefined, wrong: string): ValueRead<Value> {
  return value === undefined ? { kind: 'problem', text: wrong } : { kind: 'value', value };
}

/** Words. */
export function text({ longest, may, ...column }: ColumnOf<string> & { longest: number; may: string }): ChanceColumn {
  return valueColumn<string>(column, {
    may,
    print: (value) => value,
    read: (cell) => valueOr(fitting(cell, longest), tooLong(cell, longest)),
  });
}

/** Something of the playbook by its name or id, kept by its id; what the playbook does not have is kept as it stands. */
export function named({
  known,
  may,
  isChosen,
  ...column
}: ColumnOf<string> & {
  known: (playbook: Playbook) => readonly { readonly id: string; readonly name: string }[];
  may: string;
  /** A form offers those that are known; else it is typed. */
  isChosen: boolean;
}): ChanceColumn {
  return valueColumn<string>(column, {
    may,
    choices: isChosen ? (playbook) => known(playbook).map(({ id, name }) => ({ value: id, text: name })) : undefined,
    print: (value) => value,
    read: (cell, { playbook }) => {
      const plain = cell.toLowerCase();
      const list = known(playbook);
      const one =
        list.find(({ id }) => id === cell) ?? list.find(({ name, id }) => name.toLowerCase() === plain || id === plain);
      const id = one?.id ?? cell;
      return valueOr(fitting(id, limits.id), tooLong(id, limits.id));
    },
  });
}

/** One of a few, each by its own word or by that which stands on the screen. */
export function choice<Value extends string>({
  words,
  ...column
}: ColumnOf<Value> & { words: Readonly<Record<Value, string>> }): ChanceColumn {
  const values = Object.keys(words) as Value[];
  const may = values.map((value) => words[value]).join(', ');
  return valueColumn<Value>(column, {
    may,
    choices: () => values.map((value) => ({ value, text: words[value] })),
    print: (value) => value,
    read: (cell) => {
      const plain = plainWords(cell);
      const value = values.find((one) => plainWords(one) === plain || plainWords(words[one]) === plain);
      return valueOr(value, `${quoted(cell)} is not one of ${may}.`);
    },
  });
}

/** A number of 0 or more. */
export function number({ most, may, ...column }: ColumnOf<number> & { most: number; may: string }): ChanceColumn {
  return valueColumn<number>(column, {
    may,
    print: String,
    read: (cell) => valueOr(within(numberOf(cell), 0, most), `${quoted(cell)} is no number from 0 to ${most}.`),
  });
}

/** A whole number; a jersey may have its #. */
export function whole({
  least,
  most,
  orElse = '',
  may = `a whole number from ${least} to ${most}${orElse}`,
  also,
  readWhole = (cell) => (/^#?\d+$/.test(cell) ? Number(cell.replace(/^#/, '')) : undefined),
  ...column
}: ColumnOf<number> & {
  least: number;
  most: number;
  may?: string;
  /** What else may stand there, as the end of a sentence. */
  orElse?: string;
  readWhole?: (cell: string) => number | undefined;
}): ChanceColumn {
  return valueColumn<number>(
    { ...column, ...(also && { also }) },
    {
      may,
      print: String,
      read: (cell) =>
        valueOr(
          within(readWhole(cell), least, most),
          `${quoted(cell)} is no whole number from ${least} to ${most}${orElse}.`,
        ),
    },
  );
}

/** Yes or no. */
export function yesNo(column: ColumnOf<boolean>): ChanceColumn {
  return valueColumn<boolean>(column, {
    may: 'yes or no',
    choices: yesAndNo,
    print: yesText,
    read: (cell) => valueOr(yesOf(cell), neitherYesNorNo(cell)),
  });
}

/** A time on a clock that runs down. */
export function clockTime({
  most,
  print,
  ...column
}: ColumnOf<number> & { most: number; print: (seconds: number) => string }): ChanceColumn {
  return valueColumn<number>(column, {
    may: '7:11, or 431 for its seconds',
    print,
    read: (cell) =>
      valueOr(within(secondsOf(cell), 0, most), `${quoted(cell)} is no time on the clock; write 7:11, or seconds.`),
  });
}

type Penalty = NonNullable<Chance['penalty']>;

/** A part of the penalty. */
export function penalty<Key extends keyof Penalty>({
  head,
  also = [],
  part,
  may,
  isYes = false,
  readPart,
}: {
  head: string;
  also?: readonly string[];
  part: Key;
  may: string;
  isYes?: boolean;
  readPart: (cell: string) => ValueRead<NonNullable<Penalty[Key]>>;
}): ChanceColumn {
  return {
    head,
    also,
    key: 'penalty',
    may,
    choices: isYes ? yesAndNo : undefined,
    print: (chance) => {
      const value = chance.penalty?.[part];
      return value === undefined ? '' : typeof value === 'boolean' ? yesText(value) : String(value);
    },
    read: (cell) => {
      const taken = readPart(cell);
      if (taken.kind === 'problem') return problem(taken.text);
      // Whether its seconds are there is looked at when the whole row is known.
      return read((chance) => ({
        ...chance,
        penalty: { ...(chance.penalty ?? { seconds: Number.NaN }), [part]: taken.value },
      }));
    },
  };
}

/** A part of what was expected. */
export function expected(head: string, part: 'goals' | 'low' | 'high', may: string): ChanceColumn {
  return {
    head,
    also: part === 'goals' ? ['expected goals'] : [],
    key: 'expected',
    may,
    choices: undefined,
    print: (chance) => String(chance.expected?.[part] ?? ''),
    read: (cell) => {
      const value = within(numberOf(cell), 0, 10);
      if (value === undefined) return problem(`${quoted(cell)} is no number of goals from 0 to 10.`);
      const none = { goals: Number.NaN, low: Number.NaN, high: Number.NaN };
      return read((chance) => ({ ...chance, expected: { ...none, ...chance.expected, [part]: value } }));
    },
  };
}

export function neitherYesNorNo(cell: string): string {
  return `${quoted(cell)} is neither yes nor no.`;
}

function yesAndNo(): readonly ColumnChoice[] {
  return [
    { value: 'yes', text: 'yes' },
    { value: 'no', text: 'no' },
  ];
}

function within(value: number | undefined, least: number, most: number): number | undefined {
  return value !== undefined && value >= least && value <= most ? value : undefined;
}

function fitting(cell: string, longest: number): string | undefined {
  return cell.length > longest ? undefined : cell;
}

function tooLong(cell: string, longest: number): string {
  return `It has ${cell.length} letters; ${longest} is the most.`;
}
