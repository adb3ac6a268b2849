import { type ReactNode, useState } from 'react';
import { comparePair, groupingWords, groupsToCompare, type SideReport } from '../../teach/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import styles from './season.module.css';

/** Two groups that the coach chooses, beside each other: what can be concluded, and what cannot. */
export function PairPanel({ report }: { readonly report: SideReport }): ReactNode {
  const groups = groupsToCompare(report);
  const [chosen, setChosen] = useState<readonly [string, string]>(['', '']);
  if (groups.length < 2) return null;
  // What was chosen may be gone since: the two that have most are shown.
  const of = (at: 0 | 1): string => groups.find(({ key }) => key === chosen[at])?.key ?? groups[at]!.key;
  const [one, other] = [of(0), of(1)];
  const options = groups.map(({ key, name }) => ({ value: key, text: name }));
  const pair = comparePair(report, one, other);
  const what = groupingWords[report.by].toLowerCase();
  const whose = report.side === 'ours' ? 'our' : 'their';
  return (
    <section aria-label={`Two of ${whose} chances by ${what}, compared`} className={styles.pair}>
      <div className={styles.bar}>
        <PickList label="Compare" value={one} options={options} onChange={(key) => setChosen([key, other])} />
        <PickList label="with" value={other} options={options} onChange={(key) => setChosen([one, key])} />
      </div>
      <p role="status">{pair === undefined ? `Choose two that differ.` : pair.says}</p>
    </section>
  );
}
