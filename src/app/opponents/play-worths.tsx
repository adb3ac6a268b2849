import { type ReactNode, useState } from 'react';
import type { Opponent } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import table from '../look/table.module.css';
import { goalsText, sureness } from '../schemes/goal-words.ts';
import { IntervalBar } from '../schemes/interval-bar.tsx';
import { addressOf } from '../shell/place.ts';
import panel from './panel.module.css';
import styles from './play-worths.module.css';
import { usePlayWorths } from './use-play-worths.ts';
import { bestFirst, type PlayWorth } from './worth-rounds.ts';

/** What each of our plays is worth against what they play, the best first; sharpening while it is looked at. */
export function PlayWorths({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const [wanted, setWanted] = useState(true);
  const { plays, known, current } = usePlayWorths(opponent, wanted);
  const hasMix = Object.keys(opponent.schemes ?? {}).length > 0;
  if (plays.length === 0 || !hasMix) {
    return (
      <section className={panel.panel} aria-label="What our plays are worth">
        <h3 className={panel.title}>What our plays are worth against them</h3>
        <p className={panel.quiet}>
          {plays.length === 0
            ? 'The playbook has no play yet. Write one: it is tried against them here.'
            : 'This is told as soon as there is a scheme that they play.'}
        </p>
      </section>
    );
  }
  const order = bestFirst(
    plays.map((play) => play.id),
    known,
  );
  return (
    <section className={panel.panel} aria-label="What our plays are worth">
      <div className={styles.head}>
        <h3 className={panel.title}>What our plays are worth against them</h3>
        {(current !== undefined || !wanted) && (
          <Button onClick={() => setWanted(!wanted)}>{wanted ? 'Stop' : 'Go on'}</Button>
        )}
      </div>
      <p className={panel.quiet}>{sentenceOf(order, plays, known)}</p>
      <div className={styles.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Play</th>
              <th scope="col" colSpan={2}>
                Goals a chance
              </th>
              <th scope="col" className={table.bar}>
                <span className="spoken">The interval on one scale</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {order.map((id) => (
              <tr key={id} data-play={id}>
                <th scope="row">
                  <a href={addressOf({ kind: 'play', play: id })}>{plays.find((play) => play.id === id)?.name}</a>
                </th>
                <WorthCells worth={known.get(id)} isCurrent={id === current} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.note}>
        By the shares above and as well as they play it; in brackets the interval that holds the truth 95 times in 100.
      </p>
    </section>
  );
}

function WorthCells({
  worth,
  isCurrent,
}: {
  readonly worth: PlayWorth | undefined;
  readonly isCurrent: boolean;
}): ReactNode {
  const goals = worth?.goals ?? undefined;
  if (worth === undefined || goals === undefined) {
    return (
      <td colSpan={3} className={styles.quiet}>
        {worth?.reason || (isCurrent ? 'being played' : 'waiting')}
      </td>
    );
  }
  return (
    <>
      <td className={styles.goals} data-coarse={worth.coarse}>
        {goalsText(goals.mean)}
      </td>
      <td className={styles.quiet}>
        {worth.coarse ? 'a first guess' : `(${sureness(goals)})`}
        {worth.reason !== '' && <span className={styles.reason}>{worth.reason}</span>}
      </td>
      <td className={table.bar}>
        <IntervalBar goals={goals} />
      </td>
    </>
  );
}

function sentenceOf(
  order: readonly string[],
  plays: readonly { readonly id: string; readonly name: string }[],
  known: ReadonlyMap<string, PlayWorth>,
): string {
  const [first, second] = order.filter((id) => known.get(id)?.goals != null && known.get(id)?.coarse === false);
  if (first === undefined) return 'Each play is being tried against their mix.';
  const name = (id: string): string => plays.find((play) => play.id === id)?.name ?? id;
  const goals = known.get(first)!.goals!;
  const other = second === undefined ? undefined : known.get(second)!.goals!;
  const best = `${name(first)} is worth the most so far: ${goalsText(goals.mean)} goals a chance.`;
  if (other === undefined) return best;
  return other.high < goals.low
    ? `${best} The next best, ${name(second!)}, is worth less for sure.`
    : `${best} ${name(second!)} may be as good.`;
}
