/** The sets of the test matrix: what is tested where, what is expected, how many are in. */

import { For, type JSX, Show } from 'solid-js';
import { plainOf, symbolOf } from '../../shared/measures.ts';
import type { CouponSet } from '../../shared/project-coupons.ts';
import { environment, sentence } from '../../shared/words.ts';
import { Mark } from '../parts/Mark.tsx';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import type { CouponsState } from '../state/coupons.ts';
import { areaText, loadText, plannedNumber, plannedText } from './coupon-format.ts';

export interface SetTableProps {
  readonly state: CouponsState;
  readonly onRename: (id: string, name: string) => void;
  readonly onRemove: (set: CouponSet) => void;
  readonly onOpen: (set: CouponSet) => void;
}

function Row(props: SetTableProps & { readonly set: CouponSet }): JSX.Element {
  const report = () => props.state.report(props.set.id);
  const specimen = () => props.state.specimens().find(({ id }) => id === props.set.specimen);
  const predicted = () => report()?.predicted;
  /** Why there is no load to expect; null where there is one, or where it is not known yet. */
  const why = (): string | null => {
    const refusal = props.state.refusal(props.set.id);
    if (refusal) return refusal.message;
    return predicted()?.load === null ? predicted()!.why : null;
  };
  const offSurface = (): boolean =>
    report()?.flags.some(({ code }) => code === 'surface-failed') ?? false;
  const inText = (): string => {
    const [n, of] = [props.set.results.length, plannedNumber(props.set)];
    return of === 0 ? String(n) : `${n} of ${of}`;
  };
  return (
    <tr classList={{ 'is-old': props.state.old(props.set.id) }}>
      <th scope="row">
        <input
          class="words"
          type="text"
          maxlength={120}
          autocomplete="off"
          aria-label={`Name of set ${props.set.name}`}
          value={props.set.name}
          onChange={(event) => {
            props.onRename(props.set.id, event.currentTarget.value);
            event.currentTarget.value = props.set.name;
          }}
        />
        <span class="units">
          {[specimen()?.standard, report()?.adhesive.name].filter(Boolean).join(' · ')}
        </span>
      </th>
      <td>{environment(props.set.temperature, props.set.moisture)}</td>
      <td class="number">{plainOf('small', props.set.gap)}</td>
      <td class="number">{plannedText(props.set)}</td>
      <td class="number">{report() ? areaText(report()!.area) : ''}</td>
      <Show
        when={why()}
        fallback={
          <>
            <td class="number">{predicted()?.load == null ? '' : loadText(predicted()!.load!)}</td>
            <td>{predicted()?.mode}</td>
            <td class="number">{report()?.grip == null ? '' : loadText(report()!.grip!)}</td>
          </>
        }
      >
        {(words) => (
          <td colspan="3" class="coupon-why">
            {sentence(words())}
          </td>
        )}
      </Show>
      <td>
        <button
          type="button"
          class="link"
          aria-label={`Results of ${props.set.name}: ${inText()}${offSurface() ? ', some came off a surface' : ''}`}
          title={offSurface() ? 'Coupons came off a surface: see the remarks' : undefined}
          onClick={() => props.onOpen(props.set)}
        >
          <Show when={offSurface()}>
            <Mark state="fails" />{' '}
          </Show>
          {inText()}
        </button>
      </td>
      <td class="end">
        <RemoveButton
          label={`Remove set ${props.set.name}`}
          title="Remove this set"
          onRemove={() => props.onRemove(props.set)}
        />
      </td>
    </tr>
  );
}

export function SetTable(props: SetTableProps): JSX.Element {
  return (
    <table class="coupon-sets">
      <caption class="hidden">Sets of coupons, with what is expected of each</caption>
      <thead>
        <tr>
          <th scope="col">Set</th>
          <th scope="col">Environment</th>
          <th scope="col" class="number">
            Gap, {symbolOf('small')}
          </th>
          <th scope="col" class="number" title="Batches × coupons of each">
            Planned
          </th>
          <th scope="col" class="number" title="Bonded area, all bonds together">
            Area
          </th>
          <th
            scope="col"
            class="number"
            title="Pull at which the model expects it to fail, by mean properties"
          >
            Expected
          </th>
          <th scope="col">Fails by</th>
          <th scope="col" class="number" title="What grips and machine must hold: twice the load">
            Grips
          </th>
          <th scope="col">Results</th>
          <th scope="col">
            <span class="hidden">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        <For each={props.state.sets()}>{(set) => <Row {...props} set={set} />}</For>
      </tbody>
    </table>
  );
}
