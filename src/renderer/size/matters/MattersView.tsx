/** Which input's tolerance moves the lowest margin most: a tornado, largest first, and its figures. */

import { type JSX, Show } from 'solid-js';
import { saidText } from '../../../shared/said.ts';
import { middleSentence } from '../../../shared/scatter-words.ts';
import { createFound } from '../../state/found.ts';
import { FoundStatus } from '../FoundStatus.tsx';
import { Tolerances } from '../tolerances/Tolerances.tsx';
import type { ViewProps } from '../views.ts';
import { Tornado } from './Tornado.tsx';

export function MattersView(props: ViewProps): JSX.Element {
  const found = createFound('joint.matters', {
    bridge: props.bridge,
    project: props.project,
    index: () => props.index,
  });
  return (
    <div class="study">
      <form
        class="study-question"
        onSubmit={(event) => {
          event.preventDefault();
          void found.ask({});
        }}
      >
        <p>
          The lowest margin with one input at either end of its tolerance, the others in their
          middle.
        </p>
        <button type="submit" class="plain is-first" disabled={props.sizing.issues.stale()}>
          Compute
        </button>
      </form>
      <FoundStatus found={found} label="What matters" stopped="Stopped before it was done." />
      <Show when={found.answer()}>
        {(report) => (
          <div class="study-result" classList={{ 'is-old': found.old() }}>
            <Show when={found.old()}>
              <p class="stale-word">Of the project before its last change. Compute again.</p>
            </Show>
            <p class="study-answer">{middleSentence(report())}</p>
            <Tornado report={report()} />
            <ul class="study-notes">
              {report().flags.map((flag) => (
                <li>{saidText(flag)}</li>
              ))}
            </ul>
          </div>
        )}
      </Show>
      <Tolerances bridge={props.bridge} project={props.project} index={props.index} />
    </div>
  );
}
