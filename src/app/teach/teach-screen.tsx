import { type ComponentType, lazy, type ReactNode, Suspense, useMemo } from 'react';
import { PickList } from '../controls/pick-list.tsx';
import { EmptyPlays } from '../play/empty-plays.tsx';
import { readPlayOf } from '../play/play-reading.ts';
import { useShownPlay } from '../play/use-shown-play.ts';
import { NotWhole } from '../reads/find-panel.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf, goTo, type TeachPart } from '../shell/place.ts';
import type { TeachPanelProps } from './teach-panel.ts';
import styles from './teach-screen.module.css';

interface PartOfPlace {
  readonly part: TeachPart;
  readonly text: string;
  readonly Panel: ComponentType<TeachPanelProps>;
}

// Each part is loaded when somebody goes there: none of them needs what makes the others' files.
const parts: readonly PartOfPlace[] = [
  { part: 'sheets', text: 'Sheets', Panel: lazy(() => import('./sheets-panel.tsx')) },
  { part: 'clip', text: 'Clip', Panel: lazy(() => import('./clip-panel.tsx')) },
  { part: 'quiz', text: 'Quiz', Panel: lazy(() => import('./quiz-panel.tsx')) },
  { part: 'practice', text: 'Practice', Panel: lazy(() => import('./practice-panel.tsx')) },
];

/** The place of what players learn from: pages, clips, quizzes, and what is run in practice. */
export default function TeachScreen({
  part,
  playId,
}: {
  readonly part: TeachPart;
  readonly playId: string | undefined;
}): ReactNode {
  const playbook = usePlaybook();
  const shown = useShownPlay(playId);
  const play = playbook.plays.find(({ id }) => id === shown);
  const isWhole = useMemo(() => play !== undefined && readPlayOf(playbook, play).isWhole, [playbook, play]);
  const { Panel } = parts.find((one) => one.part === part) ?? parts[0]!;
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <h1 className={styles.title}>Teach</h1>
        <p className={styles.quiet}>What players learn from: on paper, on a phone, and in practice.</p>
      </div>
      {play === undefined ? (
        <EmptyPlays />
      ) : (
        <>
          <div className={styles.choices}>
            <PickList
              label="Play"
              value={play.id}
              options={playbook.plays
                .filter(({ archived, id }) => archived !== true || id === play.id)
                .map(({ id, name }) => ({ value: id, text: name }))}
              onChange={(id) => goTo({ kind: 'teach', part, play: id })}
            />
            <Parts current={part} play={play.id} />
          </div>
          {isWhole ? (
            <Suspense fallback={<p className={styles.quiet}>One moment.</p>}>
              <Panel playbook={playbook} play={play} />
            </Suspense>
          ) : (
            <NotWhole play={play} />
          )}
        </>
      )}
    </div>
  );
}

function Parts({ current, play }: { readonly current: TeachPart; readonly play: string }): ReactNode {
  return (
    <nav className={styles.parts} aria-label="What is taught with">
      {parts.map(({ part, text }) => (
        <a
          key={part}
          className={styles.part}
          href={addressOf({ kind: 'teach', part, play })}
          aria-current={part === current ? 'page' : undefined}
        >
          {text}
        </a>
      ))}
    </nav>
  );
}
