import { FileDown, Image as ImageIcon, Printer } from 'lucide-react';
import { type ReactNode, useCallback, useState } from 'react';
import type { PrintedPages } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { downloadFile } from '../shell/download-file.ts';
import styles from './file-tools.module.css';
import { pageFileName } from './page-file-name.ts';
import { pdfOf, pngOf, svgOf } from './page-files.ts';
import { PrintPages } from './print-pages.tsx';

type Doing =
  | { readonly kind: 'idle' | 'printing' | 'making' }
  /** `of` are the pages that it is said of: beside others it would be wrong. */
  | { readonly kind: 'said'; readonly text: string; readonly of: string };

/** What can be done with pages: to the printer, or as a file. */
export function FileTools({ pages, about }: { readonly pages: PrintedPages; readonly about: string }): ReactNode {
  const [doing, setDoing] = useState<Doing>({ kind: 'idle' });
  const done = useCallback(() => setDoing({ kind: 'idle' }), []);
  const of = `${about} ${pages.title}`;
  const save = (ending: string, make: () => Promise<Blob>): void => {
    setDoing({ kind: 'making' });
    const name = pageFileName(about, pages.title, ending);
    make().then(
      (file) => {
        downloadFile(name, file);
        setDoing({ kind: 'said', text: `Saved: ${name}.`, of });
      },
      (error: unknown) => {
        const reason = error instanceof Error ? error.message : String(error);
        setDoing({ kind: 'said', text: `Not saved: ${reason}. Print it, or try once more.`, of });
      },
    );
  };
  const [first, ...others] = pages.pages;
  const isOne = first !== undefined && others.length === 0;
  const isBusy = doing.kind === 'making' || doing.kind === 'printing';
  return (
    <>
      <Button
        tone="main"
        icon={<Printer aria-hidden="true" />}
        disabled={isBusy}
        onClick={() => setDoing({ kind: 'printing' })}
      >
        Print
      </Button>
      <Button
        icon={<FileDown aria-hidden="true" />}
        disabled={isBusy}
        onClick={() => save('pdf', () => pdfOf(pages, new Date().toISOString()))}
      >
        Save as PDF
      </Button>
      {isOne && (
        <>
          <Button
            icon={<ImageIcon aria-hidden="true" />}
            disabled={isBusy}
            onClick={() => save('png', () => pngOf(first))}
          >
            Save as picture
          </Button>
          <Button
            disabled={isBusy}
            onClick={() => save('svg', async () => new Blob([await svgOf(first)], { type: 'image/svg+xml' }))}
          >
            Save as SVG
          </Button>
        </>
      )}
      <span role="status" className={styles.said}>
        {saidOf(doing, of)}
      </span>
      {doing.kind === 'printing' && <PrintPages pages={pages.pages} onDone={done} />}
    </>
  );
}

function saidOf(doing: Doing, of: string): string {
  if (doing.kind === 'making') return 'The file is being made.';
  return doing.kind === 'said' && doing.of === of ? doing.text : '';
}
