import { expect, it } from 'vitest';
import { centimetres, degrees, feet, inches, kmh, metres, mph, toDegrees, toMetres, toMph } from './units.ts';

it.each([
  ['the yard is 0.9144 m by definition', metres(0.9144), 1],
  ['a goal of 6 ft is 2 yd', feet(6), 2],
  ['a pole of 72 in is 2 yd', inches(72), 2],
  ['91.44 cm are a yard', centimetres(91.44), 1],
  ['60 mph are 88 ft/s', mph(60), 88 / 3],
  ['36 km/h are 10 m/s', kmh(36), metres(10)],
  ['100 km/h are 62.137 mph', toMph(kmh(100)), 62.13711922373339],
  ['half a turn', degrees(180), Math.PI],
  ['and back', toDegrees(degrees(33)), 33],
  ['and back', toMetres(metres(7.8)), 7.8],
])('%s', (_name, actual, expected) => {
  expect(actual).toBeCloseTo(expected, 12);
});
