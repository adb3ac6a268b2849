import { type ReactNode, useState } from 'react';
import type { BoxedPenalty } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { allowSound, useAlerts, warnBench } from './alerts.ts';
import styles from './bench.module.css';
import { endGame, tap } from './bench-store.ts';
import { MeasurePanel } from './measure-panel.tsx';
import { leftText } from './time-text.ts';
import type { GameNow } from './use-game.ts';

interface MoreSheetProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly now: GameNow;
  readonly playbook: Playbook;
}

/** What is seldom needed: goals of the other kind, the clock set by the table's, who is out, who is let go, sound, the end. */
export function MoreSheet({ open, onClose, now, playbook }: MoreSheetProps): ReactNode {
  const { state } = now;
  const { clock, box, absent } = state;
  const boxed = box.penalties.filter(({ endedAt }) => endedAt === null);
  const done = (act: () => void): void => {
    act();
    onClose();
  };
  return (
    <Dialog open={open} onClose={onClose} title="More" form="sheet">
      <div className={styles.foul}>
        <div className={styles.pad} data-columns="2">
          <button type="button" className={styles.key} onClick={() => done(() => tap({ kind: 'goal', by: 'us' }))}>
            Goal for us
          </button>
          <button type="button" className={styles.key} onClick={() => done(() => tap({ kind: 'goal', by: 'them' }))}>
            Goal for them
          </button>
          <button type="button" className={styles.key} onClick={() => done(() => tap({ kind: 'flag', on: 'them' }))}>
            Flag on them
          </button>
          <button type="button" className={styles.key} onClick={() => done(() => tap({ kind: 'flag', on: 'us' }))}>
            Flag on us
          </button>
          <button type="button" className={styles.key} onClick={() => done(() => tap({ kind: 'timeout', by: 'them' }))}>
            Their timeout
          </button>
          <button
            type="button"
            className={styles.key}
            onClick={() => done(() => tap({ kind: 'period', period: clock.period + 1 }))}
          >
            Next period
          </button>
        </div>
        {boxed.length > 0 && <BoxKeeper boxed={boxed} onDone={onClose} />}
        <section>
          <h3>The table’s clock shows</h3>
          <TimeSetter
            left={clock.left}
            onSet={(left) => done(() => tap({ kind: 'clockSet', period: clock.period, left }))}
          />
        </section>
        <section>
          <h3>Who is out</h3>
          <fieldset className={styles.numbers} aria-label="Who is out">
            {playbook.team.roster.map(({ number }) => (
              <button
                key={number}
                type="button"
                className={styles.key}
                aria-pressed={absent.includes(number)}
                onClick={() => tap({ kind: 'absent', man: number, isAbsent: !absent.includes(number) })}
              >
                {number}
              </button>
            ))}
          </fieldset>
        </section>
        <MeasurePanel
          playbook={playbook}
          opponent={now.game.settings.opponent}
          sides={now.game.settings.sides}
          out={absent}
        />
        <AlertChoices />
        <Button tone="risky" className={styles.draw ?? ''} onClick={() => done(endGame)}>
          End the game
        </Button>
        <p className={styles.note}>
          It can be taken up again until another game ends. Its man-ups are in the playbook.
        </p>
      </div>
    </Dialog>
  );
}

/** Who serves: let go by an official, or with another time at the table. */
function BoxKeeper({
  boxed,
  onDone,
}: {
  readonly boxed: readonly BoxedPenalty[];
  readonly onDone: () => void;
}): ReactNode {
  const [changed, setChanged] = useState<number>();
  return (
    <section>
      <h3>In the box</h3>
      {boxed.map(({ number, side, man, left, state: at }) => (
        <div key={number}>
          <div className={styles.boxed}>
            <span>
              {side === 'us' ? 'Ours' : 'Theirs'}
              {man === null ? '' : ` ${man}`}: {leftText(left)}
              {at === 'waiting' ? ', waits' : ''}
            </span>
            <button
              type="button"
              className={styles.key}
              aria-expanded={changed === number}
              onClick={() => setChanged(changed === number ? undefined : number)}
            >
              Other time
            </button>
            <button
              type="button"
              className={styles.key}
              onClick={() => {
                tap({ kind: 'letGo', penalty: number });
                onDone();
              }}
            >
              Let go
            </button>
          </div>
          {changed === number && (
            <TimeSetter
              left={left}
              onSet={(seconds) => {
                tap({ kind: 'boxSet', penalty: number, left: Math.max(1, seconds) });
                onDone();
              }}
            />
          )}
        </div>
      ))}
    </section>
  );
}

/** A time as the table has it: minutes and seconds. */
function TimeSetter({ left, onSet }: { readonly left: number; readonly onSet: (seconds: number) => void }): ReactNode {
  // Shown as the clock shows it: a begun second is a whole one.
  const shown = Math.ceil(left);
  const [minutes, setMinutes] = useState(Math.floor(shown / 60));
  const [seconds, setSeconds] = useState(shown % 60);
  return (
    <div className={styles.setter}>
      <NumberField
        label="Minutes"
        unit="min"
        step={1}
        value={minutes}
        onNumber={(value) => setMinutes(within(value, 60))}
      />
      <NumberField
        label="Seconds"
        unit="s"
        step={1}
        value={seconds}
        onNumber={(value) => setSeconds(within(value, 59))}
      />
      <button type="button" className={styles.key} onClick={() => onSet(60 * minutes + seconds)}>
        Set
      </button>
    </div>
  );
}

/** A whole number from 0 to the most that a clock shows. */
function within(value: number, most: number): number {
  return Math.min(most, Math.max(0, Math.round(value)));
}

/** Sound and vibration at ten and five seconds. */
export function AlertChoices(): ReactNode {
  const { sound, vibration, change } = useAlerts();
  return (
    <section>
      <h3>At ten and at five seconds</h3>
      <div className={styles.pad} data-columns="3">
        <button
          type="button"
          className={styles.key}
          aria-pressed={sound}
          onClick={() => {
            change({ sound: !sound });
            allowSound();
          }}
        >
          Sound
        </button>
        <button
          type="button"
          className={styles.key}
          aria-pressed={vibration}
          onClick={() => change({ vibration: !vibration })}
        >
          Vibration
        </button>
        <button
          type="button"
          className={styles.key}
          onClick={() => {
            allowSound();
            warnBench(10);
          }}
        >
          Try
        </button>
      </div>
    </section>
  );
}
