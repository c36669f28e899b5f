/** Locks of a browser, shared by its pages: as the page asks for them, one holder for each name. */
import { onTestFinished } from 'vitest';

interface Waiting {
  readonly signal: AbortSignal | undefined;
  run(): Promise<void>;
}

export interface FakeLocks {
  readonly held: ReadonlySet<string>;
  /** Another page takes it, and has it until what is given back is called. */
  take(name: string): () => void;
}

/** Puts them in place until the test ends. */
export function useLocks(): FakeLocks {
  const held = new Set<string>();
  const waiting = new Map<string, Waiting[]>();
  const next = (name: string): void => {
    const one = waiting.get(name)?.find(({ signal }) => !signal?.aborted);
    if (held.has(name) || !one) return;
    waiting.set(
      name,
      waiting.get(name)!.filter((other) => other !== one),
    );
    held.add(name);
    void one.run().finally(() => {
      held.delete(name);
      next(name);
    });
  };
  const locks = {
    request: (name: string, { signal }: { signal?: AbortSignal }, act: () => Promise<void>) =>
      new Promise<void>((done, refused) => {
        signal?.addEventListener('abort', () => refused(signal.reason));
        const run = async (): Promise<void> => {
          await act();
          done();
        };
        waiting.set(name, [...(waiting.get(name) ?? []), { signal, run }]);
        queueMicrotask(() => next(name));
      }),
    query: async () => ({ held: [...held].map((name) => ({ name })), pending: [] }),
  };
  Object.defineProperty(navigator, 'locks', { configurable: true, value: locks });
  onTestFinished(() => {
    Reflect.deleteProperty(navigator, 'locks');
  });
  return {
    held,
    take(name) {
      held.add(name);
      return () => {
        held.delete(name);
        next(name);
      };
    },
  };
}
