// Fits free numbers of the chance to the 60 s column of the pro timing table and prints the best that it found:
// npm run fit [-- --trials 720 --evaluations 60 setUpSeconds scatterScale ...]
import { parseArgs } from 'node:util';
import { type ChanceSettings, defaultChanceSettings } from '../src/engine/index.ts';
import { fitLoss, type Loss } from './validation/fit-loss.ts';
import { type Knob, patternSearch } from './validation/pattern-search.ts';

type Part = keyof ChanceSettings;

/** A free number: which part of the settings it stands in, its first step and its bounds. Where it begins is the engine's default. */
interface Free {
  readonly part: Part;
  readonly step: number;
  readonly low: number;
  readonly high: number;
}

/** Everything that may be fitted; `usual` is what is fitted when nothing is named. */
const free: Readonly<Record<string, Free>> = {
  setUpSeconds: { part: 'parameters', step: 2, low: 2, high: 25 },
  probeShare: { part: 'parameters', step: 0.03, low: 0.03, high: 0.3 },
  probeMargin: { part: 'parameters', step: 0.05, low: 0, high: 0.4 },
  setUpPatience: { part: 'parameters', step: 2, low: 2, high: 30 },
  continuationTop: { part: 'parameters', step: 0.04, low: 0, high: 0.8 },
  continuationRise: { part: 'parameters', step: 2, low: 0.5, high: 40 },
  continuationDead: { part: 'parameters', step: 1, low: 0, high: 10 },
  keptShare: { part: 'parameters', step: 0.1, low: 0, high: 0.9 },
  playMargin: { part: 'parameters', step: 0.015, low: 0, high: 0.1 },
  greedyMargin: { part: 'parameters', step: 0.01, low: -0.05, high: 0.2 },
  openFloor: { part: 'parameters', step: 0.05, low: 0.2, high: 0.98 },
  passFloor: { part: 'parameters', step: 0.05, low: 0.2, high: 0.98 },
  passPatience: { part: 'parameters', step: 0.3, low: 0.1, high: 5 },
  stallPatience: { part: 'parameters', step: 0.5, low: 0.5, high: 8 },
  swingTempo: { part: 'parameters', step: 0.3, low: 0.1, high: 4 },
  stripRate: { part: 'parameters', step: 0.03, low: 0, high: 0.5 },
  scatterScale: { part: 'shotParameters', step: 0.04, low: 1.3, high: 1.6 },
  keeperScale: { part: 'shotParameters', step: 0.02, low: 0.78, high: 0.9 },
  touchRate: { part: 'laneParameters', step: 2, low: 1, high: 40 },
};
const usual = [
  'probeShare',
  'continuationTop',
  'continuationRise',
  'keptShare',
  'scatterScale',
  'keeperScale',
  'touchRate',
];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { trials: { type: 'string', default: '720' }, evaluations: { type: 'string', default: '60' } },
});
const trials = Number(values.trials);
const names = positionals.length > 0 ? positionals : usual;
const knobs = names.map(knobOf);

const search = patternSearch(
  knobs,
  (tried) => report(tried, fitLoss(settingsOf(tried), trials)),
  Number(values.evaluations),
);
console.log(`\nbest of ${search.evaluations}, ${trials} chances each:`);
names.forEach((name, index) => {
  console.log(`  ${name.padEnd(18)} ${knobs[index]!.start} -> ${Number(search.best[index]!.toPrecision(4))}`);
});
for (const { name, theirs, ours, errors } of fitLoss(settingsOf(search.best), trials).misses) {
  console.log(`  ${name.padEnd(20)} theirs ${theirs}, ours ${ours.toFixed(3)}: ${errors.toFixed(1)} standard errors`);
}

function knobOf(name: string): Knob {
  const found = free[name];
  if (found === undefined) throw new RangeError(`unknown number: ${name} (expected ${Object.keys(free).join(', ')})`);
  const { part, step, low, high } = found;
  const start = (defaultChanceSettings[part] as unknown as Record<string, number>)[name]!;
  return { name, start, step, low, high };
}

/** The engine's settings with the tried numbers in their places. */
function settingsOf(tried: readonly number[]): ChanceSettings {
  const settings: Record<Part, Record<string, number>> = {
    parameters: { ...defaultChanceSettings.parameters },
    shotParameters: { ...defaultChanceSettings.shotParameters },
    laneParameters: { ...defaultChanceSettings.laneParameters },
  };
  names.forEach((name, index) => {
    settings[free[name]!.part][name] = tried[index]!;
  });
  return settings as unknown as ChanceSettings;
}

/** Print one evaluation, and pass its loss on. */
function report(tried: readonly number[], { total, misses }: Loss): number {
  const at = names.map((name, index) => `${name} ${Number(tried[index]!.toPrecision(4))}`).join(', ');
  const errors = misses.map((miss) => miss.errors.toFixed(1)).join(' ');
  console.log(`${total.toFixed(1).padStart(8)}  [${errors}]  ${at}`);
  return total;
}
