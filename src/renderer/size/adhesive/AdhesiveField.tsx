/** The adhesive of a joint: a choice among the project's, its properties and its knockdowns. */
import { createMemo, type JSX, Show } from 'solid-js';
import type { Adhesive, Joint } from '../../../shared/project.ts';
import { withUnit } from '../../../shared/units.ts';
import { valueAt } from '../../state/project.ts';
import type { FieldSource } from '../entry.ts';
import type { Row } from '../form-model.ts';
import { MaterialField } from '../MaterialField.tsx';
import { AdhesiveName } from './AdhesiveName.tsx';
import { AdhesiveProperties } from './AdhesiveProperties.tsx';
import { Cycles } from './Cycles.tsx';
import { Knockdowns } from './Knockdowns.tsx';
import { MixAndCure } from './MixAndCure.tsx';
import { States } from './States.tsx';

export interface AdhesiveFieldProps extends FieldSource {
  readonly row: Extract<Row, { kind: 'adhesive' }>;
  readonly joint: Joint;
}

export function AdhesiveField(props: AdhesiveFieldProps): JSX.Element {
  const all = (): readonly Adhesive[] => props.project.document()?.adhesives ?? [];
  const index = createMemo(() => {
    const chosen = valueAt(props.project.document(), props.row.path);
    return all().findIndex(({ id }) => id === chosen);
  });
  /** The adhesive whose name is to be open when its fields are built. */
  let fresh: string | null = null;
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
        help="adhesive"
        about={about()}
      />
      {/* Keyed by place: the fields are of one adhesive. */}
      <Show when={index() >= 0 && `${index()}`} keyed>
        {(place) => (
          <>
            <States project={props.project} issues={props.issues} index={Number(place)} />
            <AdhesiveProperties
              project={props.project}
              issues={props.issues}
              index={Number(place)}
            />
            <Cycles project={props.project} issues={props.issues} index={Number(place)} />
            <MixAndCure project={props.project} issues={props.issues} index={Number(place)} />
            <Knockdowns project={props.project} issues={props.issues} index={Number(place)} />
            <AdhesiveName
              project={props.project}
              issues={props.issues}
              index={Number(place)}
              path={props.row.path}
              jointId={props.joint.id}
              opened={fresh !== null && all()[Number(place)]?.id === fresh}
              onFresh={(id) => {
                fresh = id;
              }}
            />
          </>
        )}
      </Show>
    </>
  );
}
