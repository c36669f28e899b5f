/** How the bending at the ends of a flat single lap is found, and what both ways give. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import type { EdgeMomentReport } from '../../shared/reports.ts';
import { figure } from '../../shared/words.ts';
import { useAnswers } from './answers.ts';
import { Choice } from './Choice.tsx';
import type { FieldSource } from './entry.ts';

type Method = EdgeMomentReport['chosen'];

const methods: readonly { readonly value: Method; readonly text: string }[] = [
  { value: 'goland-reissner', text: 'Goland and Reissner' },
  { value: 'hart-smith', text: 'Hart-Smith' },
];

const both = ({ golandReissner, hartSmith }: EdgeMomentReport): string => {
  const ends = ({ root, mouth }: { readonly root: number; readonly mouth: number }): string =>
    figure(root) === figure(mouth) ? figure(root) : `${figure(root)} root, ${figure(mouth)} mouth`;
  return `k ${ends(golandReissner)}; by Hart-Smith ${ends(hartSmith)}`;
};

export function EdgeMomentField(props: FieldSource): JSX.Element {
  const id = createUniqueId();
  const answers = useAnswers();
  const chosen = (): Method => props.project.document()?.settings.edgeMoment ?? 'goland-reissner';
  const report = (): EdgeMomentReport | null => answers.stress()?.edgeMoment ?? null;
  return (
    <div class="row is-choice">
      <label for={id} title="The moment at the ends of the lap is k · P · e / 2.">
        Edge moment
      </label>
      <Choice
        id={id}
        name="Edge moment"
        help="edgeMoment"
        options={methods}
        value={chosen()}
        describedBy={`${id}-about`}
        onChoose={(value) => props.project.edit(['settings', 'edgeMoment'], value)}
      />
      <p class="about is-below" id={`${id}-about`}>
        for every flat single lap of the project
        <Show when={report()}>{(found) => <>; {both(found())}</>}</Show>
      </p>
    </div>
  );
}
