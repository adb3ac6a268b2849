import { ClipboardPaste, FileDown, FileUp, Plus } from 'lucide-react';
import { type ReactNode, useRef } from 'react';
import { limits, type Playbook } from '../../playbook/index.ts';
import { writeChanceTable } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { downloadText } from '../shell/download-text.ts';
import { decodeTable, tableCsv } from '../team/table-text.ts';
import { newOne, useSeason } from './season-state.ts';

/** Ways into the season and out of it: one chance, a table, a file. */
export function SeasonTools({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const change = useSeason((state) => state.change);
  const file = useRef<HTMLInputElement>(null);
  const chances = playbook.chances ?? [];
  const open = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    if (chosen.size > limits.bytes) {
      change({ said: `${chosen.name} is too large for a season.` });
      return;
    }
    try {
      change({ table: decodeTable(new Uint8Array(await chosen.arrayBuffer())), said: '' });
    } catch {
      change({ said: `${chosen.name} could not be read. Choose it again, or copy its cells and paste them.` });
    }
  };
  const save = (): void => {
    downloadText('season.csv', tableCsv(writeChanceTable(chances)), 'text/csv');
    change({
      said: 'Saved: season.csv. It holds no marks on the field and no schemes that were expected: the playbook file, saved in Playbook, does.',
    });
  };
  return (
    <div className={panel.tools}>
      <Button tone="main" icon={<Plus aria-hidden="true" />} onClick={() => change({ writing: newOne, said: '' })}>
        Write down a chance
      </Button>
      <Button icon={<FileUp aria-hidden="true" />} onClick={() => file.current?.click()}>
        Open CSV
      </Button>
      <Button icon={<ClipboardPaste aria-hidden="true" />} onClick={() => change({ table: '', said: '' })}>
        Paste a table
      </Button>
      <Button icon={<FileDown aria-hidden="true" />} disabled={chances.length === 0} onClick={save}>
        Save CSV
      </Button>
      <input
        ref={file}
        className="spoken"
        type="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        aria-label="A CSV file with chances"
        tabIndex={-1}
        onChange={(event) => {
          void open(event.target.files?.[0]);
          // The same file may be chosen again after it was mended.
          event.target.value = '';
        }}
      />
    </div>
  );
}
