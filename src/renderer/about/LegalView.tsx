/** The licence, or the notices of what is built in, as it stands in their files: loaded when it is opened. */
import type { LegalText } from 'virtual:legal/*';
import { createResource, createUniqueId, For, type JSX, Show } from 'solid-js';

const loads = {
  licence: () => import('virtual:legal/licence'),
  notices: () => import('virtual:legal/notices'),
} as const satisfies Record<string, () => Promise<{ readonly legal: LegalText }>>;

export type LegalName = keyof typeof loads;

export function LegalView(props: { readonly name: LegalName }): JSX.Element {
  const id = createUniqueId();
  const [text] = createResource(
    () => props.name,
    async (name) => (await loads[name]()).legal,
  );
  return (
    <Show when={text()} fallback={<p class="figure-empty about-body">Opening …</p>}>
      {(legal) => (
        // A part that scrolls can be scrolled by keys.
        <section
          ref={(part) => queueMicrotask(() => part.focus())}
          class="about-body about-legal"
          tabindex="0"
          aria-labelledby={id}
        >
          <h3 id={id}>{legal().title}</h3>
          <Show when={legal().before}>{(before) => <p>{before()}</p>}</Show>
          <For each={legal().parts}>
            {({ heading, text: words }) => (
              <>
                <h4>{heading}</h4>
                <pre>{words}</pre>
              </>
            )}
          </For>
        </section>
      )}
    </Show>
  );
}
