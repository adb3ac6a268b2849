import { type ReactNode, useMemo } from 'react';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { type PrintedPages, printedOpponent, printedPages, type SheetKind } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { useScreen } from '../play/screen-state.ts';
import { SearchLine } from '../reads/search-line.tsx';
import { FileTools } from './file-tools.tsx';
import { PageView } from './page-view.tsx';
import { progressWords } from './progress-words.ts';
import { opponentOnSheet, playsOnSheet } from './sheet-plays.ts';
import { type SheetQuestion, sheetQuestion } from './sheet-question.ts';
import styles from './sheets-panel.module.css';
import { useSheets, type WorthsSearch } from './sheets-state.ts';
import type { TeachPanelProps } from './teach-panel.ts';
import shared from './tools.module.css';
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
        <div className={shared.choices}>
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
            <label className={shared.tick}>
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
      <div className={shared.tools}>
        <FileTools
          pages={pages}
          about={kind === 'opponent' ? question.about : kind === 'book' || kind === 'cards' ? 'playbook' : play.name}
        />
        {search.kind === 'finding' && <Button onClick={stop}>Stop trying</Button>}
        {search.kind !== 'finding' && !isWhole && <Button onClick={find}>Go on trying</Button>}
      </div>
      <SearchLine
        label="How far the trials behind the pages are"
        words={progressWords(search)}
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

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}
