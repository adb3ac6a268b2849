import { defineConfig } from 'vitest/config';

// Everywhere except the guards' known-bad files, which exist to fail.
const exclude = ['**/node_modules/**', 'dist/**', 'test/guards/bad/**'];

export default defineConfig({
  test: {
    globalSetup: ['test/build-bundles.ts'],
    // No test is timed. These bounds only end a hung one, on a slow and shared machine too.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: ['default', 'json'],
    outputFile: { json: 'artifacts/test-results.json' },
    projects: [
      { extends: true, test: { name: 'behaviour', include: ['**/*.spec.ts'], exclude } },
      { extends: true, test: { name: 'laws', include: ['**/*.props.ts'], exclude, setupFiles: ['test/fix-seed.ts'] } },
    ],
  },
});
