import { describe, expect, it } from 'vitest';
import { demoPlaybook, lineUpFor, toEnginePlay } from '../../playbook/index.ts';
import { withAbsent } from './absence-questions.ts';
import { missedMen } from './missed-men.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');
const six = lineUpFor(demoPlaybook, play).players.map(({ number }) => number);
const others = demoPlaybook.team.roster.map(({ number }) => number).filter((number) => !six.includes(number));

describe('men who are missed in a play', () => {
  it('are none while all are here', () => {
    expect(missedMen(demoPlaybook, play)).toEqual([]);
  });

  it('are those of the best six who are away, and nobody else', () => {
    const away = withAbsent(demoPlaybook, [six[0]!, six[3]!, ...others], true);
    expect(missedMen(away, play)).toEqual([six[0], six[3]]);
  });

  it('come back by the same way', () => {
    expect(withAbsent(withAbsent(demoPlaybook, six, true), six, false)).toEqual(demoPlaybook);
  });
});
