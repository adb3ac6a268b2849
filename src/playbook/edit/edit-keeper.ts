import { limits } from '../limits.ts';
import type { KeeperShot, Opponent, Playbook } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';

/** Writes down a shot on goal that an opponent's goalkeeper faced; feet, to the tenth. */
export function addKeeperShot(playbook: Playbook, id: string, { at: [x, y], result }: KeeperShot): PlaybookEdit {
  return changeShots(playbook, id, (shots) => {
    if (shots.length >= limits.keeperShots)
      return `At most ${limits.keeperShots} shots are kept for one goalkeeper. Take out the oldest first.`;
    return [...shots, { at: [tenth(x), tenth(y)], result }];
  });
}

/** Takes a shot out again, by its place in the list. */
export function removeKeeperShot(playbook: Playbook, id: string, at: number): PlaybookEdit {
  return changeShots(playbook, id, (shots) =>
    at in shots ? shots.filter((_, index) => index !== at) : 'This shot is not there any more.',
  );
}

function changeShots(
  playbook: Playbook,
  id: string,
  change: (shots: readonly KeeperShot[]) => readonly KeeperShot[] | string,
): PlaybookEdit {
  const opponent = playbook.opponents?.find((each) => each.id === id);
  if (opponent === undefined) return refused(`The playbook has no opponent "${id}" any more.`);
  const changed = change(opponent.keeper ?? []);
  if (typeof changed === 'string') return refused(changed);
  const { keeper: _, ...rest } = opponent;
  const next: Opponent = changed.length === 0 ? rest : { ...rest, keeper: [...changed] };
  const opponents = playbook.opponents!.map((each) => (each === opponent ? next : each));
  return editedPlaybook({ ...playbook, opponents });
}

function tenth(feet: number): number {
  return Math.round(10 * feet) / 10;
}
