import { ChevronDown, ChevronUp, X } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Spot } from '../../engine/index.ts';
import { type Playbook, setDepth } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { useDesk } from '../shell/desk.tsx';
import styles from './line-up.module.css';
import { fieldMen, manText } from './line-up-words.ts';
import { orderWith } from './roster-edits.ts';

export interface DepthSpotsProps {
  readonly playbook: Playbook;
  readonly spots: readonly Spot[];
  /** Those of the play turned over: a set that is not the same on both sides has others there. */
  readonly mirrored: readonly Spot[];
}

/** The coach's own order for each spot: the first who is here stands there, and the others are fitted round him. */
export function DepthSpots({ playbook, spots, mirrored }: DepthSpotsProps): ReactNode {
  const names = [...new Set([...spots, ...mirrored].map(({ id }) => id))];
  if (names.length === 0) return null;
  return (
    <section className={styles.depth} aria-label="Order at each spot">
      <header>
        <h2>Your order at each spot</h2>
        <p className={styles.quiet}>
          The first of the list who is here stands there, whatever the points say, in every play that has a spot of this
          name. An empty list leaves the spot to the best six.
        </p>
      </header>
      <ul className={styles.spots}>
        {names.map((spot) => (
          <DepthSpot key={spot} playbook={playbook} spot={spot} />
        ))}
      </ul>
    </section>
  );
}

function DepthSpot({ playbook, spot }: { readonly playbook: Playbook; readonly spot: string }): ReactNode {
  const { store } = useDesk();
  const { roster, depth } = playbook.team;
  const order = depth?.[spot] ?? [];
  const free = fieldMen(roster).filter(({ number }) => !order.includes(number));
  const put = (what: string, number: number, to: number | undefined): void => {
    // Who has left the roster meanwhile is no longer in the order.
    const next = orderWith(order, number, to).filter((each) =>
      fieldMen(roster).some((player) => player.number === each),
    );
    store.edit(`${what} ${manText(number, roster)} at ${spot}`, (current) => {
      const edit = setDepth(current, spot, next);
      return edit.kind === 'refused' ? current : edit.playbook;
    });
  };
  return (
    <li className={styles.depthSpot}>
      <h3>{spot}</h3>
      <ol>
        {order.map((number, i) => {
          const name = manText(number, roster);
          const player = roster.find((each) => each.number === number);
          return (
            <li key={number} className={styles.depthMan}>
              <span className={styles.depthName} data-absent={player?.absent === true}>
                {i + 1}. {number} {name}
                {player === undefined && <span className={styles.loss}> is not on the roster</span>}
                {player?.absent === true && <span className="spoken"> is absent today</span>}
              </span>
              <Button
                tone="plain"
                aria-label={`${name} one up at ${spot}`}
                disabled={i === 0}
                icon={<ChevronUp aria-hidden="true" />}
                onClick={() => put('move up', number, i - 1)}
              />
              <Button
                tone="plain"
                aria-label={`${name} one down at ${spot}`}
                disabled={i === order.length - 1}
                icon={<ChevronDown aria-hidden="true" />}
                onClick={() => put('move down', number, i + 1)}
              />
              <Button
                tone="plain"
                aria-label={`Take ${name} out at ${spot}`}
                icon={<X aria-hidden="true" />}
                onClick={() => put('take out', number, undefined)}
              />
            </li>
          );
        })}
      </ol>
      <PickList
        label={`Add a man at ${spot}`}
        quietLabel
        value=""
        options={[
          { value: '', text: order.length === 0 ? 'The best six decide' : 'Add a man' },
          ...free.map(({ number }) => ({ value: String(number), text: `${number} ${manText(number, roster)}` })),
        ]}
        onChange={(value) => put('put', Number(value), order.length)}
      />
    </li>
  );
}
