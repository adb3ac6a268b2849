// Measures the engine's speed and memory, prints the page and writes it to docs/bench.md: npm run bench
import { mkdirSync, writeFileSync } from 'node:fs';
import { arch, cpus } from 'node:os';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { measureAllocation } from './allocation.ts';
import { measureBodies } from './body-speed.ts';
import { measureChances, readyHouse, runHouse } from './chance-speed.ts';
import { benchPage } from './page.ts';
import { profile } from './profile.ts';
import { measureWorkers } from './worker-speed.ts';

/** Chances of each matchup in one repeat, and repeats. */
const trials = 20;
const repeats = 7;

const house = readyHouse();
const chances = measureChances(house, trials, repeats);
const peakAlone = peakMemory();
const allocation = measureAllocation(house, 15);
const bodies = measureBodies(60, repeats);
const shares = await profile(() => void runHouse(house, 0, 3 * trials), bundlePath());
const workers = await measureWorkers(2 * trials, repeats);
const page = benchPage({
  machine: machineWords(),
  chances,
  workers,
  peakAlone,
  peak: peakMemory(),
  allocation,
  bodies,
  shares,
});
mkdirSync('docs', { recursive: true });
writeFileSync('docs/bench.md', page);
console.log(page);

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
