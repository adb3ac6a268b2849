import { type ReactNode, useCallback, useEffect, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import type { VersionInfo } from '../document/storage.ts';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { ChangeList } from './part-details.tsx';
import { playbookChanges } from './playbook-changes.ts';
import styles from './playbook-screen.module.css';
import type { Said } from './said.ts';
import list from './version-section.module.css';
import { countText, reasonWords, whenText } from './version-words.ts';

/** What the playbook was before: to look at, and to bring back. */
export function VersionSection({ onDone }: { readonly onDone: (said: Said) => void }): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const [versions, setVersions] = useState<readonly VersionInfo[]>();
  const look = useCallback(async () => setVersions(await store.versions()), [store]);
  // A version is kept as the playbook changes, and a moment after it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the playbook may bring a version
  useEffect(() => {
    void look();
    const later = setTimeout(look, 1000);
    return () => clearTimeout(later);
  }, [look, playbook]);
  const bringBack = async (version: VersionInfo): Promise<void> => {
    const came = await store.restore(version.id);
    onDone(
      came
        ? { text: `The version of ${whenText(version.at)} is back.`, step: 'Bring back an earlier version' }
        : { text: 'That version is no longer there, so nothing was changed.' },
    );
    await look();
  };
  return (
    <section className={styles.section} aria-labelledby="versions-title">
      <h2 id="versions-title">Earlier versions</h2>
      <p className={styles.quiet}>
        One is kept when you open the page, every ten minutes of work, and before anything takes the place of your
        playbook; the last ten stay.
      </p>
      {versions?.length === 0 && <p>None is kept: this browser does not let the page save.</p>}
      <ul className={list.versions}>
        {versions?.map((version) => (
          <li key={version.id} className={list.version}>
            <VersionRow version={version} now={playbook} onBringBack={() => bringBack(version)} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function VersionRow({
  version,
  now,
  onBringBack,
}: {
  readonly version: VersionInfo;
  readonly now: Playbook;
  readonly onBringBack: () => void;
}): ReactNode {
  const { store } = useDesk();
  const [isOpen, setOpen] = useState(false);
  const [then, setThen] = useState<Playbook | 'gone'>();
  const open = async (): Promise<void> => {
    setOpen(!isOpen);
    if (!isOpen) setThen((await store.version(version.id)) ?? 'gone');
  };
  const when = whenText(version.at);
  return (
    <>
      <div className={list.row}>
        <p>
          <time className={list.time} dateTime={new Date(version.at).toISOString()}>
            {when}
          </time>{' '}
          <span>{reasonWords[version.reason]}</span>
          <br />
          <span className={styles.quiet}>
            {version.team || 'Team without a name'}, {countText(version.plays, 'play')}
          </span>
        </p>
        <div className={styles.buttons}>
          <Button aria-expanded={isOpen} aria-label={`What changed since ${when}`} onClick={open}>
            What changed
          </Button>
          <Button aria-label={`Bring back the version of ${when}`} onClick={onBringBack}>
            Bring back
          </Button>
        </div>
      </div>
      {isOpen && then !== undefined && <Since then={then} now={now} />}
    </>
  );
}

function Since({ then, now }: { readonly then: Playbook | 'gone'; readonly now: Playbook }): ReactNode {
  if (then === 'gone') return <p>This version can no longer be read.</p>;
  const changes = playbookChanges(then, now);
  if (changes.parts.length === 0 && !changes.isReordered) return <p>Nothing: your playbook says the same.</p>;
  return (
    <ChangeList
      changes={changes}
      sides={{ before: { name: 'Then', playbook: then }, after: { name: 'Now', playbook: now } }}
    />
  );
}
