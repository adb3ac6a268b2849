import type { ReactNode } from 'react';
import type { FileProblem } from './opened-file.ts';
import styles from './problem-list.module.css';

const severityWords: Readonly<Record<FileProblem['severity'], string>> = {
  error: 'Wrong',
  warning: 'Doubtful',
  note: 'Good to know',
};

/** What was found in a file, in the order of its text. */
export function ProblemList({
  problems,
  moreMayShow,
}: {
  readonly problems: readonly FileProblem[];
  readonly moreMayShow: boolean;
}): ReactNode {
  return (
    <>
      <ol className={styles.problems}>
        {problems.map((problem, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is made once for a file, and two problems may read alike
          <li key={index} className={styles[problem.severity]}>
            <span className={styles.place}>{placeOf(problem)}</span>
            <p>{problem.message}</p>
            {problem.paste !== undefined && <pre className={styles.paste}>{problem.paste}</pre>}
          </li>
        ))}
      </ol>
      {moreMayShow && <p>There may be more, which shows when these are put right.</p>}
    </>
  );
}

function placeOf({ severity, where, line, column }: FileProblem): string {
  const place = line === undefined ? 'the whole file' : `line ${line}, column ${column}`;
  return `${severityWords[severity]}, ${place}${where === '' ? '' : ` (${where})`}`;
}
