/** Inputs of a joint with their sources. */
import { For, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Adhesive, Joint, Project } from '../../shared/project.ts';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { restsOn } from '../../shared/rests-on.ts';
import { originWords, toleranceText } from '../../shared/scatter-words.ts';
import { wallsOf } from '../../shared/sheet-words.ts';
import { displayUnit, toDisplay } from '../../shared/units.ts';
import { environment } from '../../shared/words.ts';
import { stateFields } from '../size/adhesive/state-fields.ts';
import { ledgerLines } from '../size/StressNotes.tsx';
import {
  adherendLines,
  adhesiveLines,
  factorLines,
  fatigueLines,
  headOf,
  knockdownLines,
  loadTable,
  sizeLines,
} from './input-rows.ts';
import { PairTable, RowTable, SourceText } from './Tables.tsx';

export interface InputsPartProps {
  readonly project: Project;
  readonly joint: Joint;
  readonly sheet: JointSheet;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Materials(props: InputsPartProps): JSX.Element {
  const flat = isFlat(props.joint);
  return (
    <For each={wallsOf(props.joint, props.project)}>
      {({ adherend, parts }) => {
        const ply =
          adherend.kind === 'laminate'
            ? props.project.plies?.find(({ id }) => id === adherend.ply)
            : undefined;
        return (
          <PairTable
            title={`${capital(parts.join(', '))}: ${adherend.name}`}
            note={
              <>
                <SourceText source={adherend.source} />
                <Show when={ply}>
                  {(one) => (
                    <>
                      {' '}
                      Ply: <SourceText source={one().source} />
                    </>
                  )}
                </Show>
              </>
            }
            pairs={adherendLines(adherend, ply, flat)}
          />
        );
      }}
    </For>
  );
}

function AdhesiveTables(props: { readonly adhesive: Adhesive }): JSX.Element {
  const { adhesive } = props;
  return (
    <>
      <RowTable
        title={`Adhesive: ${adhesive.name}`}
        note={<SourceText source={adhesive.source} />}
        class="is-states"
        head={[
          headOf('Temperature', 'temperature'),
          ...stateFields.map(({ label, quantity }) => headOf(label, quantity)),
        ]}
        rows={adhesive.states.map((state) => [
          `${toDisplay('temperature', state.temperature)} ${state.moisture}`,
          ...stateFields.map(({ key, quantity }) => {
            const value = state[key];
            return value === undefined ? 'not set' : toDisplay(quantity, value);
          }),
        ])}
      />
      <PairTable
        title="Adhesive, the rest"
        note={
          <Show when={adhesive.fracture}>
            {(one) => (
              <>
                Fracture: <SourceText source={one().source} />
              </>
            )}
          </Show>
        }
        pairs={adhesiveLines(adhesive)}
      />
      <Show when={adhesive.knockdowns}>
        {(one) => (
          <PairTable
            title="Knockdowns of its strength"
            note={<SourceText source={one().source} />}
            pairs={knockdownLines(one())}
          />
        )}
      </Show>
      <Show when={adhesive.allowables?.length}>
        <RowTable
          title="Allowables from own coupons"
          head={[
            'Rests on',
            'Set',
            headOf('Gap', 'gap'),
            headOf('Value', 'couponStrength'),
            'Factor',
            'Taken',
          ]}
          rows={(adhesive.allowables ?? []).map((one) => [
            restsOn(one.basis, one.coupons, one),
            one.setName,
            toDisplay('gap', one.gap),
            toDisplay('couponStrength', one.value),
            toDisplay('strengthFactor', one.factor),
            one.taken.slice(0, 10),
          ])}
        />
      </Show>
      <Show when={adhesive.fatigue}>
        {(one) => (
          <PairTable
            title="S-N line of its shear"
            note={<SourceText source={one().source} />}
            pairs={fatigueLines(one())}
          />
        )}
      </Show>
    </>
  );
}

export function InputsPart(props: InputsPartProps): JSX.Element {
  const { project, joint, sheet } = props;
  const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive);
  const loads = loadTable(project, joint);
  const ledgers = ledgerLines(sheet.report.stress?.ledgers ?? []);
  const isEvery = joint.loads.some(
    (load) => project.loadCases.find(({ id }) => id === load.case)?.everyCondition,
  );
  return (
    <>
      <h2>Inputs and their sources</h2>
      <PairTable title="Geometry" pairs={sizeLines(project, joint)} />
      <Materials {...props} />
      <Show when={adhesive}>{(one) => <AdhesiveTables adhesive={one()} />}</Show>
      <Show when={ledgers.length > 0}>
        <p class="sheet-line">
          <strong>Knockdowns in the state drawn:</strong>{' '}
          {ledgers.map(({ name, text }) => (name === '' ? text : `${name}: ${text}`)).join('; ')}.
        </p>
      </Show>
      <Show
        when={loads.rows.length > 0}
        fallback={<p class="sheet-line">No load case acts on this joint.</p>}
      >
        <RowTable title="Loads" class="is-loads" head={loads.head} rows={loads.rows} />
      </Show>
      <Show when={isEvery && project.conditions?.length}>
        <p class="sheet-line">
          <strong>Conditions:</strong>{' '}
          {(project.conditions ?? [])
            .map((one) => `${one.name}, ${environment(one.temperature, one.moisture)}`)
            .join('; ')}
          .
        </p>
      </Show>
      <PairTable
        title="Factors and settings"
        note="Limit and cyclic loads are multiplied by the factor before yield or before failure; ultimate loads contain theirs."
        pairs={factorLines(project)}
      />
      <PairTable
        title="Tolerances, for What matters and Scatter"
        note={`The margins take the worst gap from the tolerances under Geometry. Spread: standard deviation or half-width; temperature in ${displayUnit('temperature').symbol}.`}
        pairs={sheet.tolerances
          .filter(({ spread }) => spread > 0)
          .map((one) => ({
            label: one.label,
            value: (
              <>
                {toleranceText(one)}
                <span classList={{ typical: one.origin === 'typical' }}>
                  {`, ${originWords[one.origin]}`}
                </span>
              </>
            ),
          }))}
        across={2}
      />
    </>
  );
}
