import { ChevronDown, Ellipsis } from 'lucide-react';
import { lazy, type ReactNode, Suspense, useState } from 'react';
import {
  archivePlay,
  copyMirrored,
  copyPlay,
  deletePlay,
  editPlay,
  keepAsSet,
  mirrorEntry,
  type Playbook,
  type PlaybookEdit,
} from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { goTo } from '../shell/place.ts';
import styles from './play-head.module.css';
import { useScreen } from './screen-state.ts';
import { setName } from './set-name.ts';
import type { PlayEditor } from './use-play-editor.ts';

// Loaded when they are opened: the play must be on the screen first.
const PlayList = lazy(() => import('./play-list.tsx'));
const NewPlay = lazy(() => import('./new-play.tsx'));
const PlayNames = lazy(() => import('./play-names.tsx'));

/** Which play it is, what can be done with the whole of it, and from which side it is run. */
export function PlayHead({ editor }: { readonly editor: PlayEditor | undefined }): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const { side, mode, change } = useScreen();
  const [opened, setOpened] = useState<'list' | 'new' | 'names'>();
  const entry = editor?.entry;
  const id = entry?.id ?? '';
  const name = entry?.name ?? '';
  const close = (): void => setOpened(undefined);
  const apply = (label: string, edit: (playbook: Playbook) => PlaybookEdit, follow = true): void => {
    const done = edit(playbook);
    if (done.kind === 'refused') {
      change({ notice: { text: done.reason, tone: 'refused' } });
      return;
    }
    store.edit(label, () => done.playbook);
    change({ notice: done.also.length > 0 ? { text: done.also.join(' '), tone: 'said' } : undefined });
    if (follow && done.id !== undefined) goTo({ kind: 'play', play: done.id });
  };
  return (
    <header className={styles.head}>
      <h1 className={styles.title}>
        <button type="button" className={styles.chooser} onClick={() => setOpened('list')} aria-haspopup="dialog">
          {name === '' ? 'Plays' : name}
          <ChevronDown aria-hidden="true" />
        </button>
      </h1>
      {entry !== undefined && (
        <>
          <span className={styles.about}>{setName(entry.set, playbook.sets)}</span>
          <Segments
            label="Run from"
            value={side}
            options={[
              { value: 'left', text: 'Left' },
              { value: 'right', text: 'Right' },
            ]}
            onChange={(next) => change({ side: next, notice: undefined })}
          />
          <Segments
            label="The large field shows"
            value={mode}
            options={[
              { value: 'write', text: 'Write' },
              { value: 'watch', text: 'Watch' },
            ]}
            onChange={(next) => change({ mode: next })}
          />
          <Menu
            trigger={<Button tone="plain" aria-label="More for this play" icon={<Ellipsis aria-hidden="true" />} />}
            items={[
              { text: 'New play', onChoose: () => setOpened('new') },
              { text: 'Name, tags and notes', onChoose: () => setOpened('names') },
              { text: 'Copy', onChoose: () => apply(`copy ${name}`, (book) => copyPlay(book, id)), apart: true },
              {
                text: 'Copy for the other side',
                onChoose: () => apply(`copy ${name} for the other side`, (book) => copyMirrored(book, id)),
              },
              {
                text: 'Mirror it',
                onChoose: () => apply(`mirror ${name}`, (book) => editPlay(book, id, mirrorEntry)),
              },
              {
                text: 'Keep where they stand as a set',
                onChoose: () => apply(`keep the set of ${name}`, (book) => keepAsSet(book, id, name), false),
              },
              {
                text: entry.archived === true ? 'Take out of the archive' : 'Archive',
                apart: true,
                onChoose: () =>
                  apply(entry.archived === true ? `take ${name} out of the archive` : `archive ${name}`, (book) =>
                    archivePlay(book, id, entry.archived !== true),
                  ),
              },
              {
                text: 'Delete',
                tone: 'risky',
                onChoose: () => {
                  apply(`delete ${name}`, (book) => deletePlay(book, id));
                  goTo({ kind: 'play', play: undefined });
                  change({ step: 0, notice: { text: `${name} is deleted. Undo brings it back.`, tone: 'said' } });
                },
              },
            ]}
          />
        </>
      )}
      {entry === undefined && (
        <Button tone="main" onClick={() => setOpened('new')}>
          New play
        </Button>
      )}
      <Suspense fallback={null}>
        {opened === 'list' && <PlayList current={id} onClose={close} onNew={() => setOpened('new')} />}
        {opened === 'new' && <NewPlay onClose={close} />}
        {opened === 'names' && entry !== undefined && <PlayNames onClose={close} entry={entry} />}
      </Suspense>
    </header>
  );
}
