import type { Point } from '../geometry/point.ts';
import type { Homography } from './homography.ts';

/**
 * The focal length, pixels, of a camera that shows the ground by this homography (field to picture), with square pixels and its axis through `middle`. The two columns
 * stand for directions that are square to each other and alike in length on the ground (Hartley and Zisserman, Multiple View Geometry, 8.6; Zhang 2000, IEEE TPAMI
 * 22:1330). `null` where the view tells nothing, such as straight from above.
 */
export function focalLength(homography: Homography, middle: Point): number | null {
  const [first, second] = [0, 1].map((column) => {
    const depth = homography[2][column];
    return [homography[0][column] - middle.x * depth, homography[1][column] - middle.y * depth, depth] as const;
  });
  const square = -(first[0] * second[0] + first[1] * second[1]);
  const squareWeight = first[2] * second[2];
  const alike = second[0] ** 2 + second[1] ** 2 - (first[0] ** 2 + first[1] ** 2);
  const alikeWeight = first[2] ** 2 - second[2] ** 2;
  // Both at once in the least squares: where one tells nothing the other alone counts.
  const weight = squareWeight ** 2 + alikeWeight ** 2;
  const squared = (square * squareWeight + alike * alikeWeight) / weight;
  return weight > 0 && squared > 0 ? Math.sqrt(squared) : null;
}
