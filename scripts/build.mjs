import { pathToFileURL } from 'node:url';
import { buildApp } from './build-app.mjs';
import { bundle } from './bundle.mjs';
import { ensureInstalled } from './ensure-installed.mjs';

const targets = [
  { entry: 'src/cli/main.ts', outfile: 'dist/sliderule.js', executable: true },
  { entry: 'src/worker/node/trial-worker.ts', outfile: 'dist/trial-worker.js' },
  // The program of a page that `clip` writes: the command line puts it into the page as it stands.
  { entry: 'src/clip/main.ts', outfile: 'dist/clip-page.js', inPage: true },
  // And that of a page that `quiz` writes.
  { entry: 'src/clip/quiz-main.ts', outfile: 'dist/quiz-page.js', inPage: true },
  // The program of the page that a browser makes a film in, for `clip` too.
  { entry: 'src/press/film-page.ts', outfile: 'dist/film-page.js', inPage: true },
];

/** Builds everything that runs in Node and says what it could not build; false when something did not compile. */
export async function buildNode() {
  let compiled = true;
  for (const { entry, outfile, ...kind } of targets) {
    try {
      const built = await bundle(entry, outfile, kind);
      if (!built) console.log(`not built: ${outfile} (${entry} does not exist yet)`);
    } catch {
      // esbuild has printed why.
      console.error(`not built: ${outfile} (${entry} does not compile)`);
      compiled = false;
    }
  }
  return compiled;
}

// `npm run build` builds all; the tests ask for what they need: node scripts/build.mjs node
if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  ensureInstalled();
  const [only] = process.argv.slice(2);
  const node = only === 'app' || (await buildNode());
  const app = only === 'node' || (await buildApp());
  if (!node || !app) process.exitCode = 1;
}
