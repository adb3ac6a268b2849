import { ArrowDown01, ClipboardPaste, Ellipsis, FileDown, FileUp, Plus } from 'lucide-react';
import { type ReactNode, useRef, useState } from 'react';
import { limits, type Team } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { downloadText } from '../shell/download-text.ts';
import { sortByNumber } from './roster-edits.ts';
import styles from './roster-view.module.css';
import { decodeTable, rosterCsv } from './table-text.ts';

export interface RosterToolsProps {
  readonly isPhone: boolean;
  readonly onAdd: () => void;
  /** Opens the window in which a table is taken in, with this text in it. */
  readonly onTable: (text: string) => void;
}

/** Ways into the roster and out of it: one man, a table, a file. */
export function RosterTools({ isPhone, onAdd, onTable }: RosterToolsProps): ReactNode {
  const { store } = useDesk();
  const { team } = usePlaybook();
  const file = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<string>();
  const open = async (chosen: File | undefined): Promise<void> => {
    setProblem(undefined);
    if (chosen === undefined) return;
    if (chosen.size > limits.bytes) {
      setProblem(`${chosen.name} is too large for a roster.`);
      return;
    }
    try {
      onTable(decodeTable(new Uint8Array(await chosen.arrayBuffer())));
    } catch {
      setProblem(`${chosen.name} could not be read. Choose it again, or copy its cells and paste them.`);
    }
  };
  const isEmpty = team.roster.length === 0;
  const openFile = (): void => file.current?.click();
  const saveFile = (): void => saveCsv(team);
  const sort = (): void => {
    store.edit('sort by number', sortByNumber);
  };
  return (
    <>
      <Button icon={<Plus aria-hidden="true" />} disabled={team.roster.length >= limits.players} onClick={onAdd}>
        Add a man
      </Button>
      <Button icon={<ClipboardPaste aria-hidden="true" />} onClick={() => onTable('')}>
        Paste a table
      </Button>
      {isPhone ? (
        <Menu
          trigger={<Button aria-label="More for the roster" icon={<Ellipsis aria-hidden="true" />} />}
          items={[
            { text: 'Open a CSV file', onChoose: openFile },
            { text: 'Save as a CSV file, with names', onChoose: saveFile, disabled: isEmpty },
            { text: 'Sort by number', onChoose: sort, disabled: isEmpty },
          ]}
        />
      ) : (
        <>
          <Button icon={<FileUp aria-hidden="true" />} onClick={openFile}>
            Open CSV
          </Button>
          <Button
            icon={<FileDown aria-hidden="true" />}
            disabled={isEmpty}
            title="The whole roster, with names, for your spreadsheet"
            onClick={saveFile}
          >
            Save CSV
          </Button>
          <Button icon={<ArrowDown01 aria-hidden="true" />} disabled={isEmpty} onClick={sort}>
            By number
          </Button>
        </>
      )}
      <input
        ref={file}
        className="spoken"
        type="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        aria-label="A CSV file with a roster"
        tabIndex={-1}
        onChange={(event) => {
          void open(event.target.files?.[0]);
          // The same file may be chosen again after it was mended.
          event.target.value = '';
        }}
      />
      {problem !== undefined && (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
    </>
  );
}

function saveCsv({ name, roster }: Team): void {
  const stem = name.trim().replace(/[^\p{L}\p{N}]+/gu, '-') || 'team';
  downloadText(`${stem}-roster.csv`, rosterCsv(roster), 'text/csv');
}
