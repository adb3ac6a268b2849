import { type ReactNode, useState } from 'react';
import type { GivenPenalty, TeamSide } from '../../engine/index.ts';
import { clockText, type Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { Segments } from '../controls/segments.tsx';
import { allowSound } from './alerts.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import type { GameNow } from './use-game.ts';

interface FoulSheetProps {
  readonly open: boolean;
  /** On whom, to begin with. */
  readonly side: TeamSide;
  readonly onClose: () => void;
  readonly now: Pick<GameNow, 'code' | 'state'>;
  readonly playbook: Playbook;
}

/** What an official gives. One tap on a time is enough for one foul; several are gathered first. */
export function FoulSheet(props: FoulSheetProps): ReactNode {
  return (
    <Dialog open={props.open} onClose={props.onClose} title="Foul: how long?" form="sheet">
      <FoulForm {...props} />
    </Dialog>
  );
}

function FoulForm({ side: begun, onClose, now: { code, state }, playbook }: FoulSheetProps): ReactNode {
  const [side, setSide] = useState(begun);
  const [man, setMan] = useState<number>();
  const [isFixed, setFixed] = useState(false);
  const [given, setGiven] = useState<readonly GivenPenalty[]>();
  const [isTogether, setTogether] = useState(true);
  const { technical, personal } = code.penalties;
  const times = [...new Set([technical.value, ...personal.value])];
  const give = (penalties: readonly GivenPenalty[]): void => {
    allowSound();
    const both = new Set(penalties.map((one) => one.side)).size === 2;
    // Fouls whose order is known are each by themselves.
    if (both && !isTogether)
      tap(...penalties.map((one) => ({ kind: 'fouls', penalties: [one], simultaneous: false }) as const));
    else tap({ kind: 'fouls', penalties, simultaneous: both });
    onClose();
  };
  const choose = (seconds: number): void => {
    const one: GivenPenalty = { side, man: man ?? null, seconds, fixedSeconds: isFixed ? seconds : 0 };
    if (given === undefined) give([one]);
    else setGiven([...given, one]);
    setMan(undefined);
    setFixed(false);
  };
  return (
    <div className={styles.foul}>
      <Segments
        label="On whom"
        value={side}
        options={[
          { value: 'them', text: 'On them' },
          { value: 'us', text: 'On us' },
        ]}
        onChange={setSide}
      />
      {side === 'us' && <Numbers playbook={playbook} absent={state.absent} chosen={man} onChoose={setMan} />}
      <button type="button" className={styles.key} aria-pressed={isFixed} onClick={() => setFixed(!isFixed)}>
        No goal ends it
      </button>
      <div className={styles.pad} data-columns="2">
        {times.map((seconds) => (
          <button key={seconds} type="button" className={styles.key} data-tone="main" onClick={() => choose(seconds)}>
            {seconds < 60 ? `${seconds} s` : clockText(seconds)}
          </button>
        ))}
      </div>
      <button
        type="button"
        className={styles.key}
        aria-pressed={given !== undefined}
        onClick={() => setGiven(given === undefined ? [] : undefined)}
      >
        Several fouls at once
      </button>
      {given !== undefined && (
        <Gathered given={given} isTogether={isTogether} onTogether={setTogether} onGive={() => give(given)} />
      )}
    </div>
  );
}

function Gathered({
  given,
  isTogether,
  onTogether,
  onGive,
}: {
  readonly given: readonly GivenPenalty[];
  readonly isTogether: boolean;
  readonly onTogether: (is: boolean) => void;
  readonly onGive: () => void;
}): ReactNode {
  const both = new Set(given.map(({ side }) => side)).size === 2;
  return (
    <div className={styles.foul}>
      <p role="status">
        {given.length === 0
          ? 'Tap the time of each foul, then Give.'
          : given
              .map(({ side, man, seconds, fixedSeconds }) =>
                [side === 'us' ? 'us' : 'them', man ?? '', clockText(seconds), fixedSeconds > 0 ? 'fixed' : '']
                  .filter((part) => part !== '')
                  .join(' '),
              )
              .join(', ')}
      </p>
      {both && (
        <button type="button" className={styles.key} aria-pressed={isTogether} onClick={() => onTogether(!isTogether)}>
          At the same time: the shorter time is fixed on both sides
        </button>
      )}
      <Button tone="main" className={styles.draw ?? ''} disabled={given.length === 0} onClick={onGive}>
        Give
      </Button>
    </div>
  );
}

/** Who goes into the box: so he is not sent onto the field. */
function Numbers({
  playbook,
  absent,
  chosen,
  onChoose,
}: {
  readonly playbook: Playbook;
  /** Numbers who are out of this game; who misses it altogether is in the roster. */
  readonly absent: readonly number[];
  readonly chosen: number | undefined;
  readonly onChoose: (man: number | undefined) => void;
}): ReactNode {
  const there = playbook.team.roster.filter((one) => one.absent !== true && !absent.includes(one.number));
  return (
    <fieldset className={styles.numbers} aria-label="Who serves">
      {there.map(({ number }) => (
        <button
          key={number}
          type="button"
          className={styles.key}
          aria-pressed={chosen === number}
          onClick={() => onChoose(chosen === number ? undefined : number)}
        >
          {number}
        </button>
      ))}
    </fieldset>
  );
}
