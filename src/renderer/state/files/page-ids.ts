/**
 * Ids of what this page keeps, also from before it was loaded anew. A duplicated tab brings a copy of them, and a
 * page in the background may say nothing for minutes. Each id is therefore held by a lock of the browser as long
 * as its page is there: by that a copy is told, and a silent page from one that is gone.
 */
export interface PageIds {
  read(): readonly string[];
  /** A new one, of this page from now on. */
  make(): string;
  /** One that is this page's again. */
  add(id: string): void;
  remove(id: string): void;
  /** Those from before that are this page's own; what belongs to the page that it is a copy of is let go. */
  claim(): Promise<readonly string[]>;
  /** Of every page of this browser that is there. */
  ofPagesHere(): Promise<ReadonlySet<string>>;
  close(): void;
}

const KEY = 'lapwright-recovery';
const LOCK = 'lapwright-recovery ';
/** Milliseconds that the lock of a page may outlive it, when it is loaded anew. */
export const LINGERS = 1500;

/** What the browser may not keep lasts as long as the page. */
let unkept: readonly string[] = [];
const storage = {
  read(): readonly string[] {
    try {
      const list: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? '[]');
      return Array.isArray(list) ? list.filter((id) => typeof id === 'string') : [];
    } catch {
      return unkept;
    }
  },
  write(list: readonly string[]): void {
    unkept = list;
    try {
      sessionStorage.setItem(KEY, JSON.stringify(list));
    } catch {
      // Kept in the page alone, then.
    }
  },
};
const without = (gone: readonly string[]): void =>
  storage.write(storage.read().filter((id) => !gone.includes(id)));

const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint32Array(4)), (n) => n.toString(36)).join('-');

/** @param locks undefined where the browser has none: every id is then taken for this page's own */
export function makePageIds(locks: LockManager | undefined = navigator.locks): PageIds {
  const releases = new Map<string, () => void>();

  /** @returns false where another page holds it */
  const hold = (id: string): Promise<boolean> =>
    new Promise((resolve) => {
      if (!locks || releases.has(id)) return resolve(true);
      const waiting = new AbortController();
      const late = setTimeout(() => release(id), LINGERS);
      releases.set(id, () => waiting.abort());
      const done = (isOwn: boolean): void => {
        clearTimeout(late);
        resolve(isOwn);
      };
      const keep = (): Promise<void> => {
        done(true);
        return new Promise((letGo) => releases.set(id, letGo));
      };
      locks
        .request(`${LOCK}${id}`, { signal: waiting.signal }, keep)
        // Where locks are forbidden it is as if there were none.
        .catch(() => done(!waiting.signal.aborted));
    });
  const release = (id: string): void => {
    releases.get(id)?.();
    releases.delete(id);
  };

  const add = (id: string): void => {
    storage.write([...storage.read(), id]);
    void hold(id);
  };

  return {
    read: storage.read,
    make() {
      const id = newId();
      add(id);
      return id;
    },
    add,
    remove(id) {
      without([id]);
      release(id);
    },
    async claim() {
      const before = storage.read();
      const isOwn = await Promise.all(before.map(hold));
      without(before.filter((_, i) => !isOwn[i]));
      return before.filter((_, i) => isOwn[i]);
    },
    async ofPagesHere() {
      const { held = [] } = (await locks?.query().catch(() => null)) ?? {};
      const names = held.flatMap(({ name = '' }) => (name.startsWith(LOCK) ? [name] : []));
      return new Set(names.map((name) => name.slice(LOCK.length)));
    },
    close() {
      for (const id of [...releases.keys()]) release(id);
    },
  };
}
