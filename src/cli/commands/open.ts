import { once } from 'node:events';
import { type AddCommand, examples } from '../command-line.ts';
import { wholeNumber } from '../conditions.ts';
import { badUse } from '../failure.ts';
import type { Io } from '../io.ts';
import { readAppFiles } from '../serving/app-files.ts';
import { addressOf, serveApp } from '../serving/serve-app.ts';

/** Always the same, because a browser keeps what is typed by address, and the port is part of it. */
const usualPort = '7365';

interface RawOptions {
  readonly port: string;
  readonly browser: boolean;
}

/** `sliderule open`: shows the workbench in the browser until it is stopped. */
export const addOpen: AddCommand = (program, io) => {
  program
    .command('open')
    .description('open the workbench in the browser, until Ctrl-C')
    .option('--port <number>', 'port on this machine to serve it at; 0 for any that is free', usualPort)
    .option('--no-browser', 'only print the address')
    .addHelpText('after', examples(io, ['sliderule open', 'sliderule open --port 8123 --no-browser']))
    .action((raw: RawOptions) => open(io, wholeNumber('--port', raw.port, 0, 65_535), raw.browser));
};

async function open(io: Io, port: number, browser: boolean): Promise<void> {
  const files = readAppFiles(io.app);
  if (files === undefined)
    throw badUse('the workbench is not built yet. To build it, in the folder of the program: npm run build');
  const served = await serveApp(files, port);
  if (served.kind === 'refused') throw badUse(`${served.reason}. Name another port: ${io.program} open --port 8123`);
  if (served.kind === 'already') {
    const note = served.sameBuild
      ? ''
      : 'It is of another build: to have this one, end that with Ctrl-C and open it again.\n';
    io.out(`The workbench is open already: ${served.address}\n${note}`);
    if (browser) io.showInBrowser(served.address);
    return;
  }
  if (port !== 0 && served.port !== port) {
    io.err(
      `Another program has port ${port}. What was written at ${addressOf(port)} stays there and is not seen here.\n`,
    );
  }
  io.out(
    `The workbench: ${served.address}\nWhat you write in it stays in this browser, on this machine. Ctrl-C ends it.\n`,
  );
  if (browser) io.showInBrowser(served.address);
  if (!io.signal.aborted) await once(io.signal, 'abort');
  await served.close();
}
