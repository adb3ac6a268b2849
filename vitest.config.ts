import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const shared = {
  // Everywhere except the guards' known-bad files, which exist to fail.
  exclude: ['**/node_modules/**', 'dist/**', 'test/guards/bad/**'],
  // No test is timed. These bounds only end a hung one, on a slow and shared machine too.
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

/** One core is usually left to the runner, which hardly uses it: of two cores that would be half of the time. */
const workers = { maxWorkers: Math.max(2, availableParallelism() - 1) };

/**
 * Files whose tests keep nothing between two calls, so that one file's may use the modules that another's have loaded: loading them takes longer than
 * running them. The rest keeps something: a document on the device, a global that is replaced, a folder of the repository.
 */
const stateless = [
  'src/{engine,playbook,render,teach,press,clip,cli}/**/*.spec.ts',
  'src/worker/{*,node/*}.spec.ts',
  'src/app/{answers,field,film,opponents,play,playback,reads,schemes,season,teach,team}/**/*.spec.ts',
];

export default defineConfig({
  test: {
    globalSetup: ['test/build-bundles.ts'],
    reporters: ['default', 'json'],
    outputFile: { json: 'artifacts/test-results.json' },
    projects: [
      {
        test: {
          ...shared,
          ...workers,
          name: 'behaviour',
          include: ['**/*.spec.{ts,tsx}'],
          exclude: [...shared.exclude, ...stateless],
        },
      },
      { test: { ...shared, ...workers, name: 'stateless', include: stateless, isolate: false } },
      {
        test: {
          ...shared,
          ...workers,
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
