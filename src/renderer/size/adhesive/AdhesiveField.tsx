/** The adhesive of a joint: a choice among the project's, its properties and its knockdowns. */
import { createMemo, type JSX, Show } from 'solid-js';
import type { Adhesive } from '../../../shared/project.ts';
import { withUnit } from '../../../shared/units.ts';
import { valueAt } from '../../state/project.ts';
import type { FieldSource } from '../entry.ts';
import type { Row } from '../form-model.ts';
import { MaterialField } from '../MaterialField.tsx';
import { AdhesiveProperties } from './AdhesiveProperties.tsx';
import { Cycles } from './Cycles.tsx';
import { Knockdowns } from './Knockdowns.tsx';
import { MixAndCure } from './MixAndCure.tsx';

export interface AdhesiveFieldProps extends FieldSource {
  readonly row: Extract<Row, { kind: 'adhesive' }>;
}

export function AdhesiveField(props: AdhesiveFieldProps): JSX.Element {
  const all = (): readonly Adhesive[] => props.project.document()?.adhesives ?? [];
  const index = createMemo(() => {
    const chosen = valueAt(props.project.document(), props.row.path);
    return all().findIndex(({ id }) => id === chosen);
  });
  const about = (): string => {
    const adhesive = all()[index()];
    return adhesive
      ? `stress-free at ${withUnit('temperature', adhesive.stressFreeTemperature)}`
      : '';
  };
  return (
    <>
      <MaterialField
        project={props.project}
        issues={props.issues}
        all={all()}
        path={props.row.path}
        name={props.row.name}
        about={about()}
      />
      {/* Keyed by place: the fields are of one adhesive. */}
      <Show when={index() >= 0 && `${index()}`} keyed>
        {(place) => (
          <>
            <AdhesiveProperties
              project={props.project}
              issues={props.issues}
              index={Number(place)}
            />
            <Cycles project={props.project} issues={props.issues} index={Number(place)} />
            <MixAndCure project={props.project} issues={props.issues} index={Number(place)} />
            <Knockdowns project={props.project} issues={props.issues} index={Number(place)} />
          </>
        )}
      </Show>
    </>
  );
}
