import { ArrowLeft } from 'lucide-react';
import type { ReactNode } from 'react';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf } from '../shell/place.ts';
import { OpponentList } from './opponent-list.tsx';
import { OpponentPage } from './opponent-page.tsx';
import styles from './opponents-screen.module.css';
import { SaidLine } from './said-line.tsx';
import { SchemePage } from './scheme-page.tsx';
import { SchemesExplained } from './schemes-explained.tsx';

/**
 * The place of the other side: whom you play, what they are believed to do, and schemes of your own writing. An id in the address is an
 * opponent's or an own scheme's: none goes by the other's.
 */
export default function OpponentsScreen({ id }: { readonly id: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const opponent = playbook.opponents?.find((one) => one.id === id);
  const scheme = playbook.schemes?.find((one) => one.id === id);
  const page = opponent !== undefined ? 'opponent' : scheme !== undefined ? 'scheme' : 'all';
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
        <SaidLine page={id} />
        {opponent !== undefined && <OpponentPage key={opponent.id} opponent={opponent} />}
        {opponent === undefined && scheme !== undefined && <SchemePage key={scheme.id} scheme={scheme} />}
        {page === 'all' && id !== undefined && (
          <p>Nobody of this name is in the playbook any more. Undo brings back what was deleted.</p>
        )}
        {page === 'all' && <SchemesExplained />}
      </div>
    </div>
  );
}
