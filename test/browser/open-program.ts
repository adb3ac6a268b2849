import { spawn } from 'node:child_process';
import { once } from 'node:events';

/** `sliderule open` as it was typed. */
export interface OpenedProgram {
  /** With a slash at the end, as it was printed. */
  readonly address: string;
  readonly printed: () => string;
  /** Presses Ctrl-C; the exit code. */
  readonly interrupt: () => Promise<number | null>;
  /** Ends it for sure, by its number. */
  readonly kill: () => void;
}

/** Runs `open` of a built program at a port, 0 for any that is free. Throws an Error with all that was printed when it ends instead. */
export async function openProgram(program = 'dist/sliderule.js', port = 0): Promise<OpenedProgram> {
  const child = spawn(process.execPath, [program, 'open', '--port', String(port), '--no-browser'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  const address = await new Promise<string>((resolve, reject) => {
    const read = (text: string) => {
      printed += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0];
      if (found !== undefined) resolve(found);
    };
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', read);
    child.once('close', () => reject(new Error(`ended at once: ${printed}`)));
  });
  return {
    address,
    printed: () => printed,
    interrupt: async () => {
      child.kill('SIGINT');
      const [code] = await once(child, 'close');
      return code;
    },
    kill: () => void child.kill('SIGKILL'),
  };
}
