import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook } from '../../playbook/index.ts';
import { shownPlay } from './shown-play.ts';

const [first, second, third] = demoPlaybook.plays.map(({ id }) => id);

describe('the play that is shown', () => {
  it.each<[string, (string | undefined)[], string | undefined]>([
    ['that of the address', [second, third], second],
    ['the one that was left, when the address names none', [undefined, third], third],
    ['the one that was left, when the address names one that is gone', ['gone', third], third],
    ['the first, when nothing that is wanted is there', ['gone', undefined], first],
  ])('is %s', (_, wanted, shown) => {
    expect(shownPlay(demoPlaybook, wanted)).toBe(shown);
  });

  it('is none that was put away, but for who asks for it', () => {
    const plays = demoPlaybook.plays.map((play) => (play.id === first ? { ...play, archived: true } : play));
    const playbook: Playbook = { ...demoPlaybook, plays };
    expect(shownPlay(playbook, [])).toBe(second);
    expect(shownPlay(playbook, [first])).toBe(first);
  });

  it('is none of an empty playbook', () => {
    expect(shownPlay({ ...demoPlaybook, plays: [] }, [first])).toBeUndefined();
  });
});
