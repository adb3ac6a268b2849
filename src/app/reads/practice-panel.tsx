import { type ReactNode, useMemo } from 'react';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import {
  alreadyBestWords,
  bestPracticeWords,
  count,
  gainOfPractice,
  practiceBasisWords,
  practiceNames,
  practisingWords,
  roughRowsWords,
} from '../../render/index.ts';
import type { PractisingMan, RankedWorths, SkillWorth } from '../../worker/index.ts';
import { Button } from '../controls/button.tsx';
import table from '../look/table.module.css';
import { type BarScale, IntervalBar } from '../schemes/interval-bar.tsx';
import { FoldingPanel } from './folding-panel.tsx';
import { gainScale } from './gain-scale.ts';
import styles from './practice-panel.module.css';
import { type FoundPractice, type PracticeSearch, usePractice } from './practice-state.ts';
import type { ReadsQuestion } from './reads-question.ts';
import { SearchLine } from './search-line.tsx';
import { useFindPractice } from './use-find-practice.ts';

export interface PracticePanelProps {
  /** What the play stands on: team, sets and settings. */
  readonly standing: Playbook;
  readonly entry: PlayEntry;
  /** Against what; undefined while the play cannot be played. */
  readonly question: ReadsQuestion | undefined;
}

/** What a better skill of the unit or of one man is worth to the play. */
export function PracticePanel({ standing, entry, question }: PracticePanelProps): ReactNode {
  const setups = question?.setups;
  const text = useMemo(() => (setups === undefined ? undefined : JSON.stringify(setups)), [setups]);
  const { search, found } = usePractice();
  const { find, stop } = useFindPractice(text);
  const playbook = { ...standing, plays: [entry] };
  const isOfPlay = found !== undefined && found.play === entry.id;
  const isReady = setups !== undefined && setups.length > 0 && text !== undefined;
  return (
    <FoldingPanel label="What practice is worth" result={resultOf(isOfPlay ? found : undefined)}>
      <p className={styles.quiet}>{practiceBasisWords}</p>
      <div>
        {search.kind === 'finding' ? (
          <Button onClick={stop}>Stop finding what practice is worth</Button>
        ) : (
          <Button
            disabled={!isReady}
            onClick={() => isReady && find({ playbook, play: entry.id, setups, question: text })}
          >
            Find what practice is worth
          </Button>
        )}
      </div>
      <SearchLine
        label="How far the search for what practice is worth is"
        progress={search.kind === 'finding' ? search : undefined}
        said={saidOf(search)}
      />
      {isOfPlay && <Found found={found} isOld={found.question !== text} />}
    </FoldingPanel>
  );
}

function resultOf(found: FoundPractice | undefined): string {
  return found === undefined ? 'Not found yet.' : bestPracticeWords(found.worths.unit.leaders, 'unit', found.men);
}

function saidOf(search: PracticeSearch): string {
  switch (search.kind) {
    case 'idle':
      return '';
    case 'finding':
      return 'Everything is tried a little, and what leads is measured well. What the six gain together comes first, roughly at once.';
    case 'stopped':
      return 'Stopped. What was found until then stays; find what practice is worth again to begin anew.';
    case 'failed':
      return `That did not work: ${search.reason}. Find what practice is worth again to try once more.`;
    default:
      return exhaustive(search);
  }
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}

function Found({ found, isOld }: { readonly found: FoundPractice; readonly isOld: boolean }): ReactNode {
  const { worths, men } = found;
  const { unit, each } = worths;
  const rows = [...unit.rows, ...(each?.rows ?? [])];
  const fresh = rows.filter(({ isFresh }) => isFresh);
  const scale = gainScale(
    (fresh.length === 0 ? rows : fresh).map(({ gain }) => gain),
    leastReach,
  );
  const best = alreadyBestWords(men);
  return (
    <>
      {isOld && <p className={styles.old}>The play, the team or the schemes have changed since this was found.</p>}
      <div className={styles.tables}>
        <Ranked kind="unit" ranked={unit} men={men} scale={scale} />
        {each !== null && <Ranked kind="each" ranked={each} men={men} scale={scale} />}
      </div>
      <p className={styles.quiet}>{roughRowsWords}</p>
      {best !== '' && <p className={styles.quiet}>{best}</p>}
    </>
  );
}

/** Goals a chance that the bars reach to at least on both sides: a hair is not to look like a mile. */
const leastReach = 0.02;

/** Rows of one man's practice that are shown. */
const mostRows = 12;

interface RankedProps {
  readonly kind: 'unit' | 'each';
  readonly ranked: RankedWorths;
  readonly men: readonly PractisingMan[];
  readonly scale: BarScale;
}

const titles = { unit: 'All six together', each: 'One man alone' } as const;

function Ranked({ kind, ranked, men, scale }: RankedProps): ReactNode {
  const shown = ranked.rows.slice(0, mostRows);
  const rest = ranked.rows.length - shown.length;
  return (
    <section className={styles.ranked} aria-label={titles[kind]}>
      <h3 className={styles.heading}>{titles[kind]}</h3>
      <p className={styles.best}>{bestPracticeWords(ranked.leaders, kind, men)}</p>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">One grade better in</th>
            <th scope="col">Goals in 100 man-ups</th>
            <th scope="col" className={table.bar}>
              <span className="spoken">The gain on one scale</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((row) => (
            <Worth key={`${row.man} ${row.skill}`} row={row} men={men} scale={scale} />
          ))}
        </tbody>
      </table>
      {rest > 0 && <p className={styles.quiet}>{count(rest)} more gained less than the rough ones here.</p>}
    </section>
  );
}

function Worth({
  row,
  men,
  scale,
}: {
  readonly row: SkillWorth;
  readonly men: readonly PractisingMan[];
  readonly scale: BarScale;
}): ReactNode {
  const { man, skill, gain, isFresh } = row;
  return (
    <tr data-rough={!isFresh}>
      <th scope="row">
        {man === 'all' ? practiceNames[skill] : `${practiceNames[skill]}, ${practisingWords(man, men)}`}
      </th>
      <td>
        {gainOfPractice(gain)}
        {!isFresh && <span className={styles.rough}> rough</span>}
      </td>
      <td className={table.bar}>
        <IntervalBar goals={gain} scale={scale} />
      </td>
    </tr>
  );
}
