/** The test matrix: which specimens, where, at which gaps, how many; makes the sets. */
import { createMemo, For, Index, type JSX, Show } from 'solid-js';
import { type PlannedSets, planCoupons, sleeveJoints } from '../../shared/coupon-plan.ts';
import { symbolOf } from '../../shared/measures.ts';
import type { Moisture, Project } from '../../shared/project.ts';
import { standardSpecimens } from '../../shared/standard-specimens.ts';
import { Choice } from '../size/Choice.tsx';
import { isMade } from '../state/coupon-edits.ts';
import { createMatrixChoice, matrixOf } from './matrix-form.ts';
import { NumberBox } from './NumberBox.tsx';

export interface MatrixFormProps {
  readonly project: Project;
  readonly onMake: (planned: PlannedSets) => void;
}

const moistures = [
  { value: 'dry', text: 'dry' },
  { value: 'wet', text: 'wet' },
];

function Tick(props: {
  readonly on: boolean;
  readonly onTick: (on: boolean) => void;
  readonly title?: string;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <label class="coupon-tick" title={props.title}>
      <input
        type="checkbox"
        checked={props.on}
        onChange={(event) => props.onTick(event.currentTarget.checked)}
      />
      <span>{props.children}</span>
    </label>
  );
}

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

export function MatrixForm(props: MatrixFormProps): JSX.Element {
  const { choice, set, adhesive, tick } = createMatrixChoice(props.project);
  const own = () => (props.project.coupons?.specimens ?? []).filter((one) => !isMade(one));
  /** A piece that was ticked may be gone, or be one of a standard again. */
  const matrix = createMemo(() => {
    const here = own().map(({ id }) => id);
    return matrixOf({ ...choice, own: choice.own.filter((id) => here.includes(id)) });
  });
  const planned = createMemo(() => {
    const found = matrix();
    return typeof found === 'string' ? null : planCoupons(props.project, found);
  });
  const said = (): string => {
    const [found, plan] = [matrix(), planned()];
    if (typeof found === 'string' || !plan) return String(found);
    const { added, already } = plan;
    const { pieces, environments, gaps, planned: each } = found;
    const cells = `${counted(pieces.length, 'specimen')} × ${counted(environments.length, 'environment')} × ${counted(gaps.length, 'gap')}`;
    const there = already > 0 ? `, ${already} of them in the project already` : '';
    const coupons = added.length * each.batches * each.each;
    return `${cells}: ${counted(pieces.length * environments.length * gaps.length, 'set')}${there}; ${counted(coupons, 'coupon')}.`;
  };
  return (
    <form
      class="coupon-matrix"
      aria-label="Test matrix"
      onSubmit={(event) => {
        event.preventDefault();
        const plan = planned();
        if (plan && plan.added.length > 0) props.onMake(plan);
      }}
    >
      <fieldset>
        <legend>Specimens</legend>
        <div class="coupon-line">
          <span>of</span>
          <Choice
            name="Material of the standards’ pieces"
            help="couponMaterial"
            options={props.project.adherends.map(({ id, name }) => ({ value: id, text: name }))}
            value={choice.adherend}
            onChoose={(id) => set('adherend', id)}
          />
        </div>
        <For each={standardSpecimens}>
          {({ id, name, standard, remark }) => (
            <Tick
              on={choice.standards.includes(id)}
              onTick={(on) => tick('standards', id, on)}
              title={remark}
            >
              {standard} <span class="units">{name}</span>
            </Tick>
          )}
        </For>
        <For each={sleeveJoints(props.project)}>
          {(joint) => (
            <Tick
              on={choice.joints.includes(joint.id)}
              onTick={(on) => tick('joints', joint.id, on)}
            >
              Tube in sleeve <span class="units">as {joint.name}</span>
            </Tick>
          )}
        </For>
        <For each={own()}>
          {(piece) => (
            <Tick on={choice.own.includes(piece.id)} onTick={(on) => tick('own', piece.id, on)}>
              {piece.name}
            </Tick>
          )}
        </For>
      </fieldset>
      <fieldset>
        <legend>Environments</legend>
        <Index each={choice.environments}>
          {(row, i) => (
            <div class="coupon-line">
              <Tick on={row().on} onTick={(on) => set('environments', i, 'on', on)}>
                {row().name}
              </Tick>
              <NumberBox
                name={`Temperature, ${row().name}, ${symbolOf('temperature')}`}
                quantity="temperature"
                unit
                text={row().temperature}
                onText={(text) => set('environments', i, 'temperature', text)}
              />
              <Choice
                name={`Moisture, ${row().name}`}
                help="moisture"
                options={moistures}
                value={row().moisture}
                onChoose={(value) => set('environments', i, 'moisture', value as Moisture)}
              />
            </div>
          )}
        </Index>
        <p class="units">
          Cold, hot and wet are those in which the joints are judged, where there are some.
        </p>
      </fieldset>
      <fieldset>
        <legend>Gaps</legend>
        <Index each={choice.gaps}>
          {(row, i) => (
            <div class="coupon-line">
              <Tick on={row().on} onTick={(on) => set('gaps', i, 'on', on)}>
                {row().name}
              </Tick>
              <NumberBox
                name={`Gap, ${row().name}, ${symbolOf('small')}`}
                quantity="gap"
                unit
                text={row().gap}
                onText={(text) => set('gaps', i, 'gap', text)}
              />
            </div>
          )}
        </Index>
        <p class="units">From the joints with this adhesive.</p>
      </fieldset>
      <fieldset>
        <legend>Adhesive and number</legend>
        <Choice
          name="Adhesive"
          help="adhesive"
          options={props.project.adhesives.map(({ id, name }) => ({ value: id, text: name }))}
          value={choice.adhesive}
          onChoose={(id) => adhesive(id, props.project)}
        />
        <div class="coupon-line">
          <NumberBox
            name="Batches"
            quantity="batchCount"
            unit="batches of"
            whole
            text={choice.batches}
            onText={(text) => set('batches', text)}
          />
          <NumberBox
            name="Coupons of each batch"
            quantity="couponCount"
            unit="coupons"
            whole
            text={choice.each}
            onText={(text) => set('each', text)}
          />
        </div>
        <p class="units">Three batches of six are the least of the usual classes of data (B18).</p>
        <p class="coupon-sum" role="status">
          {said()}
        </p>
        <button
          type="submit"
          class="plain is-first"
          disabled={(planned()?.added.length ?? 0) === 0}
        >
          <Show when={planned()?.added.length} fallback="Make sets">
            {(n) => <>Make {counted(n(), 'set')}</>}
          </Show>
        </button>
      </fieldset>
    </form>
  );
}
