/** Takes a load case out of the project; where it acts, with its loads and after one more press. */
import { createSignal, type JSX, Show } from 'solid-js';
import type { LoadCase } from '../../../shared/project.ts';
import { listed } from '../../../shared/words.ts';
import { AskFirst } from '../../parts/AskFirst.tsx';
import { removeLoadCase } from '../../state/load-cases.ts';
import type { ProjectState } from '../../state/project.ts';
import { countedUses, isUsed, type Uses, usesOfCase } from '../../state/uses.ts';

export interface RemoveCaseProps {
  readonly project: ProjectState;
  readonly loadCase: LoadCase;
  /** The button with it is gone: the focus needs another place. */
  readonly onGone: () => void;
  /** The button. */
  readonly children: (press: () => void) => JSX.Element;
}

export function RemoveCase(props: RemoveCaseProps): JSX.Element {
  const [asked, setAsked] = createSignal<Uses | null>(null);
  const remove = (): void => {
    const { onGone, loadCase, project } = props;
    // Rows are told apart by place: the next case stands here then, and nobody asked about it.
    setAsked(null);
    removeLoadCase(project, loadCase.id);
    onGone();
  };
  const press = (): void => {
    const document = props.project.document();
    if (!document) return;
    const uses = usesOfCase(document, props.loadCase.id);
    if (isUsed(uses)) setAsked(uses);
    else remove();
  };
  return (
    <>
      {props.children(press)}
      <Show when={asked()}>
        {(uses) => (
          <AskFirst
            title={`${props.loadCase.name} acts on ${countedUses(uses())}.`}
            text={`Its loads there go with it: ${listed([...uses().joints, ...uses().variants])}.`}
            keep="Keep the case"
            remove="Remove it with its loads"
            onKeep={() => setAsked(null)}
            onRemove={remove}
          />
        )}
      </Show>
    </>
  );
}
