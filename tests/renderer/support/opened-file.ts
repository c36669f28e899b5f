/** A page whose project stands in a file on the disk that is only in memory. */
import { ok } from '../../../src/shared/reply.ts';
import type { FakeBridge } from './fake-bridge.ts';
import { type FakeDisk, HOME, useDisk } from './files.ts';
import { makeProject } from './project.ts';

const FILE = `${HOME}/frames/Curlew B.lapwright.json`;

export function useOpenedFile(bridge: FakeBridge): FakeDisk {
  const disk = useDisk(bridge);
  disk.chosen.add(`${HOME}/frames`);
  disk.put(FILE, makeProject());
  bridge.answer('project.initial', () =>
    ok({
      document: makeProject(),
      origin: 'Curlew B.lapwright.json',
      file: disk.fileAt(FILE),
    }),
  );
  return disk;
}
