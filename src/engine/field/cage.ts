import { usualField } from './usual-field.ts';

const { leftPost, rightPost, netPeg } = usualField;

/** Whether the straight way from one place to another leads through the goal's mouth or its net. */
export function crossesCage(fromX: number, fromY: number, toX: number, toY: number): boolean {
  // The net seen from above is a triangle: the mouth on the goal line, its third corner behind the middle.
  if (fromY > 0 !== toY > 0) {
    const share = fromY / (fromY - toY);
    const x = fromX + share * (toX - fromX);
    if (x >= leftPost.x && x <= rightPost.x) return true;
  }
  if (fromX > 0 !== toX > 0) {
    const share = fromX / (fromX - toX);
    const y = fromY + share * (toY - fromY);
    return y <= 0 && y >= netPeg.y;
  }
  return false;
}
