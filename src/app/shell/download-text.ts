import { downloadFile } from './download-file.ts';

/** Hands a text to the browser as a file to keep. `type` is its media type. */
export function downloadText(fileName: string, text: string, type = 'application/json'): void {
  downloadFile(fileName, new Blob([text], { type }));
}
