import { type ParseResult, parseUnfinished } from '../../playbook/index.ts';

/** Reads a playbook's text in a thread of its own, so that the page stays in use. Rejects when it is stopped before it is done. */
export function parseBeside(text: string, stop: AbortSignal): Promise<ParseResult> {
  return new Promise((resolve, reject) => {
    const thread = new Worker(new URL('./reading-thread.ts', import.meta.url), { type: 'module' });
    const end = (finish: () => void): void => {
      thread.terminate();
      stop.removeEventListener('abort', onStop);
      finish();
    };
    const onStop = (): void => end(() => reject(stop.reason));
    stop.addEventListener('abort', onStop);
    thread.onmessage = ({ data }: MessageEvent<ParseResult>) => end(() => resolve(data));
    // Where no thread starts, a page that stands still for a moment is better than a file that cannot be opened.
    thread.onerror = () => end(() => resolve(parseUnfinished(text)));
    thread.postMessage(text);
  });
}
