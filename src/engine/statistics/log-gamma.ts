/**
 * Natural logarithm of the gamma function of x > 0; relative error about 1e-15.
 *
 * Source: Lanczos, "A precision approximation of the gamma function", SIAM J. Numer. Anal. B 1 (1964) 86, with the nine
 * coefficients for g = 7 computed by Godfrey. RangeError for x that is not above 0.
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`invalid argument: ${x} (expected more than 0)`);
  const z = x - 1;
  let sum = coefficients[0]!;
  for (let k = 1; k < coefficients.length; k++) sum += coefficients[k]! / (z + k);
  const t = z + g + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

const g = 7;
const coefficients = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];
