import type { Interval } from '../engine/index.ts';

/** Two decimals: "0.34". Goals, shots and losses per chance. */
export function perChance(value: number): string {
  return fixed(value, 2);
}

/** "0.34 (0.31-0.37)": an estimate never goes without its interval. */
export function withInterval({ mean, low, high }: Interval): string {
  return `${fixed(mean, 2)} (${fixed(low, 2)}-${fixed(high, 2)})`;
}

/** "86 %". */
export function percent(share: number): string {
  return `${fixed(share * 100, 0)} %`;
}

/** "4.1": seconds to a tenth; the column or the sentence names the unit. */
export function tenth(value: number): string {
  return fixed(value, 1);
}

/** "12,000". */
export function count(value: number): string {
  return Math.round(value)
    .toString()
    .replace(/\B(?=(\d{3})+(?!\d))/g, ',');
}

/** "1 pass", "3 passes". */
export function counted(value: number, one: string, many = `${one}s`): string {
  return `${value} ${value === 1 ? one : many}`;
}

// Adding 0 turns -0 into 0. What is no number is a dash, never "NaN".
function fixed(value: number, digits: number): string {
  if (!Number.isFinite(value)) return '-';
  const scale = 10 ** digits;
  return (Math.round(value * scale) / scale + 0).toFixed(digits);
}
