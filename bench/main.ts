// Measures the engine's speed and memory, prints the page and writes it to docs/bench.md: npm run bench
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { arch, cpus } from 'node:os';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { measureAllocation } from './allocation.ts';
import { measureBodies } from './body-speed.ts';
import { measureChances, readyHouse, runHouse } from './chance-speed.ts';
import { benchPage } from './page.ts';
import { replacePart } from './page-section.ts';
import { measurePaper } from './paper-speed.ts';
import { profile } from './profile.ts';
import { measureReads } from './reads-speed.ts';
import { measureWorkers, runTwoWorkers } from './worker-speed.ts';

/** Chances of each matchup in one repeat, about a third of a usual test's, so that the runtime's compiler has done its work; and repeats. */
const trials = 30;
const repeats = 5;
/** Chances of each matchup in the run that only measures memory, about a usual test's. */
const memoryTrials = 100;

/** Man-ups a scheme of the first answer about reads in the workbench, and of the one that is taught from. */
const firstTrials = 9;
const usualTrials = 200;

const pagePath = 'docs/bench.md';

const task = process.argv[2];
if (task === 'memory-alone') {
  runHouse(readyHouse(), 0, memoryTrials);
  console.log(peakMemory());
} else if (task === 'memory-two') {
  await runTwoWorkers(memoryTrials);
  console.log(peakMemory());
} else {
  await bench();
}

async function bench(): Promise<void> {
  const house = readyHouse();
  const chances = measureChances(house, trials, repeats);
  const allocation = measureAllocation(house, 5);
  const bodies = measureBodies(40, repeats);
  const shares = await profile(() => void runHouse(house, 0, trials), bundlePath());
  const workers = await measureWorkers(trials, repeats);
  const reads = await measureReads(firstTrials, usualTrials);
  const paper = measurePaper();
  const page = benchPage({
    machine: machineWords(),
    chances,
    workers,
    reads,
    paper,
    peakAlone: peakOf('memory-alone'),
    peakTwo: peakOf('memory-two'),
    allocation,
    bodies,
    shares,
  });
  mkdirSync('docs', { recursive: true });
  const before = existsSync(pagePath) ? readFileSync(pagePath, 'utf8') : '';
  writeFileSync(pagePath, replacePart(before, 'engine', page));
  console.log(page);
}

/** Peak memory of a process of its own, bytes, so that the other measurements do not count. */
function peakOf(task: 'memory-alone' | 'memory-two'): number {
  const run = spawnSync(process.execPath, [bundlePath(), task], { encoding: 'utf8' });
  if (run.status !== 0) throw new Error(`${task} failed: ${run.stderr}`);
  return Number(run.stdout);
}

/** Kilobytes from the system, as bytes. */
function peakMemory(): number {
  return process.resourceUsage().maxRSS * 1024;
}

function bundlePath(): string {
  return relative(process.cwd(), fileURLToPath(import.meta.url));
}

/** The machine in general words: nothing that would tell one from its like. */
function machineWords(): string {
  const [first] = cpus();
  const family = first?.model.replace(/\s+/g, ' ').trim() || 'unknown CPU';
  return `Machine: ${cpus().length} cores of ${family} (${arch()}), shared with other work, Node ${process.versions.node.split('.')[0]}.`;
}
