import { type Crosse, type Hand, type Level, levels } from '../../engine/index.ts';
import { limits, type Player, type PlayerRole, playerRoles, type ReadingKind } from '../../playbook/index.ts';
import {
  printHeight,
  printOnGoal,
  printReadings,
  type Read,
  readGrade,
  readHeight,
  readJersey,
  readOnGoal,
  readReadings,
} from './cell-text.ts';
import type { RosterColumns, Units } from './team-state.ts';
import { crosseWords, handWords, levelWords, roleWords, type Skill, skillNames, skillWords } from './team-words.ts';

type Measured = NonNullable<Player['measured']>;
export type MeasuredName = keyof Measured;

interface ColumnHead {
  readonly id: string;
  /** In the head of the table; `long` where there is room for it. */
  readonly head: string;
  readonly long?: string;
  /** What is spoken, and told when the head is pointed at. */
  readonly name: string;
  /** Least width, rem. */
  readonly width: number;
}

/** A cell that is typed. */
export interface TextColumn extends ColumnHead {
  readonly kind: 'text';
  readonly form: 'whole' | 'decimal' | 'words';
  /** Stands in an empty cell: what counts then. */
  readonly empty?: string;
  readonly print: (player: Player) => string;
  /** What the text makes of a man. */
  readonly read: (text: string) => Read<(player: Player) => Player>;
}

/** A cell that is one of a few words. */
export interface ChoiceColumn extends ColumnHead {
  readonly kind: 'choice';
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly valueOf: (player: Player) => string;
  readonly put: (player: Player, value: string) => Player;
}

/** A cell that is yes or no. */
export interface CheckColumn extends ColumnHead {
  readonly kind: 'check';
  readonly isOn: (player: Player) => boolean;
  readonly put: (player: Player, isOn: boolean) => Player;
}

export type RosterColumn = TextColumn | ChoiceColumn | CheckColumn;

/** The columns of the roster's table, left to right. */
export function rosterColumns(shown: RosterColumns, units: Units): readonly RosterColumn[] {
  if (shown === 'measured') return [numberColumn, nameColumn, handColumn, ...measuredColumns(units), absentColumn];
  const grades = skillNames.map(gradeColumn);
  return [
    numberColumn,
    nameColumn,
    handColumn,
    roleColumn,
    levelColumn,
    crosseColumn,
    ...grades,
    absentColumn,
    notesColumn,
  ];
}

export const numberColumn: TextColumn = {
  kind: 'text',
  id: 'number',
  head: 'No.',
  name: 'Number',
  width: 3.6,
  form: 'whole',
  print: ({ number }) => String(number),
  read: (text) => mapRead(readJersey(text), (number) => (player) => ({ ...player, number })),
};

export const nameColumn: TextColumn = {
  kind: 'text',
  id: 'name',
  head: 'Name',
  name: 'Name',
  width: 9,
  form: 'words',
  print: ({ name }) => name,
  read: (text) =>
    text.length > limits.name
      ? { kind: 'problem', text: `A name has at most ${limits.name} letters.` }
      : { kind: 'read', value: (player) => ({ ...player, name: text }) },
};

export const handColumn: ChoiceColumn = {
  kind: 'choice',
  id: 'hand',
  head: 'Hand',
  name: 'Hand',
  width: 4.6,
  options: (['right', 'left', 'both'] as const).map((value) => ({ value, text: handWords[value] })),
  valueOf: ({ hand }) => hand,
  put: (player, value) => ({ ...player, hand: value as Hand }),
};

export const roleColumn: ChoiceColumn = {
  kind: 'choice',
  id: 'role',
  head: 'Role',
  name: 'Role in the whole game',
  width: 6.4,
  options: [{ value: '', text: '–' }, ...playerRoles.map((value) => ({ value, text: roleWords[value] }))],
  valueOf: ({ role }) => role ?? '',
  put: ({ role: _, ...player }, value) => (value === '' ? player : { ...player, role: value as PlayerRole }),
};

export const levelColumn: ChoiceColumn = {
  kind: 'choice',
  id: 'level',
  head: 'Level',
  name: 'Level of his own',
  width: 5.6,
  options: [{ value: '', text: 'Team’s' }, ...levels.map((value) => ({ value, text: levelWords[value] }))],
  valueOf: ({ level }) => level ?? '',
  put: ({ level: _, ...player }, value) => (value === '' ? player : { ...player, level: value as Level }),
};

export const crosseColumn: ChoiceColumn = {
  kind: 'choice',
  id: 'crosse',
  head: 'Crosse',
  name: 'Crosse',
  width: 5,
  options: (['short', 'pole', 'goalkeeper'] as const).map((value) => ({ value, text: crosseWords[value] })),
  valueOf: ({ crosse }) => crosse ?? 'short',
  // A short crosse is what a man has of whom nothing is said.
  put: ({ crosse: _, ...player }, value) => (value === 'short' ? player : { ...player, crosse: value as Crosse }),
};

export const absentColumn: CheckColumn = {
  kind: 'check',
  id: 'absent',
  head: 'Absent',
  name: 'Absent today',
  width: 4,
  isOn: ({ absent }) => absent === true,
  put: ({ absent: _, ...player }, isOn) => (isOn ? { ...player, absent: true } : player),
};

export const notesColumn: TextColumn = {
  kind: 'text',
  id: 'notes',
  head: 'Notes',
  name: 'Notes',
  width: 10,
  form: 'words',
  print: ({ notes }) => notes ?? '',
  read: (text) =>
    text.length > limits.note
      ? { kind: 'problem', text: `A note has at most ${limits.note} letters.` }
      : { kind: 'read', value: ({ notes: _, ...player }) => (text === '' ? player : { ...player, notes: text }) },
};

export function gradeColumn(skill: Skill): TextColumn {
  const { short, name, moves } = skillWords[skill];
  return {
    kind: 'text',
    id: `grade ${skill}`,
    head: short,
    long: name,
    name: `${name}: ${moves}`,
    width: 2.5,
    form: 'decimal',
    empty: '3',
    print: ({ grades }) => (grades?.[skill] === undefined ? '' : String(grades[skill])),
    read: (text) => mapRead(readGrade(text), (grade) => (player) => withGrade(player, skill, grade)),
  };
}

/** A man with a grade; without one when `grade` is undefined, and without grades when that was the last. */
export function withGrade({ grades, ...player }: Player, skill: Skill, grade: number | undefined): Player {
  const next = withEntry(grades, skill, grade);
  return next === undefined ? player : { ...player, grades: next };
}

/** What readings are of: the measurements that are lists. */
export const readingNames = ['sprint20ydSeconds', 'passSpeedMph', 'shotSpeedMph', 'wallBallIn30s'] as const;
export type ReadingName = (typeof readingNames)[number];

export const readingWords: Readonly<
  Record<ReadingName, { readonly head: string; readonly name: string; readonly unit: ReadingKind }>
> = {
  sprint20ydSeconds: { head: '20 yd', name: 'Sprint over 20 yards', unit: 'seconds' },
  passSpeedMph: { head: 'Pass', name: 'Speed of his passes', unit: 'speed' },
  shotSpeedMph: { head: 'Shot', name: 'Speed of his shots', unit: 'speed' },
  wallBallIn30s: { head: 'Wall ball', name: 'Catches off a wall in 30 seconds', unit: 'count' },
};

export function unitText(unit: ReadingKind, speed: Units['speed']): string {
  if (unit === 'seconds') return 's';
  if (unit === 'count') return 'in 30 s';
  return speed === 'mph' ? 'mph' : 'km/h';
}

export function measuredColumns(units: Units): readonly TextColumn[] {
  return [...readingNames.map((name) => readingColumn(name, units)), onGoalColumn, heightColumn(units)];
}

export function readingColumn(name: ReadingName, { speed }: Units): TextColumn {
  const words = readingWords[name];
  const unit = unitText(words.unit, speed);
  return {
    kind: 'text',
    id: `measured ${name}`,
    head: `${words.head}, ${unit}`,
    name: `${words.name}, ${unit}, each try`,
    width: 8,
    form: 'words',
    print: ({ measured }) => printReadings(measured?.[name], words.unit, speed),
    read: (text) =>
      mapRead(
        readReadings(text, words.unit, speed),
        (values) => (player) => withMeasured(player, name, values && [...values]),
      ),
  };
}

export const onGoalColumn: TextColumn = {
  kind: 'text',
  id: 'measured onGoal',
  head: 'On goal',
  name: 'Shots with time and room: how many on goal of how many',
  width: 5.6,
  form: 'words',
  print: ({ measured }) => printOnGoal(measured?.onGoal),
  read: (text) => mapRead(readOnGoal(text), (value) => (player) => withMeasured(player, 'onGoal', value)),
};

export function heightColumn({ height }: Units): TextColumn {
  const unit = height === 'cm' ? 'cm' : 'ft in';
  return {
    kind: 'text',
    id: 'measured heightCm',
    head: `Height, ${unit}`,
    name: `Height, ${unit}`,
    width: 5.6,
    form: 'words',
    print: ({ measured }) => printHeight(measured?.heightCm, height),
    read: (text) => mapRead(readHeight(text, height), (value) => (player) => withMeasured(player, 'heightCm', value)),
  };
}

export function withMeasured<Name extends MeasuredName>(
  { measured, ...player }: Player,
  name: Name,
  value: Measured[Name] | undefined,
): Player {
  const next = withEntry(measured, name, value);
  return next === undefined ? player : { ...player, measured: next };
}

// Without the entry when there is no value, and nothing at all when that was the last.
function withEntry<T extends object>(entries: T | undefined, key: keyof T, value: unknown): T | undefined {
  const { [key]: _, ...rest } = entries ?? ({} as T);
  const next = (value === undefined ? rest : { ...entries, [key]: value }) as T;
  return Object.values(next).some((each) => each !== undefined) ? next : undefined;
}

function mapRead<T, U>(read: Read<T>, make: (value: T) => U): Read<U> {
  return read.kind === 'problem' ? read : { kind: 'read', value: make(read.value) };
}
