import { defineConfig } from 'vitest/config';

const shared = {
  // Everywhere except the guards' known-bad files, which exist to fail.
  exclude: ['**/node_modules/**', 'dist/**', 'test/guards/bad/**'],
  // No test is timed. These bounds only end a hung one, on a slow and shared machine too.
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

/** Data in, data out: no clock, page, file or thread (ARCHITECTURE.md). */
const pure = ['src/engine', 'src/playbook', 'src/render'];

export default defineConfig({
  test: {
    globalSetup: ['test/build-bundles.ts'],
    reporters: ['default', 'json'],
    outputFile: { json: 'artifacts/test-results.json' },
    projects: [
      {
        test: {
          ...shared,
          name: 'behaviour',
          include: ['**/*.spec.{ts,tsx}'],
          exclude: [...shared.exclude, ...pure.map((layer) => `${layer}/**`)],
        },
      },
      // Pure layers keep nothing between two calls, so that one file's tests may use the modules that another's have loaded: a fifth of the time.
      { test: { ...shared, name: 'pure', include: pure.map((layer) => `${layer}/**/*.spec.ts`), isolate: false } },
      {
        test: {
          ...shared,
          name: 'laws',
          include: ['**/*.props.{ts,tsx}'],
          setupFiles: ['test/fix-seed.ts'],
          isolate: false,
        },
      },
      {
        test: {
          ...shared,
          name: 'browser',
          include: ['**/*.browser.ts'],
          globalSetup: ['test/browser/global-setup.ts'],
          // After the others and one file at a time: they share one browser, and a page that simulates takes all cores.
          sequence: { groupOrder: 1 },
          maxWorkers: 1,
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
