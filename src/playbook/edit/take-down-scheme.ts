import {
  createDutySheet,
  type DutyKind,
  type DutyRow,
  duty,
  lapOf,
  type OwnDuty,
  type Spot,
  type SpotId,
  schemeById,
} from '../../engine/index.ts';
import { creaseWord } from '../language/patterns.ts';
import { printDuty } from '../language/print-duty.ts';
import type { Playbook } from '../schema.ts';
import { spotsOfSet } from './edit-plays.ts';
import { type PlaybookEdit, refused } from './edit-result.ts';
import { addScheme } from './scheme-list.ts';

export interface TakeDownOptions {
  /** The set against which the scheme is written down, built in or own. */
  readonly set: string;
  /** The man whom a shutoff is meant for. */
  readonly star: SpotId | undefined;
}

export const defaultTakeDown: TakeDownOptions = { set: '2-3-1', star: undefined };

/**
 * A scheme of the playbook's own that does what a built-in one does against a set: its duty sheet, ball once round and inside, in the play
 * language. What the language cannot say is written as the place where the man stands then; `also` tells it.
 */
export function takeDownScheme(
  playbook: Playbook,
  schemeId: string,
  name: string,
  options: Partial<TakeDownOptions> = {},
): PlaybookEdit {
  const { set, star } = { ...defaultTakeDown, ...options };
  const scheme = schemeById(schemeId);
  if (scheme === undefined) return refused(`No built-in scheme is called "${schemeId}".`);
  const spots = spotsOfSet(playbook, set);
  if (spots === undefined) return refused(`No set is called "${set}".`);
  if (star !== undefined && !spots.some((spot) => spot.id === star))
    return refused(`The set "${set}" has no spot ${star}.`);
  const also: string[] = [];
  const sheet = createDutySheet(scheme, spots, lapOf(spots), star === undefined ? {} : { star });
  const marks = marksOf(spots);
  const added = addScheme(playbook, name, {
    men: Object.fromEntries(scheme.names.map((man, i) => [man, pair(scheme.home[2 * i]!, scheme.home[2 * i + 1]!)])),
    ...(scheme.shortSticks.length > 0 && { shortSticks: scheme.shortSticks.map((i) => scheme.names[i]!) }),
    extends: scheme.extends,
    rows: sheet.rows.map((row) => ({
      ball: marks.get(row.ball) ?? row.ball,
      do: scheme.names.map((man, i) => dutyPhrase(man, i, row, spots, marks, also)),
    })),
  });
  return added.kind === 'refused' ? added : { ...added, also };
}

/** How each spot is called in a grid: the only man on the crease is "crease", whatever a set calls him. */
function marksOf(spots: readonly Spot[]): ReadonlyMap<SpotId, string> {
  const order = lapOf(spots);
  const inside = spots.filter(
    ({ at }) => at.y > 0 && Math.abs(at.x) <= creaseHalfWidth && Math.hypot(at.x, at.y) <= creaseReach,
  );
  const only = inside.length === 1 ? inside[0]!.id : undefined;
  return new Map(order.map((id) => [id, id === only ? creaseWord : id]));
}

/** Who stands within these counts as the man on the crease when he is the only one, yd: as the defense sees it (src/engine/defense/view.ts). */
const creaseHalfWidth = 5;
const creaseReach = 8.25;

function dutyPhrase(
  man: string,
  index: number,
  row: DutyRow,
  spots: readonly Spot[],
  marks: ReadonlyMap<SpotId, string>,
  also: string[],
): string {
  const { board, places } = row;
  const markOf = (who: number) => (who < 0 ? undefined : marks.get(spots[who]!.id));
  const [a, b] = [markOf(board.a[index]!), markOf(board.b[index]!)];
  const at = pair(board.x[index]!, board.y[index]!);
  const own = sayDuty(board.kind[index] as DutyKind, a, b, at);
  if (own.lost !== undefined) also.push(`Ball at ${row.ball}: "${row.duties[index]}" of ${man} ${own.lost}.`);
  const stand = places[index]!;
  return printDuty(man, own.duty ?? { duty: 'place', at: pair(stand.x, stand.y) });
}

interface Said {
  /** Absent when the language has no word for it. */
  readonly duty?: OwnDuty;
  readonly lost?: string;
}

function sayDuty(kind: DutyKind, a: string | undefined, b: string | undefined, at: [number, number]): Said {
  const place: Said = { lost: 'is written as the place where he stands' };
  switch (kind) {
    case duty.ball:
      return { duty: { duty: 'ball' } };
    case duty.place:
      return { duty: { duty: 'place', at }, ...(a !== undefined && { lost: 'is written without whom he watches' }) };
    case duty.man:
      return a === undefined ? place : { duty: { duty: 'man', who: a } };
    case duty.front:
      return a === undefined ? place : { duty: { duty: 'front', who: a } };
    case duty.split:
      return a === undefined || b === undefined ? place : { duty: { duty: 'split', who: [a, b] } };
    case duty.lane:
      if (a === undefined) return place;
      return {
        duty: { duty: 'lane', who: a, at },
        ...(b !== undefined && { lost: 'is written without the man at his back' }),
      };
    case duty.lock:
      if (a === undefined) return place;
      return {
        duty: { duty: 'lock', who: a },
        ...(b !== undefined && { lost: 'is written without the man he cheats to' }),
      };
    case duty.pipe:
      return a === undefined ? place : { duty: { duty: 'pipe', who: a, at } };
    default:
      return exhaustive(kind);
  }
}

function pair(x: number, y: number): [number, number] {
  return [Math.round(x * 10) / 10 + 0, Math.round(y * 10) / 10 + 0];
}

function exhaustive(kind: never): never {
  throw new RangeError(`unknown duty: ${String(kind)}`);
}
