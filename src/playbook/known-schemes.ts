/** Ids of the schemes that the engine plays, for checking what opponents are believed to play. */
export const knownSchemes: readonly string[] = [
  'box-zone',
  'box-string',
  'four-man-rotation',
  'five-man-rotation',
  'diamond-and-one',
  'house-3-2',
  'zone-2-3',
  'shutoff',
  'jump',
  'two-down',
  'three-down',
];
