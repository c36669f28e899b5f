/** What a wall is made of: a choice among the project's adherends, and what there is to set of it. */
import { createMemo, type JSX, Match, Show, Switch } from 'solid-js';
import { isFlat } from '../../../shared/convert-lap.ts';
import type { Adherend, Joint } from '../../../shared/project.ts';
import { adherendReferences } from '../../../shared/project-rules.ts';
import type { LaminateReport } from '../../../shared/reports.ts';
import { valueAt } from '../../state/project.ts';
import { aboutAdherend } from '../about-adherend.ts';
import { useAnswers } from '../answers.ts';
import type { FieldSource } from '../entry.ts';
import type { Row } from '../form-model.ts';
import { MaterialField } from '../MaterialField.tsx';
import { createLaminateReport } from '../stack/laminate-report.ts';
import { addLaminate } from '../stack/new-laminate.ts';
import { StackEditor } from '../stack/StackEditor.tsx';
import { AdherendProperties } from './AdherendProperties.tsx';
import { ThroughThickness } from './ThroughThickness.tsx';

export interface AdherendFieldProps extends FieldSource {
  readonly row: Extract<Row, { kind: 'adherend' }>;
  readonly joint: Joint;
}

export function AdherendField(props: AdherendFieldProps): JSX.Element {
  const document = () => props.project.document();
  const all = (): readonly Adherend[] => document()?.adherends ?? [];
  const index = createMemo(() => {
    const chosen = valueAt(document(), props.row.path);
    return all().findIndex(({ id }) => id === chosen);
  });
  const adherend = (): Adherend | undefined => all()[index()];
  /** The plies of a tapered wall are those of its mean thickness. */
  const wall = createMemo((): number | undefined => {
    const at = props.row.thickness.map((path) => Number(valueAt(document(), path)));
    return at.length === 0 ? undefined : at.reduce((sum, t) => sum + t, 0) / at.length;
  });
  const inputs = createMemo(() => {
    const laminate = adherend();
    if (laminate?.kind !== 'laminate') return '';
    const ply = document()?.plies?.find(({ id }) => id === laminate.ply);
    return JSON.stringify([laminate.id, laminate.stack, ply, wall(), isFlat(props.joint)]);
  });
  const report = createLaminateReport(
    useAnswers(),
    () => ({ adherendId: adherend()?.id ?? '', wall: wall(), flat: isFlat(props.joint) }),
    inputs,
  );
  /** Not that of the laminate chosen before. */
  const current = (): LaminateReport | null => {
    const found = report();
    return found !== null && found.adherendId === adherend()?.id ? found : null;
  };
  const sharedWith = createMemo(() => {
    const id = adherend()?.id;
    return (document()?.joints ?? [])
      .filter((joint) => joint.id !== props.joint.id)
      .filter((joint) => adherendReferences(joint).some(([, used]) => used === id))
      .map(({ name }) => name);
  });
  /** The material whose name is to be open when its fields are built. */
  let fresh: string | null = null;
  const setFresh = (id: string | null): void => {
    fresh = id;
  };
  const isFresh = (): boolean => fresh !== null && adherend()?.id === fresh;
  const about = (): string => {
    const chosen = adherend();
    return chosen ? aboutAdherend(chosen, current(), isFlat(props.joint)) : '';
  };
  /** Fields are of one adherend: they are built anew for another, never for a figure. */
  const editable = createMemo(() => `${adherend()?.kind ?? ''} ${index()}`);
  const placeOf = (kind: Adherend['kind']): string | undefined =>
    adherend()?.kind === kind ? editable() : undefined;
  const properties = (kind: 'isotropic' | 'orthotropic'): JSX.Element => (
    <AdherendProperties
      project={props.project}
      issues={props.issues}
      kind={kind}
      index={index()}
      path={props.row.path}
      part={props.row.part}
      flat={isFlat(props.joint)}
      sharedWith={sharedWith()}
      opened={isFresh()}
      onFresh={setFresh}
    />
  );

  return (
    <>
      <MaterialField
        project={props.project}
        issues={props.issues}
        all={all()}
        path={props.row.path}
        name={props.row.name}
        help="adherend"
        about={about()}
      />
      {/* Sleeves are printed or turned; a tube or strip is laid up. */}
      <Show when={props.row.thickness.length === 1 && adherend()?.kind !== 'laminate'}>
        <p class="lay-up">
          <button
            type="button"
            class="link"
            title="Adds a laminate to the project and makes this part of it."
            onClick={() => addLaminate(props.project, props.row.path)}
          >
            {document()?.plies?.length
              ? 'New laminate from a stack'
              : 'New laminate, of a typical ply'}
          </button>
        </p>
      </Show>
      <Switch>
        <Match when={placeOf('laminate')} keyed>
          {(_place) => (
            <StackEditor
              project={props.project}
              issues={props.issues}
              index={index()}
              part={props.row.part}
              flat={isFlat(props.joint)}
              report={current()}
              sharedWith={sharedWith()}
              onAnother={() => addLaminate(props.project, props.row.path)}
              path={props.row.path}
              opened={isFresh()}
              onFresh={setFresh}
            />
          )}
        </Match>
        <Match when={placeOf('orthotropic')} keyed>
          {(_place) => (
            <>
              {properties('orthotropic')}
              <ThroughThickness
                project={props.project}
                issues={props.issues}
                index={index()}
                part={props.row.part}
              />
            </>
          )}
        </Match>
        <Match when={placeOf('isotropic')} keyed>
          {(_place) => properties('isotropic')}
        </Match>
      </Switch>
    </>
  );
}
