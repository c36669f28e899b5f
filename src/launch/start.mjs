/**
 * npm start [-- [FILE] [--no-open] [--browser] [--get-electron]]
 * Installs and builds what is missing, then opens the app: in Electron where its program is
 * there, else in a browser.
 */
import { tooOld } from './node-version.mjs';

const complaint = tooOld(process.versions.node);
if (complaint !== null) {
  process.stderr.write(`${complaint}\n`);
  process.exitCode = 1;
} else {
  // Only now: the rest is written for the Node that was just asked for.
  const { start } = await import('./start-app.mjs');
  process.exitCode = await start(process.argv.slice(2));
}
