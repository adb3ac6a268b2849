import { Maximize2 } from 'lucide-react';
import { type ReactNode, useMemo, useState } from 'react';
import { type Page, pageToSvg } from '../../render/index.ts';
import { Dialog } from '../controls/dialog.tsx';
import styles from './page-view.module.css';

/** Pages as they come out of the printer, one under the other; a tap shows one as large as it is on paper and larger. */
export function PageView({ pages }: { readonly pages: readonly Page[] }): ReactNode {
  return (
    <div className={styles.pages}>
      {[...pages.entries()].map(([at, page]) => (
        <Sheet key={at} page={page} number={at + 1} of={pages.length} />
      ))}
    </div>
  );
}

function Sheet({ page, number, of }: { readonly page: Page; readonly number: number; readonly of: number }): ReactNode {
  const [isLarge, setLarge] = useState(false);
  return (
    <figure className={styles.sheet} style={{ aspectRatio: `${page.width} / ${page.height}` }}>
      <Paper page={page} />
      <button
        type="button"
        className={styles.open}
        aria-label={`Show ${of > 1 ? `page ${number}` : 'the page'} large`}
        onClick={() => setLarge(true)}
      >
        <span className={styles.sign}>
          <Maximize2 aria-hidden="true" />
        </span>
      </button>
      <Dialog open={isLarge} onClose={() => setLarge(false)} title={page.title} form="wide">
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: who has keys alone moves the page with them */}
        <section className={styles.large} tabIndex={0} aria-label="The page, to be moved about">
          <Paper page={page} />
        </section>
      </Dialog>
      {of > 1 && (
        <figcaption className={styles.number}>
          {number} of {of}: {page.title}
        </figcaption>
      )}
    </figure>
  );
}

/** One page, drawn. */
export function Paper({ page }: { readonly page: Page }): ReactNode {
  const html = useMemo(() => ({ __html: pageToSvg(page) }), [page]);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is made by pageToSvg, which escapes every letter that a user typed
  return <div className={styles.paper} dangerouslySetInnerHTML={html} />;
}
