/** The command line of the project: npm run -s lapwright -- check FILE */
import { tooOld } from './node-version.mjs';

const complaint = tooOld(process.versions.node);
if (complaint !== null) {
  process.stderr.write(`${complaint}\n`);
  process.exitCode = 2;
} else {
  const { join } = await import('node:path');
  const { pathToFileURL } = await import('node:url');
  const { build } = await import('./build.mjs');
  const { installPackages } = await import('./packages.mjs');
  const { root, userFolder } = await import('./root.mjs');
  if (installPackages(root) && build(root)) {
    const { main } = await import(pathToFileURL(join(root, 'out', 'main', 'cli.js')).href);
    process.exitCode = await main(process.argv.slice(2), { cwd: userFolder() });
  } else process.exitCode = 2;
}
