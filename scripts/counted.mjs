// Checks and vitest runs, counted for the last line `N passed, N failed`.
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';

const started = Date.now();
const counts = { passed: 0, failed: 0 };

/** A check that passes or fails as one. */
export function check(name, command, args) {
  console.log(`\n── ${name}`);
  const ok = spawnSync(command, args, { stdio: 'inherit' }).status === 0;
  counts[ok ? 'passed' : 'failed'] += 1;
}

/** A vitest run, counted test by test. */
export function tests(name, args) {
  console.log(`\n── ${name}`);
  const report = `node_modules/.clampwright-${name.replace(/\W+/g, '-')}.json`;
  rmSync(report, { force: true });
  const { status } = spawnSync(
    'node_modules/.bin/vitest',
    ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...args],
    { stdio: 'inherit' },
  );
  let failed = 1;
  try {
    const { numPassedTests, numFailedTests, numFailedTestSuites } = JSON.parse(readFileSync(report, 'utf8'));
    counts.passed += numPassedTests;
    failed = numFailedTests || numFailedTestSuites;
  } catch {
    console.log('no report was written');
  }
  counts.failed += status === 0 ? 0 : Math.max(1, failed);
}

/** Ends the process with the counts as its last line. */
export function finish() {
  console.log(`\n${((Date.now() - started) / 1000).toFixed(0)} s`);
  console.log(`${counts.passed} passed, ${counts.failed} failed`);
  process.exit(counts.failed === 0 ? 0 : 1);
}
