import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';

/** Milliseconds in which the workbench is built and served even on a busy machine, and ends. */
const startPatience = 180_000;
const endPatience = 10_000;

/** The workbench, built and served as `npm start` does it. */
export interface StartedApp {
  /** With a slash at the end. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Builds the workbench when its sources changed, and serves it at any free port. Throws an Error with all that was printed when it fails. */
export async function startApp(): Promise<StartedApp> {
  const child = spawn(process.execPath, ['scripts/start.mjs', 'open', '--port', '0', '--no-browser'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  try {
    return { address: await printedAddress(child), close: () => end(child) };
  } catch (error) {
    await end(child);
    throw error;
  }
}

function printedAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    const late = setTimeout(() => reject(new Error(`the workbench did not start in time:\n${printed}`)), startPatience);
    const read = (text: string) => {
      printed += text;
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0];
      if (address === undefined) return;
      clearTimeout(late);
      resolve(address);
    };
    for (const stream of [child.stdout, child.stderr]) stream?.setEncoding('utf8').on('data', read);
    child.once('close', (code) => {
      clearTimeout(late);
      reject(new Error(`the workbench did not start (exit code ${code}):\n${printed}`));
    });
  });
}

async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const late = setTimeout(() => child.kill('SIGKILL'), endPatience);
  child.kill('SIGTERM');
  await once(child, 'close');
  clearTimeout(late);
}
