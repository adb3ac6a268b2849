import type { Allocation } from './allocation.ts';
import type { BodySpeed } from './body-speed.ts';
import type { ChanceSpeed } from './chance-speed.ts';
import type { PaperSpeed } from './paper-speed.ts';
import type { ProfileShare } from './profile.ts';
import type { ReadsSpeed } from './reads-speed.ts';
import type { WorkerSpeed } from './worker-speed.ts';

export interface BenchResult {
  readonly machine: string;
  readonly chances: ChanceSpeed;
  readonly workers: WorkerSpeed;
  /** Peak resident memory of a process that only runs trials, bytes: by itself, and with two worker threads. */
  readonly peakAlone: number;
  readonly peakTwo: number;
  readonly allocation: Allocation;
  readonly reads: readonly ReadsSpeed[];
  readonly paper: readonly PaperSpeed[];
  readonly bodies: readonly BodySpeed[];
  readonly shares: readonly ProfileShare[];
}

/** What docs/bench.md and the terminal show. */
export function benchPage(result: BenchResult): string {
  const { chances, workers, allocation } = result;
  return `${[
    '# Speed',
    `Written by \`npm run bench\`, not by hand. ${result.machine} Inputs are the demo's plays against the nine five-man schemes, 60 s of penalty, fixed seed; each figure is the median of several repeats in one run. Figures in CPU seconds hardly feel other work on the machine; the two-worker ratio does: with two cores to itself it is what the CPU seconds leave of 2.`,
    table(
      ['what', 'here', 'target'],
      [
        [
          'ten-second trials a second, one core',
          `${chances.tenSecondTrials.toFixed(0)} (best repeat ${chances.best.toFixed(0)})`,
          '4000',
        ],
        ['mean chance', `${chances.length.toFixed(1)} s simulated in ${(1e3 * chances.cpu).toFixed(2)} ms`, ''],
        ['two workers against one, wall clock', `${workers.ratio.toFixed(2)} times as fast`, '1.7'],
        ['the same work in CPU seconds', `${workers.cpuRatio.toFixed(2)} times as many with two`, '1.00'],
        ['peak memory, one thread', megabytes(result.peakAlone), '300 MB'],
        ['peak memory, two worker threads', megabytes(result.peakTwo), '300 MB'],
        [
          'heap growth in 10,000 steps',
          `${(allocation.bytesPerTenThousandSteps / 1024).toFixed(0)} kB, ${allocation.bytesPerChance.toFixed(0)} bytes a chance of ${allocation.chanceSteps.toFixed(0)} steps`,
          'nothing in the step',
        ],
      ],
    ),
    '## Reads',
    'What the man who starts a play should look for, against the nine schemes, wall clock; the threads have compiled the play before. Man-ups are those against each scheme that are learnt from; as many others are measured in.',
    table(
      ['play, man', 'man-ups', 'threads', 'seconds', 'target'],
      result.reads.map(({ play, carrier, trials, threads, seconds }) => [
        `${play}, ${carrier}`,
        String(trials),
        String(threads),
        seconds.toFixed(1),
        threads === 1 ? '3' : '60',
      ]),
    ),
    '## Paper',
    "From the command to the file, the start of the runtime included, wall clock; the demo's plays.",
    table(
      ['what', 'seconds', 'target'],
      result.paper.map(({ what, seconds, target }) => [what, seconds.toFixed(2), String(target)]),
    ),
    '## The step of the bodies',
    'Thirteen men, 400 steps, four places each. The object version comes to the same places; the library arrives by its own law.',
    table(
      ['version', 'million man-steps a CPU second', 'ratio'],
      result.bodies.map(({ name, speed, ratio }) => [name, speed.toFixed(1), ratio.toFixed(2)]),
    ),
    '## Where the time goes',
    "Samples of the runtime's profiler over the same trials, by source file; what is inlined counts for where it was written as far as the profiler knows. [docs/models/speed.md](models/speed.md) reads them.",
    table(
      ['file', 'share', 'busiest functions'],
      result.shares
        .filter(({ share }) => share >= 0.01)
        .map(({ file, share, functions }) => [file, percent(share), busiest(functions)]),
    ),
  ].join('\n\n')}\n`;
}

function busiest(functions: ProfileShare['functions']): string {
  return functions
    .filter(({ share }) => share >= 0.005)
    .slice(0, 4)
    .map(({ name, share }) => `${name} ${percent(share)}`)
    .join(', ');
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function megabytes(bytes: number): string {
  return `${(bytes / 2 ** 20).toFixed(0)} MB`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
