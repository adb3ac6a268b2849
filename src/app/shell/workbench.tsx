import { lazy, type ReactNode, Suspense, useLayoutEffect, useRef } from 'react';
import { FileDrop } from '../files/file-drop.tsx';
import { SaveBanner } from '../files/save-banner.tsx';
import { UpdateBar } from '../files/update-bar.tsx';
import { PlayScreen } from '../play/play-screen.tsx';
import { GuidedMinute } from '../tour/guided-minute.tsx';
import { Masthead } from './masthead.tsx';
import { MastheadTools } from './masthead-tools.tsx';
import { OverwrittenBar } from './overwritten-bar.tsx';
import { type Place, usePlace } from './place.ts';
import styles from './workbench.module.css';

// Loaded when somebody goes there: the play must be on the screen first.
const ReadsScreen = lazy(() => import('../reads/reads-screen.tsx'));
const TeachScreen = lazy(() => import('../teach/teach-screen.tsx'));
const TeamScreen = lazy(() => import('../team/team-screen.tsx'));
const OpponentsScreen = lazy(() => import('../opponents/opponents-screen.tsx'));
const BenchScreen = lazy(() => import('../bench/bench-screen.tsx'));
const SeasonScreen = lazy(() => import('../season/season-screen.tsx'));
const PlaybookScreen = lazy(() => import('../files/playbook-screen.tsx'));

/** The whole page: where one is, and the way to the other places. */
export function Workbench(): ReactNode {
  const place = usePlace();
  useBeginAtTop(place.kind);
  return (
    <div className={styles.workbench}>
      <Masthead place={place}>
        <MastheadTools place={place} />
      </Masthead>
      <OverwrittenBar />
      <SaveBanner />
      <UpdateBar />
      <GuidedMinute place={place} />
      <main className={styles.place} id="place" tabIndex={-1}>
        <Suspense fallback={<p className={styles.waiting}>One moment.</p>}>{screenOf(place)}</Suspense>
      </main>
      <FileDrop />
    </div>
  );
}

/** Another place begins with its heading; the same one, with another play, stays where the coach has scrolled to. The focus stays where it is. */
function useBeginAtTop(kind: Place['kind']): void {
  const before = useRef(kind);
  // Before it is painted, and before what the new place itself brings into sight.
  useLayoutEffect(() => {
    if (before.current !== kind) window.scrollTo({ top: 0, behavior: 'instant' });
    before.current = kind;
  }, [kind]);
}

function screenOf(place: Place): ReactNode {
  switch (place.kind) {
    case 'play':
      return <PlayScreen playId={place.play} />;
    case 'reads':
      return <ReadsScreen playId={place.play} />;
    case 'teach':
      return <TeachScreen part={place.part} playId={place.play} />;
    case 'team':
      return <TeamScreen />;
    case 'opponents':
      return <OpponentsScreen id={place.opponent} part={place.part} />;
    case 'bench':
      return <BenchScreen />;
    case 'season':
      return <SeasonScreen />;
    case 'playbook':
      return <PlaybookScreen />;
    default:
      return exhaustive(place);
  }
}

function exhaustive(place: never): never {
  throw new TypeError(`unknown place: ${JSON.stringify(place)}`);
}
