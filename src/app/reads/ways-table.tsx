import type { ReactNode } from 'react';
import type { Interval, ValuedDecisions } from '../../engine/index.ts';
import { cardName, wayNames } from '../../render/index.ts';
import type { ReadsStudy } from '../../worker/index.ts';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { differenceText, goalsText, sureness } from '../schemes/goal-words.ts';

/** What every way to decide is worth, and what it gains over leaving it to the play. */
export function WaysTable({ study, reads }: { readonly study: ReadsStudy; readonly reads: number }): ReactNode {
  const { goOn, taught, byEye, cards, cardPlayed, best } = study;
  return (
    <section className={panel.panel} aria-label="What each way to decide is worth">
      <h2 className={panel.title}>What each way to decide is worth</h2>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">How he decides</th>
            <th scope="col">Goals from there</th>
            <th scope="col">More than the play</th>
          </tr>
        </thead>
        <tbody>
          <Way name={wayNames.goOn} goals={goOn} />
          {taught !== null && <Way name={wayNames.taught} {...taught} />}
          <Way name={wayNames.byEye} {...byEye} />
          {cards.map(({ list, goals, gain }, at) => (
            // Which card it is, is all that tells one from another.
            <Way
              key={cardName(at, list.rules.length)}
              name={cardName(at, list.rules.length)}
              goals={goals}
              gain={gain}
              isShown={at === reads}
            />
          ))}
          <Way name={wayNames.cardPlayed} {...cardPlayed} />
          <Way name={wayNames.best} {...best} />
        </tbody>
      </table>
    </section>
  );
}

function Way({
  name,
  goals,
  gain,
  isShown = false,
}: {
  readonly name: string;
  readonly goals: Interval;
  readonly gain?: ValuedDecisions['gain'];
  readonly isShown?: boolean;
}): ReactNode {
  return (
    <tr data-shown={isShown}>
      <th scope="row">
        {name}
        {isShown && <span className={table.mark}> (the card above)</span>}
      </th>
      <td>
        <strong>{goalsText(goals.mean)}</strong> ({sureness(goals)})
      </td>
      <td>{gain !== undefined && differenceText(gain)}</td>
    </tr>
  );
}
