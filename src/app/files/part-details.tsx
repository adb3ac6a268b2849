import { type ReactNode, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import styles from './part-details.module.css';
import { type PartChange, type PlaybookChanges, partDifferences, partTitle } from './playbook-changes.ts';

/** The two copies that are compared, and what the coach calls them. */
export interface Sides {
  readonly before: { readonly name: string; readonly playbook: Playbook };
  readonly after: { readonly name: string; readonly playbook: Playbook };
}

/** All changes from one copy to another, each with its words when it is opened. */
export function ChangeList({
  changes,
  sides,
}: {
  readonly changes: PlaybookChanges;
  readonly sides: Sides;
}): ReactNode {
  return (
    <ul className={styles.changes}>
      {changes.parts.map((change) => (
        <li key={`${change.kind} ${change.key}`}>
          <PartDetails change={change} sides={sides} />
        </li>
      ))}
      {changes.isReordered && <li className={styles.plain}>The plays stand in another order.</li>}
    </ul>
  );
}

/** One change: its name, and where the copies differ. The words are made when they are looked at. */
export function PartDetails({ change, sides }: { readonly change: PartChange; readonly sides: Sides }): ReactNode {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className={styles.details} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={styles.summary}>
        <span className={styles.name}>{partTitle(change)}</span> <span className={styles.news}>{newsOf(change)}</span>
      </summary>
      {isOpen && <Differences change={change} sides={sides} />}
    </details>
  );
}

/** Where two copies of one part differ, in words. */
export function Differences({
  change: { kind, before, after },
  sides,
}: {
  readonly change: Pick<PartChange, 'kind' | 'before' | 'after'>;
  readonly sides: Sides;
}): ReactNode {
  const differences = partDifferences(
    kind,
    { part: before, playbook: sides.before.playbook },
    { part: after, playbook: sides.after.playbook },
  );
  return (
    <ul className={styles.differences}>
      {differences.map(({ what, before: first, after: second }) => (
        <li key={what} className={styles.difference}>
          <p className={styles.what}>{what}</p>
          <Side name={sides.before.name} lines={first} />
          <Side name={sides.after.name} lines={second} />
        </li>
      ))}
    </ul>
  );
}

function Side({ name, lines }: { readonly name: string; readonly lines: readonly string[] }): ReactNode {
  return (
    <div className={styles.side}>
      <span className={styles.sideName}>{name}</span>
      <ul className={styles.lines}>
        {lines.length === 0 && <li className={styles.nothing}>nothing</li>}
        {lines.map((line, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same line may stand there twice, and none of them has a state
          <li key={`${index} ${line}`}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function newsOf({ before, after }: PartChange): string {
  if (before === undefined) return 'new';
  return after === undefined ? 'taken out' : 'changed';
}
