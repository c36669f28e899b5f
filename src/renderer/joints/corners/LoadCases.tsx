/** The project's load cases: what each is, and which are judged in every condition. */

import { Index, type JSX, Show } from 'solid-js';
import { helpOfChoice } from '../../../shared/field-help.ts';
import type { LoadCase } from '../../../shared/project.ts';
import { tellHelp } from '../../help/known-fields.ts';
import { RemoveButton } from '../../parts/RemoveButton.tsx';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { loadCasesSheet } from '../../sheets/margin-sheets.ts';
import { Choice } from '../../size/Choice.tsx';
import type { FieldSource } from '../../size/entry.ts';
import { moistures } from '../../size/form-model.ts';
import {
  type CaseFigure,
  caseInput,
  caseLabels,
  kindHelp,
  kinds,
} from '../../size/load-cases/case-inputs.ts';
import { RemoveCase } from '../../size/load-cases/RemoveCase.tsx';
import { NumberField } from '../../size/NumberField.tsx';
import { TextField } from '../../size/TextField.tsx';
import { addLoadCase, changeKind, MOST_CASES } from '../../state/load-cases.ts';

interface CaseRowProps extends FieldSource {
  readonly loadCase: LoadCase;
  readonly index: number;
  readonly onGone: () => void;
}

function CaseRow(props: CaseRowProps): JSX.Element {
  const path = ['loadCases', props.index];
  const which = `load case ${props.index + 1}`;
  const figure = (key: CaseFigure): JSX.Element => (
    <div class="row">
      <NumberField
        project={props.project}
        issues={props.issues}
        input={caseInput(key, path, which)}
      />
    </div>
  );
  const isCyclic = (): boolean => props.loadCase.kind === 'cyclic';
  return (
    <tr>
      <td>
        <TextField
          project={props.project}
          issues={props.issues}
          path={[...path, 'name']}
          name={`Name of ${which}`}
        />
      </td>
      <td title={kindHelp[props.loadCase.kind]}>
        <Choice
          name={`Kind of ${which}`}
          help="caseKind"
          options={kinds}
          value={props.loadCase.kind}
          onChoose={(kind) => changeKind(props.project, props.index, kind as LoadCase['kind'])}
        />
      </td>
      <td>{figure('temperature')}</td>
      <td>
        <Choice
          name={`Moisture of ${which}`}
          help="moisture"
          options={moistures}
          value={props.loadCase.moisture}
          onChoose={(moisture) => props.project.edit([...path, 'moisture'], moisture)}
        />
      </td>
      <td class="is-cycles">
        <Show when={isCyclic()}>{figure('cycles')}</Show>
      </td>
      <td>
        <Show when={isCyclic()}>{figure('ratio')}</Show>
      </td>
      <td class="is-every">
        <input
          ref={(field) => tellHelp(field, () => helpOfChoice('everyCondition'))}
          type="checkbox"
          aria-label={`${props.loadCase.name}, judged in every condition`}
          checked={props.loadCase.everyCondition ?? false}
          onChange={(event) =>
            props.project.edit(
              [...path, 'everyCondition'],
              event.currentTarget.checked ? true : undefined,
            )
          }
        />
      </td>
      <td>
        <RemoveCase project={props.project} loadCase={props.loadCase} onGone={props.onGone}>
          {(press) => (
            <RemoveButton
              label={`Remove ${which}, ${props.loadCase.name}`}
              title="Take this case out of the project, with its loads"
              onRemove={press}
            />
          )}
        </RemoveCase>
      </td>
    </tr>
  );
}

export function LoadCases(props: FieldSource): JSX.Element {
  const cases = (): readonly LoadCase[] => props.project.document()?.loadCases ?? [];
  let table!: HTMLDivElement;
  let adder: HTMLButtonElement | undefined;
  const add = (): void => {
    if (addLoadCase(props.project) === null) return;
    const name = table.querySelector<HTMLInputElement>('tr:last-child .words');
    name?.focus();
    name?.select();
  };
  return (
    <section data-pane class="conditions load-cases" aria-labelledby="load-cases-title">
      <div class="take-head">
        <h2 id="load-cases-title">Load cases</h2>
        <Show when={cases().length > 0}>
          <TakeOut what="Load cases" sheet={() => loadCasesSheet(cases())} />
        </Show>
      </div>
      <p class="units">
        Occasions on which loads act. The loads themselves are put in on the Size page, joint by
        joint.
      </p>
      <div ref={table}>
        <Show when={cases().length > 0} fallback={<p class="about">None yet.</p>}>
          <table>
            <thead>
              <tr>
                <th scope="col">Name</th>
                <th scope="col">Kind</th>
                <th scope="col">{caseLabels.temperature}</th>
                <th scope="col">Moisture</th>
                <th scope="col">{caseLabels.cycles}</th>
                <th scope="col" title="Lowest over highest load of a cycle">
                  {caseLabels.ratio}
                </th>
                <th scope="col" title="Judged in each of the conditions too, not only in its own">
                  In every condition
                </th>
                <td />
              </tr>
            </thead>
            <tbody>
              <Index each={cases()}>
                {(loadCase, k) => (
                  <CaseRow
                    project={props.project}
                    issues={props.issues}
                    loadCase={loadCase()}
                    index={k}
                    onGone={() => adder?.focus()}
                  />
                )}
              </Index>
            </tbody>
          </table>
        </Show>
      </div>
      <Show when={cases().length < MOST_CASES}>
        <button type="button" class="link" ref={adder} onClick={add}>
          Add a load case
        </button>
      </Show>
    </section>
  );
}
