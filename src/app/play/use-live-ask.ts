import { useEffect, useMemo, useRef } from 'react';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { useDesk } from '../shell/desk.tsx';
import type { PlayEditor } from './use-play-editor.ts';

export interface LiveAsk {
  readonly editor: PlayEditor;
  readonly playbook: Playbook;
  /** The play as it would be if the pointer were let go now, seen from the chosen side; undefined when nothing is held. */
  readonly pending: PlayEntry | undefined;
  readonly schemes: readonly string[];
  readonly side: 'left' | 'right';
}

/** The same trials for every play, scheme and edit: so they share their luck, and differences are the plays' own. */
const seed = 20_260;

/**
 * Keeps the simulation at work on what stands on the screen. Each edit is compared with the play before it; a drag is one edit from the
 * first moment to the last.
 */
export function useLiveAsk({ editor, playbook, pending, schemes, side }: LiveAsk): void {
  const { answers } = useDesk();
  const last = useRef<{
    readonly asked: PlayEntry;
    /** The play as it stood when nothing was held. */
    readonly settled: PlayEntry;
    readonly stage: string;
    readonly isPending: boolean;
  }>(undefined);
  const { written, standing, reading } = editor;
  // Turned back once for each change and not for each picture: another object would be another question, and its answer another picture.
  const asked = useMemo(
    () => (pending === undefined ? written : editor.asWritten(pending)),
    [written, editor, pending],
  );
  const isWhole = useMemo(
    () => (pending === undefined ? reading.isWhole : editor.read(pending).isWhole),
    [reading, editor, pending],
  );
  const isPending = pending !== undefined;
  const { opponents } = playbook;
  useEffect(() => {
    if (asked === undefined) return;
    const stage = JSON.stringify([asked.id, side, schemes]);
    const before = last.current;
    // What cannot be played keeps the answers that it had, but not those of another play.
    if (!isWhole && before?.stage === stage) return;
    if (before?.stage !== stage) answers.dropBaseline();
    else if (before.asked !== asked && !before.isPending) answers.keepBaseline();
    // A drag that was given up or refused changed nothing: the difference that was there before it stays.
    else if (before.isPending && !isPending && before.settled === asked) answers.takeBackBaseline();
    last.current = isWhole
      ? { asked, settled: isPending ? (before?.settled ?? asked) : asked, stage, isPending }
      : undefined;
    answers.ask({
      playbook: { ...standing, ...(opponents && { opponents }), plays: [asked] },
      play: asked.id,
      schemes: isWhole ? schemes : [],
      side,
      penalty: null,
      level: null,
      seed,
      setAlone: true,
    });
  }, [answers, standing, opponents, asked, isPending, isWhole, schemes, side]);
}
