import { type GoalOrigins, type Origin, origins } from '../answers/goal-origins.ts';

const originTexts: Readonly<Record<Origin, string>> = {
  play: 'from the play’s own steps',
  beside: 'from a man who came open beside them',
  round: 'while the ball goes round, before the play or after it stopped',
  loose: 'from loose balls and rebounds',
};

/** Where goals against a scheme come from, in tenths, the most first; undefined when there is hardly a shot to tell by. `hasLooks`: some way of the play opens often. */
export function originSentence({ shares, chances }: GoalOrigins, hasLooks: boolean): string | undefined {
  const parts = tenthsOf(shares)
    .filter(({ tenths }) => tenths > 0)
    .map(({ origin, tenths }) => `${tenths} ${originTexts[origin]}`);
  if (parts.length === 0) return undefined;
  const lead = hasLooks ? 'Of every 10 goals' : 'Goals are scored though no look of the play opens often: of every 10,';
  return `${lead} about ${parts.join(', ')} (by the shots of ${chances} chances).`;
}

/** The shares in tenths that are ten together, the most first: what rounding leaves over goes to the largest remainders. None when nothing is shared out. */
function tenthsOf(shares: GoalOrigins['shares']): readonly { readonly origin: Origin; readonly tenths: number }[] {
  const exact = origins.map((origin) => ({ origin, tenths: 10 * shares[origin] }));
  const whole = exact.map(({ origin, tenths }) => ({ origin, tenths: Math.floor(tenths), rest: tenths % 1 }));
  if (exact.every(({ tenths }) => tenths === 0)) return [];
  let left = 10 - whole.reduce((sum, { tenths }) => sum + tenths, 0);
  return [...whole]
    .sort((one, other) => other.rest - one.rest)
    .map(({ origin, tenths }) => ({ origin, tenths: left-- > 0 ? tenths + 1 : tenths }))
    .sort((one, other) => other.tenths - one.tenths);
}
