import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { ensureInstalled } from './ensure-installed.mjs';

const targets = [
  { entry: 'src/cli/main.ts', outfile: 'dist/sliderule.js', executable: true },
  { entry: 'src/worker/trial-worker.ts', outfile: 'dist/trial-worker.js' },
];

/** Builds everything that runs in Node and says what it could not build; false when something did not compile. */
export async function buildAll() {
  let compiled = true;
  for (const { entry, outfile, executable } of targets) {
    try {
      const built = await bundle(entry, outfile, { executable });
      if (!built) console.log(`not built: ${outfile} (${entry} does not exist yet)`);
    } catch {
      // esbuild has printed why.
      console.error(`not built: ${outfile} (${entry} does not compile)`);
      compiled = false;
    }
  }
  return compiled;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  ensureInstalled();
  if (!(await buildAll())) process.exitCode = 1;
}
