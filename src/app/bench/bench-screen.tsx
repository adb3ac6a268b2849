import { type ReactNode, useEffect } from 'react';
import { Button } from '../controls/button.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { downloadText } from '../shell/download-text.ts';
import styles from './bench.module.css';
import { brokenText } from './bench-storage.ts';
import { followTabs, leaveBroken, useBench } from './bench-store.ts';
import { GameBoard } from './game-board.tsx';
import { SetUp } from './set-up.tsx';

/** The place of the game: one screen with large letters, for wet thumbs, that needs no network and loses nothing. */
export default function BenchScreen(): ReactNode {
  const playbook = usePlaybook();
  const { kept, broken, fault, calls } = useBench();
  useEffect(followTabs, []);
  return (
    <div className={styles.screen}>
      <h1 className="spoken">Bench</h1>
      {fault !== '' && (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
      {broken !== '' && <Broken why={broken} />}
      {kept !== undefined && <GameBoard key={kept.game.id} playbook={playbook} kept={kept} measured={calls} />}
      {kept === undefined && broken === '' && <SetUp playbook={playbook} />}
    </div>
  );
}

/** A game was kept that cannot be read: it is told, and nothing is thrown away. */
function Broken({ why }: { readonly why: string }): ReactNode {
  return (
    <section className={styles.setUp} role="alert" aria-label="A game that cannot be read">
      <p>
        A game was kept here that cannot be read: {why}. The man-ups that had ended are in the playbook. Set it aside to
        begin anew; its text is saved as a file for who can mend it.
      </p>
      <Button
        tone="main"
        className={styles.draw ?? ''}
        onClick={() => {
          leaveBroken();
          downloadText('bench-game.json', brokenText() ?? '');
        }}
      >
        Set it aside and save its text
      </Button>
    </section>
  );
}
