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
      { test: { ...shared, name: 'behaviour', include: ['**/*.spec.ts'] } },
      { test: { ...shared, name: 'laws', include: ['**/*.props.ts'], setupFiles: ['test/fix-seed.ts'] } },
    ],
  },
});
