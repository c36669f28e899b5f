/** Files on a disk that is only in memory, answered for as the contract says. */

import type { Project } from '../../../src/shared/project.ts';
import { fileText } from '../../../src/shared/project-text.ts';
import { ok, type RequestError, refuse } from '../../../src/shared/reply.ts';
import type { FileOnDisk, FolderView, RecentFile } from '../../../src/shared/reports-files.ts';
import type { FakeBridge } from './fake-bridge.ts';

interface OnDisk {
  text: string;
  at: string;
  writable: boolean;
}
interface KeptOnDisk {
  readonly document: Project;
  readonly origin: string;
  readonly path: string | null;
  readonly expect: string | null;
  readonly at: string;
  /** The page that kept it is gone. */
  readonly orphan: boolean;
}

export interface FakeDisk {
  readonly files: Map<string, OnDisk>;
  readonly chosen: Set<string>;
  readonly folders: Set<string>;
  readonly kept: Map<string, KeptOnDisk>;
  /** What was dropped of it. */
  readonly away: Map<string, KeptOnDisk>;
  /** Folder of the file that was opened or saved last. */
  last: string | null;
  dialogs: boolean;
  /** What the system's dialog answers. */
  chooses: string | null;
  /** Refuses every saving, as a full disk does. */
  refuses: RequestError | null;
  put(path: string, project: Project, at?: string): void;
  project(path: string): Project;
  fileAt(path: string): FileOnDisk;
  recent: { path: string; project: string; at: string }[];
}

export const AT = '2026-03-01T09:00:00.000Z';
const stampOf = (text: string): string => {
  let sum = 0;
  for (const letter of text) sum = (sum * 31 + (letter.codePointAt(0) ?? 0)) | 0;
  return `stamp-${sum}`;
};
const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const folderOf = (path: string): string => path.slice(0, path.lastIndexOf('/')) || '/';

/** Null where the text is no project. */
function projectIn(text: string): Project | null {
  try {
    return JSON.parse(text) as Project;
  } catch {
    return null;
  }
}

export const HOME = '/disk/mira';

export function useDisk(bridge: FakeBridge): FakeDisk {
  const disk: FakeDisk = {
    files: new Map(),
    chosen: new Set(),
    folders: new Set([HOME, `${HOME}/frames`, `${HOME}/music`]),
    kept: new Map(),
    away: new Map(),
    last: null,
    dialogs: false,
    chooses: null,
    refuses: null,
    recent: [],
    put: (path, project, at = AT) => {
      disk.files.set(path, { text: fileText(project), at, writable: true });
    },
    project: (path) => JSON.parse(disk.files.get(path)!.text) as Project,
    fileAt(path) {
      const { text, at, writable } = disk.files.get(path)!;
      return {
        path,
        name: nameOf(path),
        folder: folderOf(path),
        stamp: stampOf(text),
        at,
        writable,
      };
    },
  };
  const isChosen = (path: string): boolean =>
    [...disk.chosen].some((folder) => `${path}/`.startsWith(`${folder}/`));
  const note = (path: string, project: string): void => {
    disk.recent = [{ path, project, at: AT }, ...disk.recent.filter((one) => one.path !== path)];
  };
  const look = (path: string): FolderView => {
    const inside = (other: string): boolean => other !== path && folderOf(other) === path;
    const one = (other: string) => ({ path: other, name: nameOf(other) });
    return {
      path,
      above: path === '/' ? null : folderOf(path),
      chosen: isChosen(path),
      folders: [...disk.folders].filter(inside).map(one),
      projects: isChosen(path)
        ? [...disk.files]
            .filter(([other]) => inside(other))
            .map(([other, { at }]) => ({ ...one(other), at }))
        : [],
      more: 0,
    };
  };
  const recentFile = (one: FakeDisk['recent'][number]): RecentFile => ({
    ...one,
    name: nameOf(one.path),
    folder: folderOf(one.path),
    found: disk.files.has(one.path),
  });

  bridge.answer('file.places', () =>
    ok({
      dialogs: disk.dialogs,
      folders: [...disk.chosen].map((path) => ({ path, name: nameOf(path) })),
      recent: disk.recent.map(recentFile),
      last: disk.last,
    }),
  );
  bridge.answer('file.choose', () => ok({ path: disk.chooses }));
  bridge.answer('folder.look', ({ folder = HOME }) =>
    disk.folders.has(folder) || folder === '/disk' || folder === '/'
      ? ok(look(folder))
      : refuse('not-found', '', 'The folder is not there.'),
  );
  bridge.answer('folder.choose', ({ folder, make = false }) => {
    if (make) disk.folders.add(folder);
    disk.chosen.add(folder);
    return ok(look(folder));
  });
  bridge.answer('file.open', ({ path }) => {
    const found = disk.files.get(path);
    if (!found) return refuse('bad-input', '', `${nameOf(path)}: there is no such file.`);
    const document = projectIn(found.text);
    if (!document) {
      const before = `${path}.previous`;
      const message = `${nameOf(path)}: The file is not JSON: it stops in the middle.`;
      const error: RequestError = { code: 'bad-input', field: '', message };
      return { ok: false, error: disk.files.has(before) ? { ...error, before } : error };
    }
    note(path, document.name);
    return ok({ document, origin: nameOf(path), file: disk.fileAt(path) });
  });
  bridge.answer('file.save', ({ path, document, expect, over = false }) => {
    if (disk.refuses) return { ok: false, error: disk.refuses };
    const before = disk.files.get(path);
    const project = document as Project;
    if (before && !over && expect === null) return refuse('exists', '', 'It is there.');
    if (before && !over && stampOf(before.text) !== expect) {
      return refuse('changed', '', 'It is another.');
    }
    disk.put(path, project);
    note(path, project.name);
    disk.last = folderOf(path);
    return ok({ file: disk.fileAt(path), backup: before ? `${nameOf(path)}.previous` : null });
  });
  bridge.answer('file.stamp', ({ path }) =>
    ok(
      disk.files.has(path)
        ? { stamp: disk.fileAt(path).stamp, at: disk.fileAt(path).at }
        : { stamp: null, at: null },
    ),
  );
  bridge.answer('recent.forget', ({ path }) => {
    disk.recent = disk.recent.filter((one) => one.path !== path);
    return ok({ forgotten: true });
  });
  bridge.answer('recovery.keep', ({ recovery, document, ...rest }) => {
    disk.kept.set(recovery, { document: document as Project, ...rest, at: AT, orphan: false });
    return ok({ at: AT });
  });
  const changedSince = ({ path, expect }: KeptOnDisk): boolean =>
    path !== null && disk.files.has(path) && disk.fileAt(path).stamp !== expect;
  bridge.answer('recovery.kept', ({ own = [] }) =>
    ok({
      kept: [...disk.kept]
        .filter(([recovery, { orphan }]) => orphan && !own.includes(recovery))
        .map(([recovery, kept]) => ({
          recovery,
          project: kept.document.name,
          origin: kept.origin,
          path: kept.path,
          at: kept.at,
          changedSince: changedSince(kept),
        })),
    }),
  );
  bridge.answer('recovery.open', ({ recovery }) => {
    const kept = disk.kept.get(recovery);
    if (!kept) return refuse('not-found', '', 'These changes are not kept any more.');
    const { document, origin, path, expect, at } = kept;
    const file = path !== null && disk.files.has(path) ? disk.fileAt(path) : null;
    return ok({ document: structuredClone(document), origin, file, expect, at });
  });
  const move = (id: string, from: FakeDisk['kept'], to: FakeDisk['kept']): boolean => {
    const found = from.get(id);
    if (found) to.set(id, found);
    return from.delete(id);
  };
  bridge.answer('recovery.drop', ({ recovery }) =>
    move(recovery, disk.kept, disk.away)
      ? ok({ dropped: true, at: `/disk/state/${recovery}.json`, until: '2026-05-30T09:00:00.000Z' })
      : ok({ dropped: false, at: null, until: null }),
  );
  bridge.answer('recovery.take-back', ({ recovery }) =>
    ok({ back: move(recovery, disk.away, disk.kept) }),
  );
  return disk;
}
