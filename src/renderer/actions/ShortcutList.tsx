/** Every key there is, by group, out of the same data that the keys work by. */
import { For, type JSX, Show } from 'solid-js';
import { cautionShort } from '../../shared/cautions.ts';
import { type Action, type GroupName, groups } from './action.ts';
import { chordText } from './chord.ts';
import { KeysDialog } from './KeysDialog.tsx';
import { localKeys } from './local-keys.ts';

export interface ShortcutListProps {
  readonly actions: readonly Action[];
  readonly onClose: () => void;
}

const and = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

function Keys(props: { readonly of: readonly string[] }): JSX.Element {
  return (
    <For each={props.of}>
      {(text, i) => (
        <>
          <Show when={i() > 0}> or </Show>
          <kbd>{text}</kbd>
        </>
      )}
    </For>
  );
}

export function ShortcutList(props: ShortcutListProps): JSX.Element {
  const withKeys = () => props.actions.filter(({ keys }) => keys !== undefined);
  const inGroups = () =>
    (Object.keys(groups) as GroupName[])
      .map((group) => ({ group, actions: withKeys().filter((one) => one.group === group) }))
      .filter(({ actions }) => actions.length > 0);
  const whileWriting = (): string => {
    const texts = withKeys().flatMap(({ keys = [] }) =>
      keys.filter(({ writing }) => writing).map(chordText),
    );
    const pages = texts.filter((text) => /^Ctrl\+\d$/.test(text));
    const others = texts.filter((text) => !pages.includes(text));
    return and([`${pages[0]} to ${pages.at(-1)}`, ...others]);
  };
  return (
    <KeysDialog class="shortcuts" label="Keys" onClose={props.onClose}>
      <header>
        <h2>Keys</h2>
        <button type="button" class="link" aria-keyshortcuts="Escape" onClick={props.onClose}>
          Close
        </button>
      </header>
      <div class="shortcuts-body">
        <div class="shortcuts-groups">
          <For each={inGroups()}>
            {({ group, actions }) => (
              <section>
                <h3>{groups[group].all}</h3>
                <dl>
                  <For each={actions}>
                    {(action) => (
                      <div>
                        <dt>
                          {action.title()}
                          <Show when={action.about}>
                            {(about) => <span class="units"> {about()}</span>}
                          </Show>
                        </dt>
                        <dd>
                          <Keys of={action.keys!.map(chordText)} />
                        </dd>
                      </div>
                    )}
                  </For>
                </dl>
              </section>
            )}
          </For>
          <section>
            <h3>In their own place</h3>
            <dl>
              <For each={localKeys}>
                {({ does, keys }) => (
                  <div>
                    <dt>{does}</dt>
                    <dd>
                      <Keys of={keys} />
                    </dd>
                  </div>
                )}
              </For>
            </dl>
          </section>
        </div>
        <p class="units">
          While you write in a field only {whileWriting()} do this; all other keys are the field’s.
          Ctrl+Z first takes back what is being typed there. Once that is done with, by Enter or by
          going on, it takes back the change, and Ctrl+Shift+Z or Ctrl+Y does it again.
        </p>
        <p class="shortcuts-caution">{cautionShort}</p>
      </div>
    </KeysDialog>
  );
}
