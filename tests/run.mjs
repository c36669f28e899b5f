/**
 * npm test [-- ARGUMENTS OF VITEST]
 * Everything that the tests need, then all of them, then in plain words what was skipped and why.
 */
import { tooOld } from '../src/launch/node-version.mjs';

const complaint = tooOld(process.versions.node);
if (complaint !== null) {
  process.stderr.write(`${complaint}\n`);
  process.exitCode = 1;
} else {
  const { build } = await import('../src/launch/build.mjs');
  const { installPackages } = await import('../src/launch/packages.mjs');
  const { root } = await import('../src/launch/root.mjs');
  if (installPackages(root) && build(root)) {
    const { runTests } = await import('./e2e/support/run-tests.mjs');
    process.exitCode = await runTests(root, process.argv.slice(2));
  } else process.exitCode = 1;
}
