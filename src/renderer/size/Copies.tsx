/** A material as the start of another, and those of the project that nothing is made of. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { listed } from '../../shared/words.ts';
import { AskFirst } from '../parts/AskFirst.tsx';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import {
  type AnyMaterial,
  copyMaterial,
  isFull,
  type MaterialList,
  removeUnused,
  unusedOf,
} from '../state/materials.ts';
import type { Path, ProjectState } from '../state/project.ts';

export interface CopiesProps {
  readonly project: ProjectState;
  readonly list: MaterialList;
  /** Place of the material in its list. */
  readonly index: number;
  /** Where the joint names it: what is made of the copy then. */
  readonly path: Path;
  /** `adhesive`, `laminate`, or `material` for what other walls are of. */
  readonly what: string;
  /** Other joints that are made of it. */
  readonly sharedWith: readonly string[];
  /**
   * Told which material's fields are to be open when they are built anew, for a copy or because the
   * list got shorter; and null when that is done.
   */
  readonly onFresh: (id: string | null) => void;
}

export function Copies(props: CopiesProps): JSX.Element {
  const document = () => props.project.document();
  const [asked, setAsked] = createSignal<AnyMaterial | null>(null);
  let copyButton: HTMLButtonElement | undefined;
  const unused = (): readonly AnyMaterial[] => {
    const now = document();
    return now ? unusedOf(now, props.list) : [];
  };
  const copy = (): void => {
    // Taken out of the props first: they are of a part of the page that is gone then.
    const { project, list, index, path, onFresh } = props;
    copyMaterial(project, list, index, path, onFresh);
    onFresh(null);
  };
  const remove = ({ id }: AnyMaterial): void => {
    const { project, list, index, onFresh } = props;
    setAsked(null);
    const own = document()?.[list][index]?.id;
    if (own !== undefined) onFresh(own);
    removeUnused(project, list, id);
    onFresh(null);
    copyButton?.focus();
  };
  const withAllowables = (): boolean => {
    const one = document()?.[props.list][props.index];
    return one !== undefined && 'allowables' in one && (one.allowables?.length ?? 0) > 0;
  };

  return (
    <>
      <Show when={props.sharedWith.length > 0}>
        <p class="about">
          Also in {listed(props.sharedWith)}: what is changed here, changes there.
        </p>
      </Show>
      <Show when={!isFull(document()!, props.list)}>
        <button
          type="button"
          class="link"
          ref={copyButton}
          title={`Adds a copy to the project and puts it here in place of this ${props.what}.${
            withAllowables()
              ? ' Allowables stay with this one: their coupons were bonded with it.'
              : ''
          }`}
          onClick={copy}
        >
          Copy this {props.what}
        </button>
      </Show>
      <Show when={unused().length > 0}>
        <p class="about">Not used by any joint, variant or coupon:</p>
        <ul class="unused">
          <For each={unused()}>
            {(one) => (
              <li>
                <span>{one.name}</span>
                <RemoveButton
                  label={`Remove ${one.name}`}
                  title="Take it out of the project"
                  onRemove={() => setAsked(one)}
                />
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={asked()}>
        {(one) => (
          <AskFirst
            title={`Remove ${one().name}?`}
            text="Nothing is made of it. Its properties go with it."
            keep="Keep it"
            remove="Remove it"
            onKeep={() => setAsked(null)}
            onRemove={() => remove(one())}
          />
        )}
      </Show>
    </>
  );
}
