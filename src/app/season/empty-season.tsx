import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { newOne, useSeason } from './season-state.ts';

/** What to do first, where no chance was written down yet. */
export function EmptySeason(): ReactNode {
  const change = useSeason((state) => state.change);
  return (
    <section className={panel.panel} aria-label="No chances yet">
      <h2 className={panel.title}>No chance was written down yet</h2>
      <p className={panel.quiet}>
        Each chance of a man-up is one line: whose it was, what was called, what they played, how it ended. A penalty in
        which you lose the ball and win it again has two. After some of them this place says what works, and what was
        luck: ten of one call say little, forty say something.
      </p>
      <div className={panel.tools}>
        <Button tone="main" onClick={() => change({ writing: newOne })}>
          Write down the first
        </Button>
        <Button onClick={() => change({ table: '' })}>Paste a table</Button>
      </div>
    </section>
  );
}
