/** Runs the app in Electron and tells one that cannot start from one that ended. */
import { spawn } from 'node:child_process';

/** A program that gives up sooner than this, with an error, could not be started at all. */
const STARTING = 10_000;

/**
 * @param {string} binary
 * @param {string} root the project, which Electron runs
 * @param {string | null} file
 * @returns {Promise<number | null>} its exit code, or null when it could not start
 */
export function runElectron(binary, root, file) {
  const env = { ...process.env };
  // Set by some editors; it turns Electron into a plain Node.
  delete env.ELECTRON_RUN_AS_NODE;
  const child = spawn(binary, [root, ...(file === null ? [] : [`--file=${file}`])], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env,
  });
  const since = Date.now();
  let stopped = false;
  const stop = () => {
    stopped = true;
    child.kill();
  };
  const signals = /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']);
  for (const signal of signals) process.on(signal, stop);
  return new Promise((done) => {
    /** @param {number | null} code */
    const end = (code) => {
      for (const signal of signals) process.off(signal, stop);
      done(code);
    };
    child.once('error', () => end(null));
    child.once('exit', (code) => {
      if (stopped || code === 0) end(0);
      else end(Date.now() - since < STARTING ? null : (code ?? 1));
    });
  });
}
