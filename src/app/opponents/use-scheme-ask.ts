import { useEffect, useMemo, useRef } from 'react';
import type { Playbook, SchemeEntry } from '../../playbook/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { useAnswers } from '../answers/use-answers.ts';
import { useDesk } from '../shell/desk.tsx';
import type { SchemeReading } from './use-scheme-reading.ts';

/** The same trials as on the Play screen: differences are the scheme's own. */
const seed = 20_260;

/** Keeps the chosen play running against the scheme as it stands; each change of the grid is compared with the grid before it. */
export function useSchemeAsk({ alone, entry, isWhole }: SchemeReading): SchemeAnswer | undefined {
  const { answers } = useDesk();
  const snapshot = useAnswers();
  const [scheme] = alone.schemes ?? [];
  const id = scheme?.id ?? '';
  // Names and notes change no answer: the text stands for what does.
  const { notes: _, ...rest } = scheme ?? { id: '' };
  const text = JSON.stringify({ ...rest, name: id });
  const { format, version, team, sets, settings } = alone;
  const asked = useMemo(
    (): Playbook => ({
      format,
      version,
      team,
      ...(sets && { sets }),
      plays: entry === undefined ? [] : [entry],
      schemes: [JSON.parse(text) as SchemeEntry],
      ...(settings && { settings }),
    }),
    [format, version, team, sets, settings, entry, text],
  );
  const last = useRef<{ readonly stage: string; readonly asked: Playbook }>(undefined);
  useEffect(() => {
    if (entry === undefined || !isWhole) return;
    const stage = JSON.stringify([entry.id, id]);
    if (last.current?.stage !== stage) answers.dropBaseline();
    else if (last.current.asked !== asked) answers.keepBaseline();
    last.current = { stage, asked };
    answers.ask({
      playbook: asked,
      play: entry.id,
      schemes: [id],
      side: 'right',
      penalty: null,
      level: null,
      seed,
    });
  }, [answers, asked, entry, isWhole, id]);
  // Nobody looks any more: nothing is left to be counted.
  useEffect(
    () => () => {
      const { ask } = answers.snapshot();
      if (ask !== null && ask.playbook === last.current?.asked) answers.ask({ ...ask, schemes: [] });
    },
    [answers],
  );
  return snapshot.ask?.play === entry?.id ? snapshot.schemes.find((one) => one.scheme === id) : undefined;
}
