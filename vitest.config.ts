import { defineConfig } from 'vitest/config';

const shared = {
  // Everywhere except the guards' known-bad files, which exist to fail.
  exclude: ['**/node_modules/**', 'dist/**', 'test/guards/bad/**'],
  // No test is timed. These bounds only end a hung one, on a slow and shared machine too.
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

export default defineConfig({
  test: {
    globalSetup: ['test/build-bundles.ts'],
    reporters: ['default', 'json'],
    outputFile: { json: 'artifacts/test-results.json' },
    projects: [
      { test: { ...shared, name: 'behaviour', include: ['**/*.spec.{ts,tsx}'] } },
      { test: { ...shared, name: 'laws', include: ['**/*.props.{ts,tsx}'], setupFiles: ['test/fix-seed.ts'] } },
      {
        test: {
          ...shared,
          name: 'browser',
          include: ['**/*.browser.ts'],
          globalSetup: ['test/browser/global-setup.ts'],
          // After the others and one file at a time: they share one browser, and a page that simulates takes all cores.
          sequence: { groupOrder: 1 },
          maxWorkers: 1,
          // A machine that is shared may hold a browser up for half a minute. Once is the machine's fault, twice is ours.
          retry: 1,
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
