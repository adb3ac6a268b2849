import { type GoalOrigins, type Origin, origins } from '../answers/goal-origins.ts';

const originTexts: Readonly<Record<Origin, string>> = {
  play: 'from the play’s own steps',
  beside: 'from a man who came open beside them',
  round: 'while the ball goes round, before the play or after it stopped',
  loose: 'from loose balls and rebounds',
};

/** Where goals against a scheme come from, in tenths, the most first; undefined when there is hardly a shot to tell by. `hasLooks`: some way of the play opens often. */
export function originSentence({ shares, chances }: GoalOrigins, hasLooks: boolean): string | undefined {
  const parts = origins
    .map((origin) => ({ origin, tenths: Math.round(10 * shares[origin]) }))
    .filter(({ tenths }) => tenths > 0)
    .sort((one, other) => other.tenths - one.tenths)
    .map(({ origin, tenths }) => `${tenths} ${originTexts[origin]}`);
  if (parts.length === 0) return undefined;
  const lead = hasLooks ? 'Of every 10 goals' : 'Goals are scored though no look of the play opens often: of every 10,';
  return `${lead} about ${parts.join(', ')} (by the shots of ${chances} chances).`;
}
