/** A part of the page whose code comes after the first picture, or when it is first shown. */
import { type Component, createSignal, type JSX, Match, Switch } from 'solid-js';
import { Dynamic } from 'solid-js/web';

export type Later<P extends object> = Component<P> & {
  /** Fetches the code now; once it is there the part is drawn at once. Never rejects. */
  readonly fetch: () => Promise<void>;
};

/**
 * Not Solid's `lazy`: its Suspense would take the whole page away for whatever else in it is waited
 * for, and what does not come is to be said here.
 *
 * @param load brings the code; not called again after it failed: a browser remembers that a script
 * was missing for as long as the window is not loaded again
 */
export function later<P extends object>(load: () => Promise<Component<P>>): Later<P> {
  const [part, setPart] = createSignal<Component<P> | null>(null);
  const [failed, setFailed] = createSignal(false);
  let running: Promise<void> | undefined;
  const fetch = (): Promise<void> => {
    running ??= load().then(
      (loaded) => {
        setPart(() => loaded);
      },
      () => {
        setFailed(true);
      },
    );
    return running;
  };
  const Part = (props: P): JSX.Element => {
    void fetch();
    return (
      <Switch fallback={<p class="figure-empty">Opening …</p>}>
        <Match when={part()}>{(loaded) => <Dynamic component={loaded()} {...props} />}</Match>
        <Match when={failed()}>
          <div class="notice" role="alert">
            <p>
              This page of the program could not be loaded. Changes that are not saved are kept and
              offered when the window is loaded again.
            </p>
            <button type="button" class="link" onClick={() => window.location.reload()}>
              Load again
            </button>
          </div>
        </Match>
      </Switch>
    );
  };
  return Object.assign(Part, { fetch });
}
