import { X } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import type { Player } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { TextField } from '../controls/text-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { readReadings, shown } from './cell-text.ts';
import styles from './player-panel.module.css';
import { readingSummary } from './reading-summary.ts';
import { type ReadingName, readingWords, unitText, withMeasured } from './roster-columns.ts';
import { useTeam } from './team-state.ts';

export interface ReadingListProps {
  readonly player: Player;
  readonly name: ReadingName;
  readonly onEdit: (what: string, change: (player: Player) => Player) => void;
}

/** Each reading of one thing as it was taken, one more to add, and what they count as together. */
export function ReadingList({ player, name, onEdit }: ReadingListProps): ReactNode {
  const playbook = usePlaybook();
  const units = useTeam((state) => state.units);
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string>();
  const words = readingWords[name];
  const unit = unitText(words.unit, units.speed);
  const values = player.measured?.[name] ?? [];
  const put = (what: string, next: readonly number[]): void =>
    onEdit(what, (man) => withMeasured(man, name, next.length === 0 ? undefined : [...next]));
  const add = (): void => {
    const read = readReadings(typed, words.unit, units.speed);
    if (read.kind === 'problem') {
      setProblem(read.text);
      return;
    }
    setProblem(undefined);
    if (read.value === undefined) return;
    put('add a reading', [...values, ...read.value].slice(-50));
    setTyped('');
  };
  return (
    <div className={styles.reading}>
      <div className={styles.readingHead}>
        <TextField
          label={`${words.name}, ${unit}`}
          value={typed}
          inputMode="decimal"
          placeholder="One more"
          onText={(text) => {
            setTyped(text);
            setProblem(undefined);
          }}
          onBlur={add}
          onKeyDown={(event) => {
            if (event.key === 'Enter') add();
          }}
          {...(problem !== undefined && { problem })}
        />
        <ul className={styles.values} aria-label={words.name}>
          {values.map((value, index) => {
            const text = shown(value, words.unit, units.speed);
            return (
              // Two readings may be the same: their place tells them apart.
              // biome-ignore lint/suspicious/noArrayIndexKey: readings have no name but their place
              <li key={index}>
                <Button
                  aria-label={`Take out ${text} ${unit}`}
                  onClick={() =>
                    put(
                      'take out a reading',
                      values.filter((_, i) => i !== index),
                    )
                  }
                >
                  {text}
                  <X aria-hidden="true" />
                </Button>
              </li>
            );
          })}
        </ul>
      </div>
      <p className={styles.summary}>{readingSummary(playbook, player, name, units)}</p>
    </div>
  );
}
