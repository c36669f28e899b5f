/** The built loopback host, started as a user's launcher starts it, without opening a browser. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { root } from '../../../src/launch/root.mjs';

export interface RunningHost {
  /** With the token in its fragment. */
  readonly address: string;
  /** `http://127.0.0.1:PORT` */
  readonly origin: string;
  readonly token: string;
  readonly process: ChildProcess;
  stop(): Promise<void>;
}

const ADDRESS = /(http:\/\/127\.0\.0\.1:\d+)\/#token=(\S+)/;
/** Only ends what hangs: a loaded machine builds and starts slowly. */
const PATIENCE = 60_000;

/** Waits until a program has printed an address. */
export function addressFrom(child: ChildProcess): Promise<RunningHost> {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`No address was printed:\n${said}`)), PATIENCE);
    const read = (part: Buffer): void => {
      said += part;
      const [address, origin, token] = ADDRESS.exec(said) ?? [];
      if (!address || !origin || !token) return;
      clearTimeout(late);
      resolve({ address, origin, token, process: child, stop: () => stopProcess(child) });
    };
    child.stdout?.on('data', read);
    child.stderr?.on('data', read);
    child.once('exit', (code) => {
      clearTimeout(late);
      reject(new Error(`The program ended (${code}) before it printed an address:\n${said}`));
    });
  });
}

export async function stopProcess(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill();
  await gone;
}

/** @param folder one that projects may be opened and saved in */
export function startHost(file?: string, folder?: string): Promise<RunningHost> {
  const host = join(root, 'out', 'main', 'host.js');
  const args = [
    host,
    '--no-open',
    ...(file === undefined ? [] : [`--file=${file}`]),
    ...(folder === undefined ? [] : [`--folder=${folder}`]),
  ];
  return addressFrom(spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] }));
}
