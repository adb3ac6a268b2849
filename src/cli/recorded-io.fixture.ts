import type { Io } from './io.ts';
import { run } from './run.ts';

/** A shell that keeps what it is told, with the real bundled threads: the test run builds them first. */
export interface RecordedIo {
  readonly io: Io;
  readonly said: () => { readonly out: string; readonly err: string };
}

export function recordedIo(more: Partial<Io> = {}): RecordedIo {
  let [out, err] = ['', ''];
  const io: Io = {
    program: 'sliderule',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    progressStream: null,
    signal: new AbortController().signal,
    worker: new URL('../../dist/trial-worker.js', import.meta.url),
    app: new URL('./no-such-folder/', import.meta.url),
    showInBrowser: () => undefined,
    ...more,
  };
  return { io, said: () => ({ out, err }) };
}

/** What a command line says and ends with. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export async function runRecorded(args: readonly string[], more: Partial<Io> = {}): Promise<Ran> {
  const { io, said } = recordedIo(more);
  const code = await run(args, io);
  return { code, ...said() };
}
