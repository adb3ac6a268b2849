import { useEffect } from 'react';
import { usePlaybook } from '../shell/desk.tsx';
import { useScreen } from './screen-state.ts';
import { shownPlay } from './shown-play.ts';

/**
 * The id of the play that a place shows: that of its address, or else the one that was on the screen last, here or in another place. It is on the screen
 * now: whoever goes to another place finds it there. Undefined when the playbook has none.
 */
export function useShownPlay(playId: string | undefined): string | undefined {
  const playbook = usePlaybook();
  const before = useScreen((state) => state.play);
  const change = useScreen((state) => state.change);
  const id = shownPlay(playbook, [playId, before]);
  useEffect(() => {
    // Nothing of the play before is chosen in this one.
    if (before !== id) change({ play: id, step: 0, script: 'main', selected: undefined, trial: undefined });
  }, [before, id, change]);
  return id;
}
