import { type ReactNode, useCallback, useMemo } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import {
  binMeanText,
  brierSentence,
  type ChanceGrouping,
  chanceGroupings,
  clearsSentence,
  countingSentence,
  firstShotText,
  forecastSentence,
  type GroupNumbers,
  groupingWords,
  type PlanAndResult,
  planBinText,
  type SideReport,
  seasonReport,
  shareText,
  shotsText,
} from '../../teach/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { drawGroups, drawPlan } from './draw-charts.ts';
import { PairPanel } from './pair-panel.tsx';
import { PlotFigure, type PlotFigureProps } from './plot-figure.tsx';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** What the chances say: ours and theirs by what they have in common, and what the simulation said beside what came. */
export function SeasonTables({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const { by, change } = useSeason();
  const report = useMemo(() => seasonReport(playbook, { by }), [playbook, by]);
  return (
    <>
      <div className={styles.bar}>
        <PickList
          label="Put together by"
          value={by}
          options={chanceGroupings.map((one) => ({ value: one, text: groupingWords[one].toLowerCase() }))}
          onChange={(one) => change({ by: one as ChanceGrouping })}
        />
      </div>
      <div className={styles.halves}>
        <Side title="Our chances" report={report.ours} />
        <Side title="Their chances" report={report.theirs} />
      </div>
      <Plan plan={report.plan} says={report.planSays} />
    </>
  );
}

function Side({ title, report }: { readonly title: string; readonly report: SideReport }): ReactNode {
  const { all, manUps, says, groups, clears, looksSay, prior, told } = report;
  const draw = useCallback<PlotFigureProps['draw']>(
    (plots) => drawGroups(plots, groups, prior.mean, prior.isGuess),
    [groups, prior],
  );
  const cleared = clearsSentence(clears);
  return (
    <section className={panel.panel} aria-label={title}>
      <h2 className={panel.title}>{title}</h2>
      <p className={styles.lead}>{says}</p>
      {all.chances > 0 && (
        <>
          <div className={styles.beside}>
            <PlotFigure says={told.join(' ')} draw={draw} />
            <NumbersTable report={report} />
          </div>
          <PairPanel report={report} />
          {looksSay !== undefined && <p>{looksSay}</p>}
          {cleared !== undefined && <p>{cleared}</p>}
          <p className={panel.quiet}>
            {countingSentence(manUps)} In the chart: dot as counted, bar where the truth lies 95 times in 100, stroke
            the best guess. Best guess: drawn toward what is usual, more the fewer there are. {prior.source} First shot:
            the middle one, and between which two times half of them came; one or two say nothing of that.
          </p>
        </>
      )}
    </section>
  );
}

function NumbersTable({ report: { groups, all, by, side } }: { readonly report: SideReport }): ReactNode {
  const label = `${side === 'ours' ? 'Our' : 'Their'} chances by ${groupingWords[by].toLowerCase()}`;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <section className={styles.frame} tabIndex={0} aria-label={label}>
      <table className={`${table.table} ${table.whole}`}>
        <thead>
          <tr>
            <th scope="col">{groupingWords[by]}</th>
            <th scope="col">Goals of chances</th>
            <th scope="col">Share, 95 %</th>
            <th scope="col">Best guess</th>
            <th scope="col">Shots</th>
            <th scope="col">First shot</th>
            <th scope="col">What can be told</th>
          </tr>
        </thead>
        <tbody>
          {groups.map(({ key, name, numbers, beside, says }) => (
            <NumbersRow
              key={key}
              name={name}
              numbers={numbers}
              says={says}
              told={beside === undefined ? '' : verdicts[beside.verdict]}
            />
          ))}
          <NumbersRow name="all" numbers={all} says="" told="" />
        </tbody>
      </table>
    </section>
  );
}

const verdicts = { better: 'surely more', worse: 'surely less', unsure: 'cannot be told' } as const;

interface NumbersRowProps {
  readonly name: string;
  readonly numbers: GroupNumbers;
  readonly told: string;
  /** The whole of what can be told, for who points at it. */
  readonly says: string;
}

function NumbersRow({ name, numbers, told, says }: NumbersRowProps): ReactNode {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        {numbers.goals} of {numbers.chances}
      </td>
      <td>{shareText(numbers.raw)}</td>
      <td>{shareText(numbers.shrunk)}</td>
      <td>{shotsText(numbers)}</td>
      <td>{firstShotText(numbers)}</td>
      <td title={says}>{told}</td>
    </tr>
  );
}

function Plan({ plan, says }: { readonly plan: PlanAndResult | undefined; readonly says: string }): ReactNode {
  const draw = useCallback<PlotFigureProps['draw']>((plots) => drawPlan(plots, plan?.bins ?? []), [plan]);
  return (
    <section className={panel.panel} aria-label="What the simulation said">
      <h2 className={panel.title}>What the simulation said, and what came</h2>
      <p className={styles.lead}>{says}</p>
      {plan !== undefined && (
        <div className={styles.beside}>
          <PlotFigure
            says="On the slope what came is what was expected; a line that meets it is no surprise."
            draw={draw}
          />
          <div>
            <table className={table.table}>
              <thead>
                <tr>
                  <th scope="col">It expected</th>
                  <th scope="col">On average</th>
                  <th scope="col">Goals</th>
                  <th scope="col">Share, 95 %</th>
                </tr>
              </thead>
              <tbody>
                {plan.bins.map((bin) => (
                  <tr key={bin.from}>
                    <th scope="row">{planBinText(bin)}</th>
                    <td>{binMeanText(bin)}</td>
                    <td>
                      {bin.goals} of {bin.chances}
                    </td>
                    <td>{shareText(bin.came)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p>{forecastSentence(plan)}</p>
            <p className={panel.quiet}>{brierSentence(plan)}</p>
          </div>
        </div>
      )}
    </section>
  );
}
