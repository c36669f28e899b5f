/** The files that were open lately: each was chosen by the user once, and may be opened again. */
import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import type { RecentFile } from '../../shared/reports-files.ts';
import { makeSmallStore } from './small-store.ts';

const MOST = 12;

const shape = z.array(
  z.object({ path: z.string().min(1).max(4096), project: z.string().max(300), at: z.string() }),
);

export interface Recent {
  /** Youngest first. */
  list(): readonly RecentFile[];
  has(path: string): boolean;
  note(path: string, project: string): void;
  /** False where it was not in the list. */
  forget(path: string): boolean;
}

export function makeRecent(data: string, now: () => Date): Recent {
  const store = makeSmallStore(
    join(data, 'recent.json'),
    (parsed) => {
      const found = shape.safeParse(parsed);
      return found.success ? found.data.slice(0, MOST) : null;
    },
    [],
  );
  return {
    list: () =>
      store.read().map(({ path, project, at }) => ({
        path,
        name: basename(path),
        folder: dirname(path),
        project,
        at,
        found: existsSync(path),
      })),
    has: (path) => store.read().some((file) => file.path === path),
    note(path, project) {
      const others = store.read().filter((file) => file.path !== path);
      store.write([{ path, project, at: now().toISOString() }, ...others].slice(0, MOST));
    },
    forget(path) {
      const files = store.read();
      const left = files.filter((file) => file.path !== path);
      if (left.length === files.length) return false;
      store.write(left);
      return true;
    },
  };
}
