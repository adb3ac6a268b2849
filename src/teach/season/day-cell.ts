import { isDay } from '../../playbook/index.ts';

/** What comes first in a day such as 3/4/2026. */
export const dayOrders = ['monthFirst', 'dayFirst'] as const;
export type DayOrder = (typeof dayOrders)[number];

/** A cell read as a day: the day as the playbook keeps it, that it may be one of two, or that it is none. */
export type DayRead =
  | { readonly kind: 'day'; readonly day: string }
  | { readonly kind: 'unclear'; readonly monthFirst: string; readonly dayFirst: string }
  | { readonly kind: 'none' };

/** Reads "2026-03-17", "3/17/2026", "17.3.2026", "3/17/26". What can be only one day is that day, whatever `order` says; with dots the day stands first. */
export function readDay(cell: string, order: DayOrder | undefined): DayRead {
  const plain = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(cell);
  if (plain !== null) return dayOr(dayText(plain[1]!, plain[2]!, plain[3]!));
  const parts = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/.exec(cell);
  if (parts === null) return { kind: 'none' };
  const [, one, mark, other, year] = parts as unknown as [string, string, string, string, string];
  const [monthFirst, dayFirst] = [dayText(year, one, other), dayText(year, other, one)];
  if (mark === '.') return dayOr(dayFirst);
  if (monthFirst === undefined || dayFirst === undefined) return dayOr(monthFirst ?? dayFirst);
  if (monthFirst === dayFirst) return dayOr(monthFirst);
  return order === undefined
    ? { kind: 'unclear', monthFirst, dayFirst }
    : dayOr(order === 'monthFirst' ? monthFirst : dayFirst);
}

/** What the days of a column show of their order: those that can be only one day speak for the others. Undefined when none of them does, or they speak against each other. */
export function dayOrderOf(
  cells: readonly string[],
): { readonly order: DayOrder; readonly shownBy: string } | undefined {
  const shown = cells.flatMap((cell) => {
    const parts = /^(\d{1,2})[-/](\d{1,2})[-/]\d+$/.exec(cell);
    if (parts === null) return [];
    const [one, other] = [Number(parts[1]), Number(parts[2])];
    if (one > 12 === other > 12) return [];
    return [{ order: other > 12 ? ('monthFirst' as const) : ('dayFirst' as const), shownBy: cell }];
  });
  return new Set(shown.map(({ order }) => order)).size === 1 ? shown[0] : undefined;
}

function dayOr(day: string | undefined): DayRead {
  return day === undefined ? { kind: 'none' } : { kind: 'day', day };
}

function dayText(year: string, month: string, day: string): string | undefined {
  const text = `${year.length === 2 ? '20' : ''}${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return Number(month) >= 1 && Number(month) <= 12 && isDay(text) ? text : undefined;
}
