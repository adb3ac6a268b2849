/** Periods before overtime: what "OT" is read as and written as in a season stands behind so many. */
const regular = 4;

/** "P2", and "OT", "OT 2" behind the fourth. */
export function periodText(period: number): string {
  if (period <= regular) return `P${period}`;
  return period === regular + 1 ? 'OT' : `OT ${period - regular}`;
}

/** The number of a period as people write it: "2", "Q2", "P2", "OT", "OT 2", "2OT"; undefined for what is none. */
export function periodOf(cell: string): number | undefined {
  const plain = cell.trim().toLowerCase();
  const count = /^[qp]?\s*(\d{1,2})$/.exec(plain)?.[1];
  if (count !== undefined) return Number(count);
  const overtime = /^(?:(\d)\s*)?ot(?:\s*(\d))?$/.exec(plain);
  if (overtime === null) return undefined;
  return regular + Number(overtime[1] ?? overtime[2] ?? 1);
}
