import { lazy, type ReactNode, Suspense } from 'react';
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
const TeamScreen = lazy(() => import('../team/team-screen.tsx'));
const OpponentsScreen = lazy(() => import('../opponents/opponents-screen.tsx'));
const PlaybookScreen = lazy(() => import('../files/playbook-screen.tsx'));

/** The whole page: where one is, and the way to the other places. */
export function Workbench(): ReactNode {
  const place = usePlace();
  return (
    <div className={styles.workbench}>
      <Masthead place={place}>
        <MastheadTools />
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

function screenOf(place: Place): ReactNode {
  switch (place.kind) {
    case 'play':
      return <PlayScreen playId={place.play} />;
    case 'reads':
      return <ReadsScreen playId={place.play} />;
    case 'team':
      return <TeamScreen />;
    case 'opponents':
      return <OpponentsScreen id={place.opponent} />;
    case 'playbook':
      return <PlaybookScreen />;
    default:
      return exhaustive(place);
  }
}

function exhaustive(place: never): never {
  throw new TypeError(`unknown place: ${JSON.stringify(place)}`);
}
