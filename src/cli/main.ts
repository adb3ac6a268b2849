import { exitCodes } from './failure.ts';
import { programName, programVariable } from './program-name.ts';
import { run } from './run.ts';
import { showInBrowser } from './show-in-browser.ts';

const stop = new AbortController();

process.on('SIGINT', () => {
  // The second press must work even when something hangs.
  if (stop.signal.aborted) process.exit(exitCodes.interrupted);
  stop.abort();
});

for (const stream of [process.stdout, process.stderr]) {
  // Whoever reads has seen enough (`| head`): that is no failure of ours.
  stream.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? exitCodes.fine : exitCodes.badUse);
  });
}

process.exitCode = await run(process.argv.slice(2), {
  program: programName(process.env[programVariable], process.argv[1] ?? '', process.cwd()),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  progressStream: process.stderr.isTTY ? process.stderr : null,
  signal: stop.signal,
  // Built beside this file.
  worker: new URL('./trial-worker.js', import.meta.url),
  app: new URL('./app/', import.meta.url),
  showInBrowser,
});
