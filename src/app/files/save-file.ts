import type { PlaybookStore } from '../document/playbook-store.ts';
import { downloadText } from '../shell/download-text.ts';
import { playbookFileName } from './file-name.ts';

/** Saves the playbook as a file. With names it can come back changed and be merged. Gives the file's name. */
export function savePlaybookFile(store: PlaybookStore, options: { readonly names: boolean }): string {
  const fileName = playbookFileName(store.playbook.team.name, new Date(), options);
  downloadText(fileName, store.handOut(options));
  return fileName;
}
