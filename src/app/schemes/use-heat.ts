import { useEffect, useState } from 'react';
import type { ShotHeat } from '../../engine/index.ts';
import { useDesk } from '../shell/desk.tsx';

/** What a shot by one of the six is worth over the field, while it is wanted; null until it is there. `of` is the play that he shoots in. */
export function useHeat(wanted: boolean, scheme: string | undefined, shooter: number, of: object): ShotHeat | null {
  const { answers } = useDesk();
  const [heat, setHeat] = useState<ShotHeat | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another play may put another man at the spot
  useEffect(() => {
    if (!wanted || scheme === undefined || shooter < 0) {
      setHeat(null);
      return undefined;
    }
    let isWanted = true;
    answers
      .heat(scheme, shooter)
      .then((found) => {
        if (isWanted) setHeat(found);
      })
      // The play was changed while it was asked about: it is asked again.
      .catch(() => undefined);
    return () => {
      isWanted = false;
    };
  }, [answers, wanted, scheme, shooter, of]);
  return heat;
}
