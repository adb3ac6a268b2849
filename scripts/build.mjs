import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { ensureInstalled } from './ensure-installed.mjs';

const targets = [
  { entry: 'src/cli/main.ts', outfile: 'dist/sliderule.js', executable: true },
  { entry: 'src/worker/trial-worker.ts', outfile: 'dist/trial-worker.js' },
];

/** Builds everything that runs in Node. Says which entry does not exist yet; throws when one does not compile. */
export async function buildAll() {
  for (const { entry, outfile, executable } of targets) {
    const built = await bundle(entry, outfile, { executable });
    if (!built) console.log(`not built: ${outfile} (${entry} does not exist yet)`);
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  ensureInstalled();
  await buildAll().catch(() => process.exit(1));
}
