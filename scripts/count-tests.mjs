// Prints `N passed, N failed` from vitest's JSON report. A run that failed never counts 0 failures:
// a file that does not load holds no test to count, and a crash may leave no report at all.
import { readFileSync } from 'node:fs';
import { root } from './ensure-installed.mjs';

const exitCode = Number(process.argv[2] ?? 0);
const { passed, failed } = countTests();
console.log(`${passed} passed, ${exitCode === 0 ? failed : Math.max(failed, 1)} failed`);

function countTests() {
  try {
    const report = JSON.parse(readFileSync(`${root}/artifacts/test-results.json`, 'utf8'));
    const unloaded = report.testResults.filter(
      (file) => file.status === 'failed' && file.assertionResults.length === 0,
    );
    return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length };
  } catch {
    return { passed: 0, failed: 1 };
  }
}
