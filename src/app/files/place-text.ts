/** A place in yards from the middle of the goal line, the offense's right first: "−2, 6". */
export function placeText(x: number, y: number): string {
  return `${numberText(x)}, ${numberText(y)}`;
}

/** A number with a true minus. */
export function numberText(value: number): string {
  return String(value).replace('-', '−');
}
