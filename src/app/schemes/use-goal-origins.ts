import { useEffect, useState } from 'react';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import type { GoalOrigins } from '../answers/goal-origins.ts';
import { useAnswers } from '../answers/use-answers.ts';
import { useDesk } from '../shell/desk.tsx';

/** Where the goals against a scheme come from; undefined until the play itself is known and the chances have been followed. */
export function useGoalOrigins({ scheme, state }: SchemeAnswer): GoalOrigins | undefined {
  const { answers } = useDesk();
  const { ask } = useAnswers();
  const [found, setFound] = useState<{
    readonly of: unknown;
    readonly scheme: string;
    readonly origins: GoalOrigins;
  }>();
  const isKnown = state === 'done' || state === 'sharpening';
  useEffect(() => {
    if (!isKnown) return undefined;
    let isWanted = true;
    answers
      .goalOrigins(scheme)
      .then((origins) => {
        if (isWanted) setFound({ of: ask, scheme, origins });
      })
      // The play was changed while its chances were followed: it is asked again.
      .catch(() => undefined);
    return () => {
      isWanted = false;
    };
  }, [answers, scheme, ask, isKnown]);
  return found !== undefined && found.of === ask && found.scheme === scheme ? found.origins : undefined;
}
