import { type ReactNode, useMemo } from 'react';
import { type Page, pageToSvg } from '../../render/index.ts';
import styles from './page-view.module.css';

/** Pages as they come out of the printer, one under the other. */
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
  return (
    <figure className={styles.sheet} style={{ aspectRatio: `${page.width} / ${page.height}` }}>
      <Paper page={page} />
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
