/** The guide: its contents, a search, and the page that is read. */

import { type GuidePage, pages } from 'virtual:guide';
import {
  createEffect,
  createResource,
  createSignal,
  For,
  type JSX,
  on,
  onMount,
  Show,
} from 'solid-js';
import type { WorkspaceName } from '../workspaces.ts';
import { findText, type Searched } from './find-text.ts';
import { createPlace, type Place } from './place.ts';

export interface GuideViewProps {
  readonly workspace: WorkspaceName;
  readonly onClose: () => void;
}

/** Loaded for the search alone: all pages, once. */
async function everySection(): Promise<readonly Searched[]> {
  const loaded = await Promise.all(
    pages.map(async ({ id, title, load }) =>
      (await load()).sections.map(({ anchor, heading, text }) => ({
        page: id,
        pageTitle: title,
        anchor,
        heading,
        text,
      })),
    ),
  );
  return loaded.flat();
}

export default function GuideView(props: GuideViewProps): JSX.Element {
  const place = createPlace(props.workspace);
  const page = (): GuidePage => pages.find(({ id }) => id === place.now().page) ?? pages[0]!;
  const [text] = createResource(
    () => page().id,
    async (id) => ({ id, ...(await pages.find((one) => one.id === id)!.load()) }),
  );
  const [typed, setTyped] = createSignal('');
  const [sections] = createResource(() => typed().trim() !== '' || undefined, everySection);
  const found = () => findText(sections.latest ?? [], typed());
  const said = (): string => {
    if (typed().trim() === '' || sections.loading) return '';
    const count = found().length;
    return count === 0
      ? 'Nothing found.'
      : count === 1
        ? 'One place found.'
        : `${count} places found.`;
  };

  let search!: HTMLInputElement;
  let body!: HTMLElement;
  onMount(() => search.focus());

  const go = (next: Place): void => {
    setTyped('');
    place.go(next);
  };
  /** To the heading that is meant, or to the top: once the page is there. */
  createEffect(
    on([() => place.now(), () => text.latest?.id, typed], ([now, id, searched], before) => {
      if (id !== now.page || searched.trim() !== '') return;
      const heading = body.querySelector<HTMLElement>(
        now.anchor === '' ? 'h1' : `#${CSS.escape(`guide-${now.anchor}`)}`,
      );
      if (now.anchor === '') body.scrollTop = 0;
      else heading?.scrollIntoView?.();
      // The first time the focus is in the search.
      if (before !== undefined && document.activeElement !== search) {
        heading?.focus({ preventScroll: true });
      }
    }),
  );
  const follow = (event: MouseEvent): void => {
    const link = (event.target as Element).closest('a');
    if (!link) return;
    event.preventDefault();
    const { page: to, anchor } = link.dataset;
    if (to !== undefined) go({ page: to, anchor: anchor ?? '' });
  };
  const back = (event: KeyboardEvent): void => {
    if (event.key !== 'ArrowLeft' || !event.altKey || !place.canGoBack()) return;
    event.preventDefault();
    place.back();
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Alt and an arrow go back, as in a browser.
    <div class="guide-sheet" onKeyDown={back}>
      <header class="guide-head">
        <h2>Guide</h2>
        <input
          ref={search}
          class="guide-search"
          type="search"
          aria-label="Search the guide"
          placeholder="Search the guide"
          autocomplete="off"
          spellcheck={false}
          value={typed()}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
        <span class="units" role="status">
          {said()}
        </span>
        <button
          type="button"
          class="link"
          disabled={!place.canGoBack()}
          aria-keyshortcuts="Alt+ArrowLeft"
          onClick={() => {
            setTyped('');
            place.back();
          }}
        >
          Back
        </button>
        <button type="button" class="link" aria-keyshortcuts="Escape" onClick={props.onClose}>
          Close
        </button>
      </header>
      <nav class="guide-contents" aria-label="Contents of the guide">
        <ol>
          <For each={pages}>
            {({ id, title, headings }) => (
              <li>
                <button
                  type="button"
                  class="guide-entry"
                  aria-current={page().id === id ? 'page' : undefined}
                  onClick={() => go({ page: id, anchor: '' })}
                >
                  {title}
                </button>
                <Show when={page().id === id && headings.length > 0}>
                  <ol>
                    <For each={headings}>
                      {({ anchor, heading }) => (
                        <li>
                          <button
                            type="button"
                            class="guide-entry"
                            onClick={() => go({ page: id, anchor })}
                          >
                            {heading}
                          </button>
                        </li>
                      )}
                    </For>
                  </ol>
                </Show>
              </li>
            )}
          </For>
        </ol>
      </nav>
      <section class="guide-body" ref={body} tabindex="0" aria-label={page().title}>
        <Show
          when={typed().trim() === ''}
          fallback={
            <ol class="guide-found" aria-label="Places found">
              <For each={found()}>
                {(one) => (
                  <li>
                    <button
                      type="button"
                      class="guide-hit"
                      onClick={() => go({ page: one.page, anchor: one.anchor })}
                    >
                      <span class="guide-hit-head">
                        {one.heading === '' ? one.pageTitle : one.heading}
                      </span>{' '}
                      <span class="units">{one.pageTitle}</span>
                      <span class="guide-hit-text">
                        {one.before}
                        <mark>{one.word}</mark>
                        {one.after}
                      </span>
                    </button>
                  </li>
                )}
              </For>
            </ol>
          }
        >
          {/* biome-ignore lint/a11y/useKeyWithClickEvents: the links in it are reached by keys themselves. */}
          <article class="guide-text" innerHTML={text.latest?.html ?? ''} onClick={follow} />
        </Show>
      </section>
    </div>
  );
}
