import type { ReactNode } from 'react';
import {
  type Chance,
  type ChanceSide,
  chanceResults,
  chanceResultWords,
  type Playbook,
  schemeName,
} from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { opponentName, playName } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { useIsNarrow } from '../play/use-is-narrow.ts';
import { type ChanceFilter, everything, isEverything, isOfOthers, writtenIn } from './filter-chances.ts';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** Which chances are looked at. What can be chosen is what was written. */
export function FilterBar({ playbook, shown }: { readonly playbook: Playbook; readonly shown: number }): ReactNode {
  const { filter, change } = useSeason();
  const isNarrow = useIsNarrow();
  const chances = playbook.chances ?? [];
  const others = chances.filter(isOfOthers).length;
  const set = (part: Partial<ChanceFilter>): void => change({ filter: { ...filter, ...part } });
  return (
    <details className={styles.which} open={!isNarrow || undefined}>
      <summary>
        Which chances: {shown} of {filter.side === 'others' ? others : chances.length - others}
      </summary>
      <section className={styles.filters} aria-label="Which chances">
        <PickList
          label="Whose"
          value={filter.side}
          options={[
            { value: '', text: 'ours and theirs' },
            { value: 'ours', text: 'ours' },
            { value: 'theirs', text: 'theirs' },
            ...(others > 0 || filter.side === 'others' ? [{ value: 'others', text: whoseWords.others }] : []),
          ]}
          onChange={(side) => set({ side: side as ChanceFilter['side'] })}
        />
        {kinds.map(({ kind, label, name }) => (
          <PickList
            key={kind}
            label={label}
            value={filter[kind]}
            options={[
              { value: '', text: 'all' },
              ...writtenIn(chances, kind).map((id) => ({ value: id, text: name(playbook, id) })),
            ]}
            onChange={(id) => set({ [kind]: id })}
          />
        ))}
        <PickList
          label="Ended in"
          value={filter.result}
          options={[
            { value: '', text: 'anything' },
            ...chanceResults.map((result: Chance['result']) => ({ value: result, text: chanceResultWords[result] })),
          ]}
          onChange={(result) => set({ result })}
        />
        {others > 0 && (
          <p className={styles.quiet}>
            {counted(others, 'man-up')} of other teams, from film: kept apart, and counted neither as ours nor as
            theirs.
          </p>
        )}
        {!isEverything(filter) && <Button onClick={() => change({ filter: everything })}>Show all</Button>}
      </section>
    </details>
  );
}

/** What a filter lets through, for who reads only the page: "ours; Lantern; ended in goal". The opponent stands in the title. Empty for everything. */
export function filterWords(playbook: Playbook, { side, call, scheme, result }: ChanceFilter): string {
  return [
    side && whoseWords[side],
    call && playName(playbook, call),
    scheme && `against ${schemeName(playbook, scheme)}`,
    result && `ended in ${chanceResultWords[result as Chance['result']]}`,
  ]
    .filter((part) => part !== '')
    .join('; ');
}

/** Whose a man-up was. */
const whoseWords: Readonly<Record<ChanceSide, string>> = {
  ours: 'ours',
  theirs: 'theirs',
  others: 'another team’s',
};

const kinds = [
  { kind: 'opponent', label: 'Opponent', name: opponentName },
  { kind: 'call', label: 'Call', name: playName },
  { kind: 'scheme', label: 'They played', name: schemeName },
] as const;
