import type { ReactNode } from 'react';
import type { ProbeAdvice } from '../../engine/index.ts';
import { type Opponent, type Playbook, type PlayEntry, toEnginePlay } from '../../playbook/index.ts';
import { movementName, perChance, probeRule, signClause, tenth } from '../../render/index.ts';
import {
  type MeasuredPlay,
  measurePlays,
  movementsOfPlay,
  probeAdvice,
  type ScoutQuestion,
  walkMovements,
} from '../../teach/index.ts';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import { usualSeed } from '../answers/ask.ts';
import { Button } from '../controls/button.tsx';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { SearchLine } from '../reads/search-line.tsx';
import styles from './find-out.module.css';
import { askingWords, useAsking } from './use-asking.ts';

export interface ProbePanelProps {
  readonly playbook: Playbook;
  readonly question: ScoutQuestion;
  /** The calls that there are: what is found out is worth what it changes in them. */
  readonly plays: readonly PlayEntry[];
  readonly opponent: Opponent;
}

interface FoundProbe {
  readonly advice: ProbeAdvice;
  readonly calls: readonly MeasuredPlay[];
}

/** Which opening movement of the ball is worth running to find out, what to watch, and what to call after it. */
export function ProbePanel({ playbook, question, plays, opponent }: ProbePanelProps): ReactNode {
  const calls = plays.map(({ id }) => id);
  const { discipline = {}, keeper = [] } = opponent;
  const text = JSON.stringify([question, calls, discipline, keeper, playbook.team, playbook.schemes ?? []]);
  const { state, find, stop } = useAsking(text, (pool, options) =>
    searchProbe(pool, playbook, question, calls, opponent.id, options),
  );
  return (
    <section className={panel.panel} aria-label="What to run to find out">
      <h3 className={panel.title}>What to run to find out</h3>
      <p className={panel.quiet}>
        A first lap of the ball that tells which scheme it is, what to watch in it, and what to call then. It is worth
        what it changes in the calls.
      </p>
      <div className={panel.tools}>
        {state.kind === 'asking' ? <Button onClick={stop}>Stop</Button> : <Button onClick={find}>Find it</Button>}
      </div>
      <SearchLine
        label="How far the search for a probe is"
        progress={state.kind === 'asking' ? state : undefined}
        said={askingWords(state, text, 'The ball is sent round against each scheme, and each call is tried.')}
      />
      {state.kind === 'found' && <Advice playbook={playbook} question={question} found={state.found} />}
    </section>
  );
}

async function searchProbe(
  pool: TrialPool,
  playbook: Playbook,
  question: ScoutQuestion,
  plays: readonly string[],
  opponent: string,
  options: MeasureOptions,
): Promise<FoundProbe> {
  const walked = await walkMovements(pool, playbook, question, options);
  const schemes = question.schemes.map(({ id }) => id);
  const asked = { plays, schemes, side: question.side, penalty: null, level: null, seed: usualSeed, opponent };
  const calls = await measurePlays(pool, playbook, asked, options);
  const all = question.schemes.reduce((sum, { weight }) => sum + weight, 0);
  const shares = question.schemes.map(({ weight }) => weight / all);
  return { advice: probeAdvice(playbook, question, walked, shares, calls), calls };
}

function Advice({
  playbook,
  question,
  found: { advice, calls },
}: {
  readonly playbook: Playbook;
  readonly question: ScoutQuestion;
  readonly found: FoundProbe;
}): ReactNode {
  const names = calls.map(({ play }) => playbook.plays.find(({ id }) => id === play)?.name ?? '');
  const spots = toEnginePlay(playbook, question.play, question.side).spots.map(({ id }) => id);
  const [best] = advice.movements;
  return (
    <>
      {best !== undefined && (
        <p className={styles.rule}>{probeRule(best, movementsOfPlay(playbook, question), { spots, calls: names })}</p>
      )}
      <p className={panel.quiet}>
        Without a probe call {names[advice.without.call] ?? ''}, {perChance(advice.without.goals)} goals a man-up; to
        know the scheme for certain would be worth {advice.mostGain.toFixed(3)} more.
      </p>
      <div className={styles.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Movement</th>
              <th scope="col">Passes</th>
              <th scope="col">Worth</th>
              <th scope="col">Watch whether</th>
            </tr>
          </thead>
          <tbody>
            {advice.movements.map(({ movement, watch, gain, seconds, passes }) => (
              <tr key={movement}>
                <th scope="row">{movementName(movement)}</th>
                <td>
                  {passes}, {tenth(seconds)} s
                </td>
                <td>+{gain.toFixed(3)}</td>
                <td>{signClause(watch, true)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={panel.quiet}>
        Worth: goals a man-up more when the best call is made after the answer, if whoever looks is mistaken once in
        ten. What the movement itself opens or costs is not counted.
      </p>
    </>
  );
}
