/** Something more about the row above, for those who open it: keeps the column calm. */
import { createEffect, createSignal, type JSX, onCleanup, onMount, Show, untrack } from 'solid-js';
import type { RequestError } from '../../shared/reply.ts';
import { sentence } from '../../shared/words.ts';
import type { Issues } from '../state/issues.ts';
import { type Path, pathText } from '../state/project.ts';

export interface About {
  readonly issues: Issues;
  readonly path?: Path;
  /** Places of single fields in it, where what holds them all holds others too. */
  readonly fields?: readonly Path[];
}

export interface DisclosureProps {
  readonly title: string;
  /** A word or two beside the title, seen while it is closed. */
  readonly aside?: JSX.Element;
  readonly class?: string;
  /** Open from the start, with its first field ready: what was just added is to be filled in. */
  readonly opened?: boolean;
  /** What its fields are about: a refusal of one of them opens it, so that it is seen at the field. */
  readonly about?: About;
  readonly children: JSX.Element;
}

export function Disclosure(props: DisclosureProps): JSX.Element {
  // Built only while it is open: closed fields would be kept up with every frame of a drag.
  const opened = untrack(() => props.opened ?? false);
  const [open, setOpen] = createSignal(opened);
  let details!: HTMLDetailsElement;
  const about = untrack(() => props.about);
  const own = about?.path && pathText(about.path);
  if (about && own !== undefined) {
    about.issues.mount(own);
    onCleanup(() => about.issues.unmount(own));
  }
  /** Where no field in it is to blame. */
  const message = (): string | undefined => (own === undefined ? undefined : about?.issues.at(own));
  const places = [...(own === undefined ? [] : [own]), ...(about?.fields ?? []).map(pathText)];
  const isWithin = (field: string): boolean =>
    places.some((place) => field === place || field.startsWith(`${place}.`));
  /** A refusal opens it once: who closes it again means to. */
  let seen = '';
  const reveal = (error: RequestError | null): void => {
    const text = error === null ? '' : `${error.field} ${error.message}`;
    if (text === seen) return;
    seen = text;
    if (error === null || !isWithin(error.field) || details.open) return;
    details.open = true;
    setOpen(true);
  };
  onMount(() => {
    createEffect(() => reveal(about?.issues.refused() ?? null));
    if (!opened) return;
    const first = details.querySelector<HTMLInputElement>('.more-body input');
    first?.focus();
    first?.select();
  });
  return (
    <details
      ref={details}
      class={`more ${props.class ?? ''}`}
      open={opened}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        {props.title}
        <Show when={props.aside}>{(aside) => <span class="more-aside"> {aside()}</span>}</Show>
        <Show when={message()}>
          {(words) => (
            <span class="more-refused" role="alert">
              {' '}
              {sentence(words())}
            </span>
          )}
        </Show>
      </summary>
      <Show when={open()}>
        <div class="more-body">{props.children}</div>
      </Show>
    </details>
  );
}
