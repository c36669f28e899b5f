/** Something more about the row above, for those who open it: keeps the column calm. */
import { createSignal, type JSX, Show } from 'solid-js';

export interface DisclosureProps {
  readonly title: string;
  /** A word or two beside the title, seen while it is closed. */
  readonly aside?: JSX.Element;
  readonly children: JSX.Element;
}

export function Disclosure(props: DisclosureProps): JSX.Element {
  // Built only while it is open: closed fields would be kept up with every frame of a drag.
  const [open, setOpen] = createSignal(false);
  return (
    <details class="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {props.title}
        <Show when={props.aside}>{(aside) => <span class="more-aside"> {aside()}</span>}</Show>
      </summary>
      <Show when={open()}>
        <div class="more-body">{props.children}</div>
      </Show>
    </details>
  );
}
