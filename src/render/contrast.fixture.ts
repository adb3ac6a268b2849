/**
 * Contrast of two colours #rrggbb, 1 (none) to 21.
 * Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, section 6, "contrast ratio", https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
 */
export function contrast(a: string, b: string): number {
  const [low, high] = [relativeLuminance(a), relativeLuminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

/**
 * 0 (black) to 1 (white).
 * Source: WCAG 2.2, section 6, "relative luminance", https://www.w3.org/TR/WCAG22/#dfn-relative-luminance
 */
export function relativeLuminance(colour: string): number {
  const [red, green, blue] = channels(colour).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** What is seen of `colour` drawn over `ground` with this opacity, 0 to 1: mixed in sRGB, as browsers mix. */
export function laidOver(colour: string, opacity: number, ground: string): string {
  const under = channels(ground);
  const mixed = channels(colour).map((value, index) => Math.round(value * opacity + under[index]! * (1 - opacity)));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}

function channels(colour: string): readonly number[] {
  if (!/^#[0-9a-f]{6}$/.test(colour)) throw new RangeError(`invalid colour: ${colour} (expected #rrggbb)`);
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}
