/** Something more about the row above, for those who open it: keeps the column calm. */
import { createSignal, type JSX, onCleanup, onMount, Show, untrack } from 'solid-js';
import { sentence } from '../../shared/words.ts';
import type { Issues } from '../state/issues.ts';
import { type Path, pathText } from '../state/project.ts';

export interface DisclosureProps {
  readonly title: string;
  /** A word or two beside the title, seen while it is closed. */
  readonly aside?: JSX.Element;
  readonly class?: string;
  /** Open from the start, with its first field ready: what was just added is to be filled in. */
  readonly opened?: boolean;
  /** What its fields are about: while it is closed, a refusal of it is shown here. */
  readonly about?: { readonly issues: Issues; readonly path: Path };
  readonly children: JSX.Element;
}

export function Disclosure(props: DisclosureProps): JSX.Element {
  // Built only while it is open: closed fields would be kept up with every frame of a drag.
  const opened = untrack(() => props.opened ?? false);
  const [open, setOpen] = createSignal(opened);
  let details!: HTMLDetailsElement;
  const about = untrack(() => props.about);
  const place = about && pathText(about.path);
  if (about && place !== undefined) {
    about.issues.mount(place);
    onCleanup(() => about.issues.unmount(place));
  }
  const message = (): string | undefined =>
    place === undefined ? undefined : about?.issues.at(place);
  onMount(() => {
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
