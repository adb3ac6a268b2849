import type { Player } from '../schema.ts';

type Cell = (player: Player) => string;

const grade =
  (name: keyof NonNullable<Player['grades']>): Cell =>
  ({ grades }) =>
    textOf(grades?.[name]);

const readings =
  (name: 'sprint20ydSeconds' | 'passSpeedMph' | 'shotSpeedMph' | 'wallBallIn30s'): Cell =>
  ({ measured }) =>
    measured?.[name]?.join('; ') ?? '';

/** The columns of a roster as a table, with headers that `readRosterTable` knows. */
const columns: readonly (readonly [header: string, cell: Cell])[] = [
  ['Number', ({ number }) => String(number)],
  ['Name', ({ name }) => name],
  ['Hand', ({ hand }) => hand],
  ['Stick', ({ crosse }) => crosse ?? ''],
  ['Position', ({ role }) => role ?? ''],
  ['Level', ({ level }) => level ?? ''],
  ['Absent', ({ absent }) => (absent === true ? 'yes' : '')],
  ['Speed', grade('speed')],
  ['Catch', grade('catch')],
  ['Pass', grade('pass')],
  ['Feed', grade('feed')],
  ['Shoot', grade('shoot')],
  ['Inside', grade('inside')],
  ['Handle', grade('handle')],
  ['Off hand', grade('offHand')],
  ['Sense', grade('sense')],
  ['Sprint 20 yd (s)', readings('sprint20ydSeconds')],
  ['Pass speed (mph)', readings('passSpeedMph')],
  ['Shot speed (mph)', readings('shotSpeedMph')],
  ['Wall ball in 30 s', readings('wallBallIn30s')],
  [
    'On goal',
    ({ measured }) => (measured?.onGoal === undefined ? '' : `${measured.onGoal.hits}/${measured.onGoal.shots}`),
  ],
  ['Height (cm)', ({ measured }) => textOf(measured?.heightCm)],
  ['Notes', ({ notes }) => notes ?? ''],
];

/** The players as the rows of a table, the header first. `readRosterTable` reads the same players from it. */
export function writeRosterTable(players: readonly Player[]): readonly (readonly string[])[] {
  return [columns.map(([header]) => header), ...players.map((player) => columns.map(([, cell]) => cell(player)))];
}

function textOf(value: number | undefined): string {
  return value === undefined ? '' : String(value);
}
