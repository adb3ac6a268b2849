/**
 * A defender's name on the other side of the field: "tr" is "tl" and "ll" is "lr". Names without a side stay.
 * Needed where a whole chance is mirrored, because there the man called tr stands on the left.
 */
export function mirrorDefenderName(name: string): string {
  if (/^[a-z]+r$/.test(name)) return `${name.slice(0, -1)}l`;
  if (/^[a-z]+l$/.test(name)) return `${name.slice(0, -1)}r`;
  return name;
}
