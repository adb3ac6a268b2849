import { spawnSync } from 'node:child_process';

/**
 * Builds the Node bundles once, so that tests of the worker pool and the command line run the real thing.
 * A failed build leaves no bundle: the tests that need one fail and say so, the others still run.
 */
export default function buildBundles(): void {
  spawnSync(process.execPath, ['scripts/build.mjs', 'node'], { stdio: 'inherit' });
}
