/** A disk that fails where a test wants it to: at one call, or from one call on, as when the power goes. */
import { type Disk, disk } from '../../../src/main/files/disk.ts';

type Call = keyof Disk;

export interface Faulty extends Disk {
  /** What was asked of it, in order. */
  readonly calls: Call[];
}

/** @param fault called before each call, with its number from 0: throws to make it fail */
export function faultyDisk(fault: (number: number, call: Call) => void): Faulty {
  const calls: Call[] = [];
  const wrap =
    (call: Call) =>
    (...input: unknown[]): unknown => {
      calls.push(call);
      fault(calls.length - 1, call);
      return (disk[call] as (...all: unknown[]) => unknown)(...input);
    };
  const names: Call[] = [
    'accessSync',
    'closeSync',
    'fchmodSync',
    'fstatSync',
    'fsyncSync',
    'linkSync',
    'openSync',
    'readFileSync',
    'readdirSync',
    'renameSync',
    'rmSync',
    'statSync',
    'writeSync',
  ];
  const wrapped = Object.fromEntries(names.map((name) => [name, wrap(name)]));
  return Object.assign(wrapped as unknown as Disk, { calls });
}

export const failing = (code: string): NodeJS.ErrnoException =>
  Object.assign(new Error(`${code}: of the test`), { code });
