/** A box of the screen, CSS pixels from its top left. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export type Size = Pick<Box, 'width' | 'height'>;

/** Pixels between the card and what it points at, and between the card and the edge of the screen. */
const gap = 12;
const margin = 8;

/**
 * Where a card stands beside what it points at: to its right, left, below or above, wherever there is room first. Where there is none it stands in the
 * corner of the screen in which it hides least of it, at the bottom right before the others.
 */
export function placeCard(anchor: Box | undefined, card: Size, screen: Size): Pick<Box, 'left' | 'top'> {
  const right = Math.max(margin, screen.width - card.width - margin);
  const bottom = Math.max(margin, screen.height - card.height - margin);
  const corners = [
    { left: right, top: bottom },
    { left: margin, top: bottom },
    { left: right, top: margin },
    { left: margin, top: margin },
  ];
  if (anchor === undefined) return corners[0]!;
  const besideTop = clamp(anchor.top, margin, bottom);
  const underLeft = clamp(anchor.left + (anchor.width - card.width) / 2, margin, right);
  const beside = [
    { left: anchor.left + anchor.width + gap, top: besideTop },
    { left: anchor.left - card.width - gap, top: besideTop },
    { left: underLeft, top: anchor.top + anchor.height + gap },
    { left: underLeft, top: anchor.top - card.height - gap },
  ];
  const fits = ({ left, top }: Pick<Box, 'left' | 'top'>): boolean =>
    left >= margin && left <= right && top >= margin && top <= bottom && shared({ left, top, ...card }, anchor) === 0;
  const hidden = corners.map((corner) => shared({ ...corner, ...card }, anchor));
  return beside.find(fits) ?? corners[hidden.indexOf(Math.min(...hidden))]!;
}

/** Area that two boxes share, square pixels. */
export function shared(one: Box, other: Box): number {
  const width = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left);
  const height = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top);
  return width > 0 && height > 0 ? width * height : 0;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
