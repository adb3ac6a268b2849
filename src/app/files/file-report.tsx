import { type ReactNode, useEffect, useRef } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { hasNumbersForNames } from './names-back.ts';
import { ChooseFile } from './open-section.tsx';
import type { OpenedFile } from './opened-file.ts';
import styles from './playbook-screen.module.css';
import { ProblemList } from './problem-list.tsx';
import { countText } from './version-words.ts';

type Openable = OpenedFile & { readonly playbook: Playbook };

/** What a chosen file is, what is wrong with it, and what can be done with it. Nothing was changed yet. */
export function FileReport({
  file,
  onReplace,
  onMerge,
  onFile,
  onLeave,
}: {
  readonly file: OpenedFile;
  readonly onReplace: (file: Openable) => void;
  readonly onMerge: (file: Openable) => void;
  readonly onFile: (file: File) => void;
  readonly onLeave: () => void;
}): ReactNode {
  const heading = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another file is another report, which is read from its head
  useEffect(() => heading.current?.focus(), [file]);
  return (
    <section className={styles.report} aria-labelledby="report-title">
      <h2 id="report-title" ref={heading} tabIndex={-1}>
        “{file.name}” {headOf(file)}
      </h2>
      {file.kind === 'broken' ? (
        <p>Nothing in your playbook was changed. Put right what is listed, and open it again.</p>
      ) : (
        <Ways file={file} onReplace={onReplace} onMerge={onMerge} />
      )}
      <Problems file={file} />
      <div className={styles.buttons}>
        {file.kind === 'broken' && <ChooseFile text="Open another file…" tone="main" onFile={onFile} />}
        <Button onClick={onLeave}>{file.kind === 'broken' ? 'Back' : 'Leave it, change nothing'}</Button>
      </div>
    </section>
  );
}

function Ways({
  file,
  onReplace,
  onMerge,
}: {
  readonly file: Openable;
  readonly onReplace: (file: Openable) => void;
  readonly onMerge: (file: Openable) => void;
}): ReactNode {
  const mine = usePlaybook();
  const { team, plays, opponents } = file.playbook;
  const losesNames = hasNumbersForNames(file.playbook) && !hasNumbersForNames(mine);
  return (
    <>
      <p>
        {team.name || 'A team without a name'}: {countText(plays.length, 'play')},{' '}
        {countText(team.roster.length, 'player')}, {countText(opponents?.length ?? 0, 'opponent')}.
        {file.kind === 'unfinished' &&
          ' It can be opened as it is; what is wrong is listed below, and shown again where it is written.'}
      </p>
      <div className={styles.way}>
        <Button onClick={() => onMerge(file)}>Merge it with mine</Button>
        <p>For a copy that somebody changed. You see what comes in, and decide where you both changed something.</p>
      </div>
      <div className={styles.way}>
        <Button onClick={() => onReplace(file)}>Open it in place of mine</Button>
        <p>
          What is here now is kept as a version, and Undo brings it back.
          {losesNames && ' This file has numbers in place of names: the names would be gone from the page.'}
        </p>
      </div>
    </>
  );
}

/** What must be put right is in sight; what is only doubtful or good to know is folded away. */
function Problems({ file: { problems, moreMayShow } }: { readonly file: OpenedFile }): ReactNode {
  const wrong = problems.filter(({ severity }) => severity === 'error');
  const others = problems.filter(({ severity }) => severity !== 'error');
  return (
    <>
      {wrong.length > 0 && <ProblemList problems={wrong} moreMayShow={moreMayShow} />}
      {others.length > 0 && (
        <details>
          <summary className={styles.fold}>{countText(others.length, 'remark')} on the file, not in the way</summary>
          <ProblemList problems={others} moreMayShow={false} />
        </details>
      )}
    </>
  );
}

function headOf(file: OpenedFile): string {
  switch (file.kind) {
    case 'broken':
      return 'cannot be opened';
    case 'unfinished':
      return 'is not finished';
    case 'good':
      return 'can be opened';
    default:
      return exhaustive(file);
  }
}

function exhaustive(file: never): never {
  throw new TypeError(`unknown kind of file: ${JSON.stringify(file)}`);
}
