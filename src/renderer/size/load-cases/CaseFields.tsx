/** A load case of the project as it is looked at from one of its joints. */
import { createUniqueId, type JSX, Show } from 'solid-js';
import { helpOfChoice } from '../../../shared/field-help.ts';
import type { LoadCase } from '../../../shared/project.ts';
import { environment, kindOf, listed } from '../../../shared/words.ts';
import { tellHelp } from '../../help/known-fields.ts';
import { changeKind } from '../../state/load-cases.ts';
import { usesOfCase } from '../../state/uses.ts';
import { Choice } from '../Choice.tsx';
import { Disclosure } from '../Disclosure.tsx';
import type { FieldSource } from '../entry.ts';
import { moistures } from '../form-model.ts';
import { NumberRow } from '../NumberRow.tsx';
import { TextField } from '../TextField.tsx';
import { type CaseFigure, caseInput, caseLabels, kindHelp, kinds } from './case-inputs.ts';
import { RemoveCase } from './RemoveCase.tsx';

export interface CaseFieldsProps extends FieldSource {
  /** Place of the case in the project. */
  readonly index: number;
  readonly loadCase: LoadCase;
  readonly jointId: string;
  /** Just added: open, to be named. */
  readonly opened: boolean;
  readonly onGone: () => void;
}

export function CaseFields(props: CaseFieldsProps): JSX.Element {
  const ids = [createUniqueId(), createUniqueId()] as const;
  const path = (...keys: readonly string[]) => ['loadCases', props.index, ...keys];
  const name = (): string => props.loadCase.name;
  const figure = (key: CaseFigure): JSX.Element => (
    <NumberRow
      project={props.project}
      issues={props.issues}
      label={caseLabels[key]}
      input={caseInput(key, path(), name())}
    />
  );
  const others = (): readonly string[] => {
    const document = props.project.document();
    if (!document) return [];
    const others = document.joints.filter(({ id }) => id !== props.jointId);
    return usesOfCase({ ...document, joints: others }, props.loadCase.id).joints;
  };
  const conditions = (): number => props.project.document()?.conditions?.length ?? 0;

  return (
    <Disclosure
      title={`${kindOf(props.loadCase)} · ${environment(props.loadCase.temperature, props.loadCase.moisture)}`}
      class="is-case"
      opened={props.opened}
      about={{ issues: props.issues, path: path() }}
    >
      <TextField
        project={props.project}
        issues={props.issues}
        path={path('name')}
        label="Name"
        name={`Name of ${name()}`}
      />
      <div class="row is-choice">
        <label for={ids[0]}>Kind</label>
        <Choice
          id={ids[0]}
          name={`Kind of ${name()}`}
          help="caseKind"
          options={kinds}
          value={props.loadCase.kind}
          onChoose={(kind) => changeKind(props.project, props.index, kind as LoadCase['kind'])}
        />
      </div>
      <p class="about">{kindHelp[props.loadCase.kind]}</p>
      {figure('temperature')}
      <div class="row is-choice">
        <label for={ids[1]}>Moisture</label>
        <Choice
          id={ids[1]}
          name={`Moisture of ${name()}`}
          help="moisture"
          options={moistures}
          value={props.loadCase.moisture}
          onChoose={(moisture) => props.project.edit(path('moisture'), moisture)}
        />
      </div>
      <Show when={props.loadCase.kind === 'cyclic'}>
        {figure('cycles')}
        {figure('ratio')}
      </Show>
      <label class="tick">
        <input
          ref={(field) => tellHelp(field, () => helpOfChoice('everyCondition'))}
          type="checkbox"
          checked={props.loadCase.everyCondition ?? false}
          onChange={(event) =>
            props.project.edit(
              path('everyCondition'),
              event.currentTarget.checked ? true : undefined,
            )
          }
        />
        <span>
          Judged in every condition too
          <Show when={conditions() === 0}>
            <span class="units"> (the project has none yet)</span>
          </Show>
        </span>
      </label>
      <Show when={others().length > 0}>
        <p class="about">Acts on {listed(others())} as well: it changes there too.</p>
      </Show>
      <RemoveCase project={props.project} loadCase={props.loadCase} onGone={props.onGone}>
        {(press) => (
          <button type="button" class="link" onClick={press}>
            Remove this case from the project
          </button>
        )}
      </RemoveCase>
    </Disclosure>
  );
}
