import { type ReactNode, useMemo, useState } from 'react';
import { type Chance, chanceResultWords, clockText, type Playbook, schemeName } from '../../playbook/index.ts';
import {
  lookWords,
  manUpsOf,
  opponentName,
  periodText,
  playName,
  schemeExpected,
  schemeSeen,
} from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { useIsNarrow } from '../play/use-is-narrow.ts';
import { newestFirst } from './filter-chances.ts';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** Rows that are shown at once: more make a phone slow. */
const portion = 100;

/** Chances as they were written down, the newest first; each is opened to be changed. In a table, and where that has no room as cards. */
export function ChanceList({
  playbook,
  chances,
}: {
  readonly playbook: Playbook;
  readonly chances: readonly Chance[];
}): ReactNode {
  const [most, setMost] = useState(portion);
  const isNarrow = useIsNarrow();
  const sorted = useMemo(() => newestFirst(chances), [chances]);
  const goingOn = useMemo(() => idsGoingOn(playbook.chances ?? []), [playbook.chances]);
  if (chances.length === 0) return <p className={styles.quiet}>No chance is like that. Show all to see the others.</p>;
  const lines = sorted.slice(0, most).map((chance) => lineOf(playbook, chance, goingOn.has(chance.id)));
  return (
    <section className={panel.panel} aria-label="The chances">
      {isNarrow ? <Cards lines={lines} /> : <Table lines={lines} />}
      {sorted.length > most && (
        <div className={panel.tools}>
          <Button onClick={() => setMost(most + portion)}>Show {Math.min(portion, sorted.length - most)} more</Button>
        </div>
      )}
    </section>
  );
}

/** A chance in the words of a list; empty for what is not known. */
interface ChanceLine {
  readonly id: string;
  readonly isGoal: boolean;
  readonly when: string;
  /** That it goes on in the man-up of the chance before it. */
  readonly goesOn: string;
  readonly ended: string;
  readonly whose: string;
  readonly opponent: string;
  readonly call: string;
  /** What they were seen in. */
  readonly played: string;
  /** What was expected of them, where nobody named what they played. */
  readonly expected: string;
  readonly look: string;
}

/** Chances that go on in the man-up of an earlier one. */
function idsGoingOn(chances: readonly Chance[]): ReadonlySet<string> {
  return new Set(manUpsOf(chances).flatMap((those) => those.slice(1).map(({ id }) => id)));
}

function lineOf(playbook: Playbook, chance: Chance, isGoingOn: boolean): ChanceLine {
  const { id, side, opponent, call, look, result } = chance;
  const scheme = schemeSeen(chance);
  const guess = schemeExpected(chance);
  return {
    id,
    isGoal: result === 'goal',
    when: whenWords(chance),
    goesOn: isGoingOn ? 'same man-up' : '',
    ended: chanceResultWords[result],
    whose: side,
    opponent: opponent === undefined ? '' : opponentName(playbook, opponent),
    call: call === undefined ? '' : playName(playbook, call),
    played: scheme === undefined ? '' : schemeName(playbook, scheme),
    expected: guess === undefined ? '' : `expected: ${schemeName(playbook, guess)}`,
    look: look === undefined ? '' : lookWords(look),
  };
}

function Table({ lines }: { readonly lines: readonly ChanceLine[] }): ReactNode {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <section className={styles.frame} tabIndex={0} aria-label="The chances as a table">
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Ended in</th>
            <th scope="col">Whose</th>
            <th scope="col">Opponent</th>
            <th scope="col">Call</th>
            <th scope="col">They played</th>
            <th scope="col">Look</th>
            <th scope="col">
              <span className="spoken">Change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.id}>
              <th scope="row" className={styles.when}>
                {line.when}
                {line.goesOn !== '' && <span className={table.mark}> {line.goesOn}</span>}
              </th>
              <td className={line.isGoal ? styles.goal : undefined}>{line.ended}</td>
              <td>{line.whose}</td>
              <td>{line.opponent}</td>
              <td>{line.call}</td>
              <td>
                {line.played}
                {line.expected !== '' && <span className={table.mark}>{line.expected}</span>}
              </td>
              <td>{line.look}</td>
              <td>
                <ChangeButton line={line} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Cards({ lines }: { readonly lines: readonly ChanceLine[] }): ReactNode {
  return (
    <ul className={styles.cards} aria-label="The chances as a list">
      {lines.map((line) => (
        <li key={line.id} className={styles.card}>
          <p>
            <span className={styles.when}>{line.when}</span>{' '}
            <span className={line.isGoal ? styles.goal : undefined}>{line.ended}</span>
          </p>
          <p>
            {[`${line.whose}${line.opponent === '' ? '' : `, ${line.opponent}`}`, line.call].filter(isTold).join('; ')}
          </p>
          <p className={styles.quiet}>
            {[line.goesOn, line.played && `they played ${line.played}`, line.expected, line.look]
              .filter(isTold)
              .join('; ')}
          </p>
          <ChangeButton line={line} />
        </li>
      ))}
    </ul>
  );
}

function isTold(words: string): boolean {
  return words !== '';
}

function ChangeButton({ line: { id, when } }: { readonly line: ChanceLine }): ReactNode {
  const change = useSeason((state) => state.change);
  return (
    <Button aria-label={`Change the chance of ${when}`} onClick={() => change({ writing: id, said: '' })}>
      Change
    </Button>
  );
}

/** "2026-03-14 P2 7:11", or that no day was written. */
function whenWords({ date, period, clock }: Chance): string {
  const parts = [
    date ?? 'no day',
    period === undefined ? '' : periodText(period),
    clock === undefined ? '' : clockText(clock),
  ];
  return parts.filter((part) => part !== '').join(' ');
}
