import { build } from 'esbuild';

/**
 * The engine, bundled before it is loaded. Under the test runner every imported name is looked up through a getter, which makes a trial
 * three times as slow; these tests run thousands of them.
 */
export const engine: typeof import('../../src/engine/index.ts') = await loadBundle();

async function loadBundle(): Promise<typeof import('../../src/engine/index.ts')> {
  const { outputFiles } = await build({
    entryPoints: ['src/engine/index.ts'],
    bundle: true,
    format: 'esm',
    write: false,
  });
  const code = Buffer.from(outputFiles[0].text).toString('base64');
  return import(/* @vite-ignore */ `data:text/javascript;base64,${code}`);
}
