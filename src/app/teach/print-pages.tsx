import { type ReactNode, useEffect } from 'react';
import { createPortal } from 'react-dom';
import type { Page } from '../../render/index.ts';
import { Paper } from './page-view.tsx';
import './print-pages.css';

/** Puts pages alone on paper and opens the browser's own print window; `onDone` when it is shut. Each page has the size that it was laid out for. */
export function PrintPages({
  pages,
  onDone,
}: {
  readonly pages: readonly Page[];
  readonly onDone: () => void;
}): ReactNode {
  useEffect(() => {
    const done = (): void => onDone();
    window.addEventListener('afterprint', done);
    window.print();
    return () => window.removeEventListener('afterprint', done);
  }, [onDone]);
  return createPortal(
    <div className="printed">
      <style>
        {pages.map((page, at) => `@page sheet${at}{size:${page.width}pt ${page.height}pt;margin:0}`).join('')}
      </style>
      {[...pages.entries()].map(([at, page]) => (
        <div
          key={at}
          className="printed-page"
          style={{ page: `sheet${at}`, width: `${page.width}pt`, height: `${page.height}pt` }}
        >
          <Paper page={page} />
        </div>
      ))}
    </div>,
    document.body,
  );
}
