import { createDutySheet, lapOf } from '../../engine/index.ts';
import { type Playbook, ruleCodeOf, schemeName, toEnginePlay, toEngineScheme } from '../../playbook/index.ts';
import { drawnField, type ManDownContent, manDownPage } from '../../render/index.ts';
import { buildMatchup } from '../../worker/index.ts';
import type { PrintedPages } from '../sheets/printed-pages.ts';
import type { SheetWishes } from '../sheets/sheet-content.ts';
import { type ManDownQuestion, type SchemeConcedes, theirPlaybook, theirPlayId } from './man-down.ts';

/** What our man-down sheet says beside what was asked. */
export interface ManDownWishes extends Pick<SheetWishes, 'paper' | 'date'> {
  /** Whose man-up it is. */
  readonly opponent: string;
  /** The scheme of the sheet; the one that concedes least when absent. */
  readonly scheme?: string;
}

/** All that the sheet says. RangeError for a scheme that the playbook does not know. */
export function manDownContent(
  playbook: Playbook,
  question: ManDownQuestion,
  answers: readonly SchemeConcedes[],
  { opponent, paper, date, scheme: wished }: ManDownWishes,
): ManDownContent {
  const id = wished ?? answers[0]?.scheme ?? question.schemes[0]!;
  const written = toEnginePlay(playbook, question.play);
  const scheme = toEngineScheme(playbook, id, written);
  if (scheme === undefined) throw new RangeError(`unknown scheme: ${id}`);
  // On the left side their set is turned over, and our men keep the names of their places: tr is on the right either way.
  const { spots } = toEnginePlay(playbook, question.play, question.side);
  const star = scheme.locksStar === true ? starOfThem(playbook, question, id) : undefined;
  const sheet = createDutySheet(scheme, spots, lapOf(spots), { star });
  const entry = playbook.plays.find((play) => play.id === question.play)!;
  return {
    team: playbook.team.name,
    opponent,
    set: entry.set,
    runs: question.runs === 'set' ? 'the ball going round' : `running something like ${entry.name}`,
    scheme: scheme.notes.name,
    summary: scheme.notes.summary,
    leaves: scheme.notes.leaves,
    side: question.side,
    field: drawnField(ruleCodeOf(playbook).markings),
    men: sheet.defenders,
    spots: spots.map(({ id: spot, at }) => ({ id: spot, at })),
    // Where a place is, the picture shows: numbers of yards are nothing to be called on a field.
    rows: sheet.rows.map(({ ball, duties, open, places }) => ({
      ball,
      duties: duties.map((words) =>
        withTheirs(
          words.replace(/^holds \([^)]*\)/, 'holds his place'),
          spots.map(({ id: spot }) => spot),
        ),
      ),
      open,
      places,
    })),
    answers: answers.map(({ scheme: one, goals, breaks }) => ({ scheme: schemeName(playbook, one), goals, breaks })),
    trials: answers[0]?.trials ?? 0,
    paper,
    date,
  };
}

/** A duty with "their" before the first of their men whom it names: on this sheet a place such as TR is one of ours, too. */
function withTheirs(words: string, spots: readonly string[]): string {
  const first = words.split(/[ ,]+/).find((word) => spots.includes(word));
  return first === undefined ? words : words.replace(new RegExp(`(^|[ ,])${first}(?=$|[ ,])`), `$1their ${first}`);
}

/** The sheet as a document of one page. */
export function printedManDown(content: ManDownContent): PrintedPages {
  const page = manDownPage(content);
  return { title: page.title, pages: [page] };
}

/** The man of theirs whom a shutoff is meant for: as the trials have it. */
function starOfThem(playbook: Playbook, question: ManDownQuestion, scheme: string): string | undefined {
  const { side, penalty, level } = question;
  const play = theirPlayId(question);
  const built = buildMatchup(theirPlaybook(playbook, question), { play, scheme, side, penalty, level });
  return built.kind === 'built' ? built.matchup.star : undefined;
}
