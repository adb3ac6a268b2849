import { useEffect, useMemo, useState } from 'react';
import type { ScriptTrace, Trace } from '../../engine/index.ts';
import { firstBeatAt, traceNames } from '../../render/index.ts';
import type { Cast } from '../../worker/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import type { WatchedTrial } from '../play/screen-state.ts';
import { useDesk } from '../shell/desk.tsx';
import { lanesOf, openAt } from './script-moment.ts';
import type { ShownTrial } from './watch-field.tsx';

/** The trial on the large field: the one that was asked for once it is there, else the one that was chosen for the scheme. */
export function useShownTrial(
  answer: SchemeAnswer | undefined,
  wanted: WatchedTrial | undefined,
): ShownTrial | undefined {
  const { answers } = useDesk();
  const [fetched, setFetched] = useState<{ readonly key: string; readonly shown: ShownTrial }>();
  const scheme = answer?.scheme;
  const key = wanted === undefined ? '' : JSON.stringify([scheme, wanted]);
  useEffect(() => {
    if (scheme === undefined || wanted === undefined) return undefined;
    let isWanted = true;
    fetchTrial(answers, scheme, wanted)
      .then((shown) => {
        if (isWanted && shown !== undefined) setFetched({ key, shown });
      })
      // A play that was changed meanwhile has no such trial any more: the chosen one is shown.
      .catch(() => undefined);
    return () => {
      isWanted = false;
    };
  }, [answers, scheme, wanted, key]);
  const chosen = useMemo(
    () => (answer?.cast == null || answer.script === null ? undefined : shownScript(answer.cast, answer.script)),
    [answer?.cast, answer?.script],
  );
  return wanted !== undefined && fetched?.key === key ? fetched.shown : chosen;
}

async function fetchTrial(
  answers: ReturnType<typeof useDesk>['answers'],
  scheme: string,
  wanted: WatchedTrial,
): Promise<ShownTrial | undefined> {
  if (wanted.of === 'chance') {
    const { cast, trace } = await answers.showChance(scheme, wanted.trial);
    return shownChance(cast, trace);
  }
  const { cast, script } = await answers.showScript(scheme, wanted.trial);
  return script === null ? undefined : shownScript(cast, script);
}

function shownScript(cast: Cast, script: ScriptTrace): ShownTrial {
  return {
    ...namesAndReach(cast),
    trace: script.trace,
    began: script.began,
    lanesAt: (time) => lanesOf(script, time),
    openAt: (time) => openAt(script, time),
  };
}

// In a whole chance nothing is weighed for the screen: the men decide, and what they saw is in the events.
function shownChance(cast: Cast, trace: Trace): ShownTrial {
  return {
    ...namesAndReach(cast),
    trace,
    began: firstBeatAt(trace) ?? 0,
    lanesAt: () => [],
    openAt: () => [],
  };
}

function namesAndReach(cast: Cast): Pick<ShownTrial, 'names' | 'reach'> {
  return { names: traceNames(cast), reach: cast.defenders.map(({ stickReach }) => stickReach) };
}
