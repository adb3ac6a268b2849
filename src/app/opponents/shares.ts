/** One scheme of a mix: its weight beside the others, and the share of chances in which it is met, 0 to 1. */
export interface MixPart {
  readonly scheme: string;
  readonly weight: number;
  readonly share: number;
}

/** The mix that weights stand for. Weights that are no number above 0 count for nothing. */
export function sharesOf(weights: Readonly<Record<string, number>>): readonly MixPart[] {
  const parts = Object.entries(weights).map(([scheme, weight]) => ({ scheme, weight: Math.max(weight || 0, 0) }));
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  return parts.map((part) => ({ ...part, share: total > 0 ? part.weight / total : 0 }));
}

/** A share in whole percent, and never none for what may be met: "75 %", "less than 1 %". */
export function shareText(share: number): string {
  const percent = Math.round(100 * share);
  return percent === 0 && share > 0 ? 'less than 1 %' : `${percent} %`;
}
