import { ArrowLeft } from 'lucide-react';
import { lazy, type ReactNode, Suspense } from 'react';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf, type OpponentPart } from '../shell/place.ts';
import { OpponentList } from './opponent-list.tsx';
import { OpponentPage } from './opponent-page.tsx';
import styles from './opponents-screen.module.css';
import { SaidLine } from './said-line.tsx';
import { SchemePage } from './scheme-page.tsx';
import { SchemesExplained } from './schemes-explained.tsx';

// Loaded when somebody goes there: whoever weighs schemes needs no film.
const FilmScreen = lazy(() => import('../film/film-screen.tsx'));
const FindOut = lazy(() => import('../scout/find-out.tsx'));

/**
 * The place of the other side: whom you play, what they are believed to do, and schemes of your own writing. An id in the address is an
 * opponent's or an own scheme's: none goes by the other's.
 */
export default function OpponentsScreen({
  id,
  part,
}: {
  readonly id: string | undefined;
  /** What of the opponent is looked at; what is known of him when left out. */
  readonly part?: OpponentPart | undefined;
}): ReactNode {
  const playbook = usePlaybook();
  const opponent = playbook.opponents?.find((one) => one.id === id);
  const scheme = playbook.schemes?.find((one) => one.id === id);
  const page = opponent !== undefined ? (part ?? 'opponent') : scheme !== undefined ? 'scheme' : 'all';
  return (
    <div className={styles.screen} data-page={page}>
      <div className={styles.list}>
        <OpponentList current={id} />
      </div>
      <div className={styles.page}>
        {page !== 'all' && (
          <a className={styles.back} href={addressOf({ kind: 'opponents', opponent: undefined })}>
            <ArrowLeft aria-hidden="true" />
            All opponents and schemes
          </a>
        )}
        {opponent !== undefined && <OpponentParts opponent={opponent.id} name={opponent.name} part={part} />}
        <SaidLine page={id} floats={part === 'film'} />
        {opponent !== undefined && part === undefined && <OpponentPage key={opponent.id} opponent={opponent} />}
        {opponent !== undefined && part === 'film' && (
          <Suspense fallback={<p>One moment.</p>}>
            <FilmScreen key={opponent.id} opponent={opponent} />
          </Suspense>
        )}
        {opponent !== undefined && part === 'find-out' && (
          <Suspense fallback={<p>One moment.</p>}>
            <FindOut key={opponent.id} opponent={opponent} />
          </Suspense>
        )}
        {opponent === undefined && scheme !== undefined && <SchemePage key={scheme.id} scheme={scheme} />}
        {page === 'all' && id !== undefined && (
          <p>Nobody of this name is in the playbook any more. Undo brings back what was deleted.</p>
        )}
        {page === 'all' && <SchemesExplained />}
      </div>
    </div>
  );
}

/** The way between what is known of an opponent, his film, and what to do about him. */
function OpponentParts({
  opponent,
  name,
  part,
}: {
  readonly opponent: string;
  readonly name: string;
  readonly part: OpponentPart | undefined;
}): ReactNode {
  return (
    <nav className={styles.parts} aria-label={`Parts of ${name}`}>
      <a
        href={addressOf({ kind: 'opponents', opponent })}
        aria-current={part === undefined ? 'page' : undefined}
      >{`${name}: what is known`}</a>
      <a
        href={addressOf({ kind: 'opponents', opponent, part: 'film' })}
        aria-current={part === 'film' ? 'page' : undefined}
      >
        Film and marks
      </a>
      <a
        href={addressOf({ kind: 'opponents', opponent, part: 'find-out' })}
        aria-current={part === 'find-out' ? 'page' : undefined}
      >
        Find out and stop them
      </a>
    </nav>
  );
}
