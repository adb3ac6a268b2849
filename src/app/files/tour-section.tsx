import { Footprints } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { goTo } from '../shell/place.ts';
import { useTour } from '../tour/tour-state.ts';
import styles from './playbook-screen.module.css';

/** The guided first minute, once more. */
export function TourSection(): ReactNode {
  const start = useTour((state) => state.start);
  return (
    <section className={styles.section} aria-labelledby="tour-title">
      <h2 id="tour-title">The first minute</h2>
      <div className={styles.way}>
        <Button
          icon={<Footprints aria-hidden="true" />}
          onClick={() => {
            goTo({ kind: 'play', play: undefined });
            start();
          }}
        >
          Show me round
        </Button>
        <p>Five short steps at the Play place. You can leave them at any time.</p>
      </div>
    </section>
  );
}
