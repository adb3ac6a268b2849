import { FileDown, Image as ImageIcon, Printer } from 'lucide-react';
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { type PrintedPages, printedOpponent, printedPages, type SheetKind } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { useScreen } from '../play/screen-state.ts';
import { SearchLine } from '../reads/search-line.tsx';
import { downloadFile } from '../shell/download-file.ts';
import { pageFileName } from './page-file-name.ts';
import { pdfOf, pngOf, svgOf } from './page-files.ts';
import { PageView } from './page-view.tsx';
import { PrintPages } from './print-pages.tsx';
import { opponentOnSheet, playsOnSheet } from './sheet-plays.ts';
import { type SheetQuestion, sheetQuestion } from './sheet-question.ts';
import styles from './sheets-panel.module.css';
import { useSheets, type WorthsSearch } from './sheets-state.ts';
import type { TeachPanelProps } from './teach-panel.ts';
import { useWorths } from './use-worths.ts';

const kinds: readonly { readonly value: SheetKind; readonly text: string }[] = [
  { value: 'sheet', text: 'Play sheet' },
  { value: 'spots', text: 'Play sheet and a page for each man' },
  { value: 'cards', text: 'Cards for bench and wrist' },
  { value: 'opponent', text: 'Page of an opponent' },
  { value: 'book', text: 'Whole playbook' },
];

/** Pages to pin up, hand out and wear on the wrist, as they come out of the printer. */
export default function SheetsPanel({ playbook, play }: TeachPanelProps): ReactNode {
  const sheets = useSheets();
  const { kind, paper, withNames, opponent, change } = sheets;
  const side = useScreen((state) => state.side);
  const chosen = useScreen((state) => state.chosen);
  const changeScreen = useScreen((state) => state.change);
  const against = opponentOnSheet(playbook, opponent);
  const question = useMemo(
    () => sheetQuestion(playbook, { kind, play: play.id, opponent: against?.id, side, chosen }),
    [playbook, kind, play.id, against?.id, side, chosen],
  );
  const opponents = playbook.opponents ?? [];
  return (
    <div className={styles.sheets}>
      <section className={panel.panel} aria-label="What goes on paper">
        <div className={styles.choices}>
          <PickList
            label="What goes on paper"
            value={kind}
            options={kinds}
            onChange={(value) => change({ kind: kinds.find((one) => one.value === value)?.value ?? 'sheet' })}
          />
          {kind === 'opponent' && opponents.length > 0 && (
            <PickList
              label="Opponent"
              value={against?.id ?? ''}
              options={opponents.map(({ id, name }) => ({ value: id, text: name }))}
              onChange={(id) => change({ opponent: id })}
            />
          )}
          <PickList
            label="Drawn for"
            value={side}
            options={[
              { value: 'right', text: 'the right side' },
              { value: 'left', text: 'the left side' },
            ]}
            onChange={(value) => changeScreen({ side: value === 'left' ? 'left' : 'right' })}
          />
          <PickList
            label="Paper"
            value={paper}
            options={[
              { value: 'letter', text: 'Letter' },
              { value: 'a4', text: 'A4' },
            ]}
            onChange={(value) => change({ paper: value === 'a4' ? 'a4' : 'letter' })}
          />
          {kind !== 'opponent' && (
            <label className={styles.tick}>
              <input
                type="checkbox"
                checked={withNames}
                onChange={(event) => change({ withNames: event.target.checked })}
              />
              Names beside the numbers
            </label>
          )}
        </div>
        {question.kind === 'nothing' ? (
          <p className={panel.quiet}>{question.reason}</p>
        ) : (
          <Sheets playbook={playbook} play={play} question={question} />
        )}
      </section>
    </div>
  );
}

function Sheets({
  playbook,
  play,
  question,
}: {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
  readonly question: Extract<SheetQuestion, { kind: 'asked' }>;
}): ReactNode {
  const { kind, paper, withNames, search } = useSheets();
  const { found, find, stop } = useWorths(playbook, question.asked);
  const printed = useMemo(
    () => playsOnSheet(playbook, question, { paper, withNames, kind }, found),
    [playbook, question, paper, withNames, kind, found],
  );
  const pages = useMemo(
    (): PrintedPages =>
      printed.kind === 'opponent' ? printedOpponent(printed.content) : printedPages(printed.kind, printed.plays),
    [printed],
  );
  const isWhole = found.every((one) => one !== undefined);
  return (
    <>
      {question.leftOut.length > 0 && (
        <p className={panel.quiet}>Left out, for they have something to fix first: {question.leftOut.join(', ')}.</p>
      )}
      <div className={styles.tools}>
        <FileTools
          pages={pages}
          about={kind === 'opponent' ? question.about : kind === 'book' || kind === 'cards' ? 'playbook' : play.name}
        />
        {search.kind === 'finding' && <Button onClick={stop}>Stop trying</Button>}
        {search.kind !== 'finding' && !isWhole && <Button onClick={find}>Go on trying</Button>}
      </div>
      <SearchLine
        label="How far the trials behind the pages are"
        progress={search.kind === 'finding' ? search : undefined}
        said={saidOf(search, isWhole)}
      />
      <PageView pages={pages.pages} />
    </>
  );
}

function saidOf(search: WorthsSearch, isWhole: boolean): string {
  switch (search.kind) {
    case 'idle':
      return isWhole ? '' : 'What is not tried yet is left out of the pages.';
    case 'finding':
      return 'What it makes against each scheme is being tried; the page fills in by itself.';
    case 'stopped':
      return 'Stopped. What is not tried yet is left out of the pages.';
    case 'failed':
      return `That did not work: ${search.reason}. Go on trying to try once more.`;
    default:
      return exhaustive(search);
  }
}

type Doing = { readonly kind: 'idle' | 'printing' | 'making' } | { readonly kind: 'said'; readonly text: string };

/** What can be done with pages: to the printer, or as a file. */
export function FileTools({ pages, about }: { readonly pages: PrintedPages; readonly about: string }): ReactNode {
  const [doing, setDoing] = useState<Doing>({ kind: 'idle' });
  const done = useCallback(() => setDoing({ kind: 'idle' }), []);
  const save = (ending: string, make: () => Promise<Blob>): void => {
    setDoing({ kind: 'making' });
    const name = pageFileName(about, pages.title, ending);
    make().then(
      (file) => {
        downloadFile(name, file);
        setDoing({ kind: 'said', text: `Saved: ${name}.` });
      },
      (error: unknown) => {
        const reason = error instanceof Error ? error.message : String(error);
        setDoing({ kind: 'said', text: `Not saved: ${reason}. Print it, or try once more.` });
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
        {doing.kind === 'said' ? doing.text : doing.kind === 'making' ? 'The file is being made.' : ''}
      </span>
      {doing.kind === 'printing' && <PrintPages pages={pages.pages} onDone={done} />}
    </>
  );
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}
