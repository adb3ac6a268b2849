/** Half the mouth of the goal and how far the net reaches behind the line: 6 ft wide, 7 ft deep (NFHS and NCAA 1-4). Yards. */
const halfMouth = 1;
const depth = 7 / 3;

/** Whether the straight way from one place to another leads through the goal's mouth or its net. */
export function crossesCage(fromX: number, fromY: number, toX: number, toY: number): boolean {
  // The net seen from above is a triangle: the mouth on the goal line, its third corner behind the middle.
  if (fromY > 0 !== toY > 0) {
    const share = fromY / (fromY - toY);
    const x = fromX + share * (toX - fromX);
    if (x >= -halfMouth && x <= halfMouth) return true;
  }
  if (fromX > 0 !== toX > 0) {
    const share = fromX / (fromX - toX);
    const y = fromY + share * (toY - fromY);
    return y <= 0 && y >= -depth;
  }
  return false;
}
