/** Where a defender is at home, for who does not know his letters: "high right", "low left", "middle". Yards, the offense's right. */
export function defenderWords([x, y]: readonly [number, number]): string {
  const side = x > aside ? 'right' : x < -aside ? 'left' : '';
  const height = y >= high ? 'high' : y <= low ? 'low' : '';
  if (side === '') return height === '' ? 'middle' : `${height} middle`;
  return height === '' ? side : `${height} ${side}`;
}

/** From here on a man is at a side, high, or low, yd. */
const aside = 1.5;
const high = 8;
const low = 4;
