import type { ReactNode } from 'react';
import { mirrorPlaceName, sets } from '../../engine/index.ts';
import { addDutyRow, allSpots, mirrorDutyRow, removeDutyRow, type SchemeEntry } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { creaseMark } from './duty-typing.ts';
import styles from './row-tools.module.css';
import { useApply } from './use-apply.ts';

export interface RowToolsProps {
  readonly scheme: SchemeEntry;
  /** The row that is chosen. */
  readonly ball: string | undefined;
  readonly onRow: (ball: string) => void;
}

/** What can be done with the rows of a grid: one more, the mirror image of the chosen one, out with it. */
export function RowTools({ scheme, ball, onRow }: RowToolsProps): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const { id, rows } = scheme;
  const taken = new Set(rows.map((row) => row.ball));
  const free = [...allSpots(playbook), creaseMark].filter((spot) => !taken.has(spot));
  const twin = ball === undefined ? undefined : mirrorPlaceName(ball);
  const hasTwin = twin !== undefined && twin !== ball && allSpots(playbook).has(twin);
  return (
    <div className={styles.tools}>
      {ball !== undefined && hasTwin && (
        <Button
          onClick={() => {
            if (apply(`mirror the row at ${ball}`, (book) => mirrorDutyRow(book, id, ball)) !== undefined) onRow(twin);
          }}
        >
          Mirror {ball} to {twin}
        </Button>
      )}
      {ball !== undefined && rows.length > 1 && (
        <Button onClick={() => apply(`take out the row at ${ball}`, (book) => removeDutyRow(book, id, ball))}>
          Take out the row at {ball}
        </Button>
      )}
      {free.length > 0 && (
        <PickList
          label="Add a row for the ball at"
          quietLabel
          value=""
          options={[
            { value: '', text: 'Add a row for the ball at …' },
            ...free.map((spot) => ({
              value: spot,
              text: spot === creaseMark ? 'the crease' : `${spot}${setsWith(spot)}`,
            })),
          ]}
          onChange={(spot) => {
            if (spot !== '' && apply(`add a row at ${spot}`, (book) => addDutyRow(book, id, spot)) !== undefined)
              onRow(spot);
          }}
        />
      )}
    </div>
  );
}

/** The first sets that have a spot, so that a coach knows which TR is meant. */
function setsWith(spot: string): string {
  const names = Object.values(sets)
    .filter((set) => set.spots.some(({ id }) => id === spot))
    .map(({ name }) => name);
  return names.length === 0 ? '' : ` (${names.slice(0, 3).join(', ')}${names.length > 3 ? ' …' : ''})`;
}
