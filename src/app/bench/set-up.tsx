import { type ReactNode, useState } from 'react';
import { type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import { type BenchSettings, usualCalls } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { Segments } from '../controls/segments.tsx';
import { addressOf } from '../shell/place.ts';
import { allowSound } from './alerts.ts';
import styles from './bench.module.css';
import { readGame } from './bench-storage.ts';
import { beginGame, nowSeconds, resumeGame } from './bench-store.ts';
import { MeasurePanel } from './measure-panel.tsx';
import { AlertChoices } from './more-sheet.tsx';
import { dayOf } from './time-text.ts';

/** How far the belief about their scheme goes, by three words under a thumb. */
const trusts = { little: 0.4, much: 0.7, surely: 0.95 } as const;
type TrustWord = keyof typeof trusts;

/** Before the game: against whom, how long, what the unit can run; and what the calls make, to be found while there is time. */
export function SetUp({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const [opponent, setOpponent] = useState(playbook.opponents?.[0]?.id ?? '');
  const [minutes, setMinutes] = useState(12);
  const [periods, setPeriods] = useState(4);
  const [runningTime, setRunningTime] = useState(false);
  const [sides, setSides] = useState<BenchSettings['sides']>('right');
  const [learnt, setLearnt] = useState(usualCalls(playbook.team.level));
  const [trust, setTrust] = useState<TrustWord>('much');
  const code = ruleCodeOf(playbook);
  const begin = (): void => {
    allowSound();
    const wall = nowSeconds();
    const date = dayOf(wall);
    const settings: BenchSettings = {
      ...(opponent !== '' && { opponent }),
      date,
      periodSeconds: 60 * minutes,
      periods,
      runningTime,
      sides,
      learnt,
      trust: trusts[trust],
    };
    // Milliseconds make it another game than the one before, and another seed.
    beginGame(
      settings,
      `game-${date}-${Math.floor(1000 * wall)
        .toString(36)
        .slice(-5)}`,
      Math.floor(1000 * wall),
    );
  };
  return (
    <section className={styles.setUp} aria-label="Before the game">
      <h2 className={styles.title}>Before the game</h2>
      {!code.penalties.playedShort.value && (
        <p className={styles.fault}>
          By {code.name} no team is a man up in games: the man who fouled is replaced. The bench keeps the clock and the
          score.
        </p>
      )}
      <div className={styles.choices}>
        <PickList
          label="Against"
          value={opponent}
          options={[
            ...(playbook.opponents ?? []).map(({ id, name }) => ({ value: id, text: name })),
            { value: '', text: 'Somebody else' },
          ]}
          onChange={setOpponent}
        />
        <div className={styles.inline}>
          <NumberField
            label="Periods"
            unit="Periods"
            step={1}
            value={periods}
            onNumber={(value) => setPeriods(whole(value, 1, 8))}
          />
          <NumberField
            label="Minutes of a period"
            unit="Minutes each"
            step={1}
            value={minutes}
            onNumber={(value) => setMinutes(whole(value, 1, 60))}
          />
        </div>
        <div>
          <p>At a whistle the clock</p>
          <Segments
            label="At a whistle the clock"
            value={runningTime ? 'runs' : 'stops'}
            options={[
              { value: 'stops', text: 'stops' },
              { value: 'runs', text: 'runs on' },
            ]}
            onChange={(value) => setRunningTime(value === 'runs')}
          />
        </div>
        <fieldset className={styles.inline}>
          <legend>Calls that they can run</legend>
          <NumberField
            label="Calls that they can run"
            unit=""
            step={1}
            value={learnt}
            onNumber={(value) => setLearnt(whole(value, 1, 20))}
          />
        </fieldset>
        <div>
          <p>Plays are run from</p>
          <Segments
            label="Plays are run from"
            value={sides}
            options={[
              { value: 'right', text: 'as written' },
              { value: 'left', text: 'mirrored' },
              { value: 'both', text: 'both sides' },
            ]}
            onChange={setSides}
          />
        </div>
        <div>
          <p>What is known of their scheme holds</p>
          <Segments
            label="What is known of their scheme holds"
            value={trust}
            options={[
              { value: 'little', text: 'a little' },
              { value: 'much', text: 'mostly' },
              { value: 'surely', text: 'surely' },
            ]}
            onChange={setTrust}
          />
        </div>
      </div>
      <p className={styles.note}>
        {rulesWords(playbook)} <a href={addressOf({ kind: 'team' })}>Change in Team</a>
      </p>
      <p className={styles.note}>
        The less it holds, the more the calls are mixed. {usualCalls(playbook.team.level)} calls are usual at this level
        (common practice, no source); a play from the other side is another call.
      </p>
      <MeasurePanel playbook={playbook} opponent={opponent === '' ? undefined : opponent} sides={sides} />
      <AlertChoices />
      <Button tone="main" className={styles.draw ?? ''} onClick={begin}>
        Begin the game
      </Button>
      {readGame('last').kind === 'game' && (
        <button type="button" className={styles.key} onClick={resumeGame}>
          Take the last game up again
        </button>
      )}
    </section>
  );
}

/** By which rules the clocks run, and who is not there: both are set in the Team place. */
function rulesWords(playbook: Playbook): string {
  const code = ruleCodeOf(playbook);
  const out = playbook.team.roster.filter(({ absent }) => absent === true).map(({ number }) => number);
  const who = out.length === 0 ? 'nobody is marked absent' : `absent: ${out.join(', ')}`;
  return `Penalties by ${code.name}; ${who}. A man who is hurt during the game is taken out under More.`;
}

function whole(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, Math.round(value)));
}
