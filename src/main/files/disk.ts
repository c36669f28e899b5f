/** What writing a project needs of the disk: Node's own, or in a test one that fails where it is told to. */
import * as fs from 'node:fs';

export type Disk = Pick<
  typeof fs,
  | 'accessSync'
  | 'closeSync'
  | 'fchmodSync'
  | 'fstatSync'
  | 'fsyncSync'
  | 'linkSync'
  | 'openSync'
  | 'readFileSync'
  | 'readdirSync'
  | 'renameSync'
  | 'rmSync'
  | 'statSync'
  | 'writeSync'
>;

export const disk: Disk = fs;
