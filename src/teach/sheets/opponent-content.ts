import { type Interval, levelDiscipline, mirrorDefenderName, type Play } from '../../engine/index.ts';
import { type Opponent, type Playbook, ruleCodeOf, toEnginePlay, toEngineScheme } from '../../playbook/index.ts';
import { drawnField, type MetPlay, type MetScheme, type OpponentContent } from '../../render/index.ts';
import { keeperQuarters } from '../scout/keeper-quarters.ts';
import { schemesSeenOf } from '../scout/schemes-seen.ts';
import { dayWords, type SheetResult, type SheetWishes } from './sheet-content.ts';

/** What one play was found to make against an opponent's schemes. */
export interface PlayAgainst {
  readonly play: string;
  /** Over all of them by their shares. */
  readonly goals: Interval;
  /** Against each; in any order. */
  readonly results: readonly SheetResult[];
}

/** All that the page of an opponent says. Schemes that nobody knows any more are left out. RangeError for an opponent that the playbook does not hold. */
export function opponentContent(
  playbook: Playbook,
  id: string,
  { side, paper, date }: Omit<SheetWishes, 'withNames'>,
  found: readonly PlayAgainst[] = [],
): OpponentContent {
  const opponent = playbook.opponents?.find((one) => one.id === id);
  if (opponent === undefined) throw new RangeError(`unknown opponent: ${id}`);
  const met = metSchemes(playbook, opponent, side);
  const schemes = met.map(({ scheme }) => scheme);
  const plays = found.map((one) =>
    metPlay(
      playbook,
      one,
      met.map((scheme) => scheme.id),
      side,
    ),
  );
  return {
    opponent: opponent.name,
    team: playbook.team.name,
    side,
    field: drawnField(ruleCodeOf(playbook).markings),
    schemes,
    plays: [...plays].sort((one, other) => other.goals.mean - one.goals.mean),
    trials: Math.min(...found.flatMap(({ results }) => results.map(({ trials }) => trials))),
    notes: opponent.notes ?? '',
    ...seenContent(playbook, id),
    ...keeperContent(opponent),
    date,
    paper,
  };
}

function seenContent(playbook: Playbook, id: string): Pick<OpponentContent, 'seen'> {
  const seen = schemesSeenOf(playbook, id);
  if (seen.length === 0) return {};
  return { seen: seen.map(({ name, times, days }) => ({ name, times, lastDay: writtenDay(days[0]) })) };
}

// At noon it is the same day in every place.
function writtenDay(day: string | undefined): string {
  return day === undefined ? '' : dayWords(new Date(`${day}T12:00:00`));
}

function keeperContent({ keeper }: Opponent): Pick<OpponentContent, 'keeper'> {
  if (keeper === undefined) return {};
  return { keeper: { quarters: keeperQuarters(keeper) } };
}

/** How often an opponent plays each scheme that the playbook knows, 0 to 1 and 1 in all; what he plays most first. */
export function sharesOfOpponent(
  playbook: Playbook,
  opponent: Opponent,
): readonly { readonly scheme: string; readonly share: number }[] {
  const known = Object.entries(opponent.schemes ?? {}).filter(
    ([id]) => toEngineScheme(playbook, id, { spots: [] }) !== undefined,
  );
  const all = known.reduce((sum, [, weight]) => sum + weight, 0);
  return known
    .map(([scheme, weight]) => ({ scheme, share: weight / all }))
    .sort((one, other) => other.share - one.share);
}

function metSchemes(playbook: Playbook, opponent: Opponent, side: 'left' | 'right') {
  const said = opponent.discipline ?? {};
  const usual = said.all ?? levelDiscipline[playbook.team.level];
  return sharesOfOpponent(playbook, opponent).map(({ scheme: id, share }) => {
    const { notes, names, home } = toEngineScheme(playbook, id, { spots: [] })!;
    const men: MetScheme['men'] = names.map((written, at) => {
      // On the left side the man called tr stands on the left, and the entry names men as the reader sees them.
      const mirrored = mirrorDefenderName(written);
      const name = side === 'left' && names.includes(mirrored) ? mirrored : written;
      const x = home[2 * at]! * (side === 'left' ? -1 : 1);
      return { name, home: { x, y: home[2 * at + 1]! }, discipline: said[name] ?? usual };
    });
    const own = playbook.schemes?.find((one) => one.id === id);
    const open = own === undefined ? `Open: ${lowered(notes.leaves)}` : (own.notes ?? '');
    const scheme: MetScheme = { name: notes.name, share, open, men };
    return { id, scheme };
  });
}

function metPlay(
  playbook: Playbook,
  { play: id, goals, results }: PlayAgainst,
  schemes: readonly string[],
  side: 'left' | 'right',
): MetPlay {
  const at = playbook.plays.findIndex((entry) => entry.id === id);
  const play: Play = toEnginePlay(playbook, id, side);
  return {
    number: at + 1,
    play,
    set: playbook.plays[at]!.set,
    goals,
    byScheme: schemes.flatMap((scheme) => results.find((one) => one.scheme === scheme)?.goalsPerChance ?? []),
  };
}

function lowered(words: string): string {
  return `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}
