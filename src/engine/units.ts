/**
 * The doors through which other units enter and leave: inside there are only yards, seconds and radians
 * (docs/units-and-frames.md). Each is exact: the yard is 0.9144 m and the mile 1,760 yards by definition
 * (international yard and pound agreement, 1959).
 */

const metresPerYard = 0.9144;
const yardsPerMile = 1760;
const secondsPerHour = 3600;

/** Metres as yards; also metres a second as yards a second. `metres(1.83)` is 2.001312. */
export function metres(value: number): number {
  return value / metresPerYard;
}

/** Feet as yards. */
export function feet(value: number): number {
  return value / 3;
}

/** Inches as yards. */
export function inches(value: number): number {
  return value / 36;
}

/** Centimetres as yards. */
export function centimetres(value: number): number {
  return value / (100 * metresPerYard);
}

/** Miles an hour as yards a second. `mph(90)` is 44. */
export function mph(value: number): number {
  return (value * yardsPerMile) / secondsPerHour;
}

/** Kilometres an hour as yards a second. */
export function kmh(value: number): number {
  return (value * 1000) / (metresPerYard * secondsPerHour);
}

/** Degrees as radians. */
export function degrees(value: number): number {
  return (value * Math.PI) / 180;
}

/** Yards as metres; also yards a second as metres a second. */
export function toMetres(yards: number): number {
  return yards * metresPerYard;
}

/** Yards a second as miles an hour. */
export function toMph(yardsPerSecond: number): number {
  return (yardsPerSecond * secondsPerHour) / yardsPerMile;
}

/** Radians as degrees. */
export function toDegrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
