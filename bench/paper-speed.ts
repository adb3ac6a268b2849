import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoText } from '../src/playbook/index.ts';
import { median } from './measure.ts';

/** How long it takes from the command to the file, wall-clock seconds. */
export interface PaperSpeed {
  readonly what: string;
  readonly seconds: number;
  /** Seconds that were asked for. */
  readonly target: number;
}

const kinds = [
  { what: 'play sheet as PDF', words: ['--play', 'lantern', '--no-worths'], repeats: 5, target: 1 },
  { what: 'whole playbook as PDF, nothing tried', words: ['--book', '--no-worths'], repeats: 3, target: 10 },
  { what: 'whole playbook as PDF, each play tried against twelve schemes', words: ['--book'], repeats: 1, target: 10 },
] as const;

/** Pages of the demo from the shell, a process each: with the start of the runtime and the reading of the file. */
export function measurePaper(): readonly PaperSpeed[] {
  const folder = mkdtempSync(join(tmpdir(), 'paper-speed-'));
  try {
    const file = join(folder, 'playbook.json');
    writeFileSync(file, demoText);
    return kinds.map(({ what, words, repeats, target }) => ({
      what,
      target,
      seconds: median(
        Array.from({ length: repeats }, () => secondsOf([...words, '--out', join(folder, 'page.pdf')], file)),
      ),
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function secondsOf(words: readonly string[], file: string): number {
  rmSync(words.at(-1)!, { force: true });
  const began = performance.now();
  const run = spawnSync(process.execPath, ['dist/sliderule.js', 'sheet', file, ...words], { encoding: 'utf8' });
  if (run.status !== 0) throw new Error(`sheet failed: ${run.stderr}`);
  return (performance.now() - began) / 1e3;
}
