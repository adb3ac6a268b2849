import type { ReactNode } from 'react';
import type { ReadsStudy } from '../../worker/index.ts';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { differenceText, goalsText, sureness } from '../schemes/goal-words.ts';
import { IntervalBar } from '../schemes/interval-bar.tsx';
import { gainScale } from './gain-scale.ts';

/** Goals a chance that the bars reach to at least on both sides: a hair is not to look like a mile. */
const leastReach = 0.1;

/** What the card that is shown gains against each scheme. */
export function SchemeGains({
  study,
  reads,
  names,
}: {
  readonly study: ReadsStudy;
  readonly reads: number;
  readonly names: Readonly<Record<string, string>>;
}): ReactNode {
  const rows = study.byScheme.map(({ scheme, goOn, gain_byCard }) => ({ scheme, goOn, gain: gain_byCard[reads]! }));
  const scale = gainScale(
    rows.map(({ gain }) => gain),
    leastReach,
  );
  return (
    <section className={panel.panel} aria-label="What the card gains against each scheme">
      <h2 className={panel.title}>What the card gains against each scheme</h2>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Against</th>
            <th scope="col">The play</th>
            <th scope="col">Gain by the card</th>
            <th scope="col" className={table.bar}>
              <span className="spoken">The gain on one scale</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ scheme, goOn, gain }) => (
            <tr key={scheme}>
              <th scope="row">{names[scheme] ?? scheme}</th>
              <td>
                <strong>{goalsText(goOn.mean)}</strong> ({sureness(goOn)})
              </td>
              <td>{differenceText(gain)}</td>
              <td className={table.bar}>
                <IntervalBar goals={gain} scale={scale} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
