import { type Chance, limits, type NewChance, type Playbook } from '../../playbook/index.ts';
import { type CellRead, numberOf, plainWords, problem, quoted, read } from './cell-words.ts';

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

/** Words. */
export function text(
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
export function named(
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

/** One of a few words. */
export function choice<Value extends string>(
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

/** A number of 0 or more. */
export function number(
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

/** A whole number; a jersey may have its #. */
export function whole(
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

/** A part of the penalty. */
export function penalty(
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

/** A part of what was expected. */
export function expected(head: string, part: 'goals' | 'low' | 'high'): ChanceColumn {
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
