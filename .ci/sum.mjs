// Sums up test reports: `node .ci/sum.mjs <report>:<exit status> ...` prints one line, `N passed, N failed`.
import { readFileSync } from 'node:fs';

let passed = 0;
let failed = 0;
for (const given of process.argv.slice(2)) {
  const [, file, status] = /^(.*):(\d+)$/.exec(given);
  const counts = read(file);
  passed += counts.passed;
  // A stage that failed without a failing test (it did not build, it was cut off) counts as one failure.
  failed += counts.failed === 0 && status !== '0' ? 1 : counts.failed;
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);

function read(file) {
  let suites;
  try {
    suites = JSON.parse(readFileSync(file, 'utf8')).testResults;
  } catch {
    return { passed: 0, failed: 1 };
  }
  const count = (suite, status) => suite.assertionResults.filter(each => each.status === status).length;
  const sum = (of, from) => from.reduce((total, suite) => total + of(suite), 0);
  return {
    passed: sum(suite => count(suite, 'passed'), suites),
    // A file whose preparation failed has no failing test of its own, only tests that never ran.
    failed: sum(suite => count(suite, 'failed') || Number(suite.status === 'failed'), suites),
  };
}
