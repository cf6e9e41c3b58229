/**
 * `npm test`: sets up, then every check there is: types, lint and format, dead code, both builds, unit tests with the
 * rules, browser tests. The last line counts them all; a check that is not a test file counts as one.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { setUp } from './set-up.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
let passed = 0;
let failed = 0;

setUp();
single('types', ['node_modules/typescript/bin/tsc', '--noEmit', '-p', '.']);
single('lint and format', ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.']);
single('dead code', ['node_modules/knip/bin/knip.js', '--no-progress']);
single('terminal program builds', ['scripts/build.mjs', 'terminal', '--force']);
single('page builds', ['scripts/build.mjs', 'page', '--force']);
single('page in one file builds', ['scripts/build.mjs', 'single', '--force']);
vitest('unit');
vitest('browser');
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;

/**
 * @param {string} name
 * @param {string[]} words a script for Node and its arguments
 */
function single(name, words) {
  const started = Date.now();
  const { status, stdout, stderr } = spawnSync(process.execPath, words, {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    maxBuffer: 2 ** 26,
  });
  const fine = status === 0;
  if (fine) passed += 1;
  else failed += 1;
  process.stdout.write(
    `${fine ? 'ok    ' : 'FAILED'} ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)\n`,
  );
  if (!fine) process.stdout.write(`${stdout ?? ''}${stderr ?? ''}\n`);
}

/** @param {string} project */
function vitest(project) {
  const folder = mkdtempSync(join(tmpdir(), 'tankful-test-'));
  const report = join(folder, 'report.json');
  const { status } = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      `--project=${project}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    // CI: a missing snapshot fails instead of being written, and `.only` is refused.
    { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, CI: 'true' } },
  );
  const counts = readCounts(report);
  rmSync(folder, { recursive: true, force: true });
  passed += counts.passed;
  failed += counts.failed;
  // No report, no test, or an error outside any test: a failure that no count shows.
  if (counts.failed === 0 && (status !== 0 || counts.passed === 0)) {
    failed += 1;
    process.stdout.write(`FAILED ${project} tests: ${counts.passed} ran, vitest ended with ${status}\n`);
  }
}

/** @param {string} report */
function readCounts(report) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(report, 'utf8'));
    // A file that fails to load has no test to count.
    const broken = testResults.filter(
      (/** @type {{ status: string, assertionResults: { status: string }[] }} */ file) =>
        file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
    );
    return { passed: numPassedTests, failed: numFailedTests + broken.length };
  } catch {
    return { passed: 0, failed: 0 };
  }
}
