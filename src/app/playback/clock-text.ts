/** An instant or a length of time as a clock shows it, `3.2`, from seconds: to the tenth, and never a minus before a nought. */
export function clockText(seconds: number): string {
  const tenths = Math.round(10 * seconds);
  return ((tenths === 0 ? 0 : tenths) / 10).toFixed(1);
}
