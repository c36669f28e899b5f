/** What a set would allow, and what is taken from coupons already: taken by a person, never by itself. */

import { For, type JSX, Show } from 'solid-js';
import { methodWords } from '../../shared/coupon-words.ts';
import { figureText } from '../../shared/measures.ts';
import type { Allowable } from '../../shared/project.ts';
import type {
  AllowableOffer,
  BasisMethod,
  CalibrationOffer,
  CouponSetReport,
} from '../../shared/reports-coupons.ts';
import { restsOn } from '../../shared/rests-on.ts';
import { environment, figure } from '../../shared/words.ts';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import type { ProjectState } from '../state/project.ts';

export interface AllowableOffersProps {
  readonly project: ProjectState;
  readonly report: CouponSetReport;
}

/** What the usual classes of data ask for and these coupons lack. */
function shortText(statistics: CouponSetReport['statistics']): string {
  const short = statistics?.sampling.filter(({ met }) => !met) ?? [];
  if (short.length === 0) return '';
  const all = statistics!.sampling.length === short.length;
  return `${all ? 'Fewer than any usual class of data asks for' : 'Fewer than some usual classes of data ask for'}: ${short.map(({ name }) => name).join(', ')}.`;
}

const methodOf = (method: string): string => methodWords[method as BasisMethod] ?? method;

export function AllowableOffers(props: AllowableOffersProps): JSX.Element {
  const index = (): number =>
    props.project.document()?.adhesives.findIndex(({ id }) => id === props.report.adhesive.id) ??
    -1;
  const path = () => ['adhesives', index(), 'allowables'];
  const taken = (): readonly Allowable[] =>
    props.project.document()?.adhesives[index()]?.allowables ?? [];
  const isHere = ({ temperature, moisture }: Allowable): boolean =>
    temperature === props.report.temperature && moisture === props.report.moisture;
  const here = (): Allowable | undefined => taken().find(isHere);
  const set = (list: readonly Allowable[]): void =>
    props.project.edit(path(), list.length > 0 ? list.map((one) => ({ ...one })) : undefined);
  const head = () => {
    const { setId, name, temperature, moisture, gap } = props.report;
    return { set: setId, setName: name, temperature, moisture, gap };
  };
  const put = (one: Allowable): void => set([...taken().filter((other) => !isHere(other)), one]);
  const take = (offer: AllowableOffer): void => {
    put({ ...head(), ...offer, taken: new Date().toISOString() });
  };
  const calibrate = ({ factor, mean, coupons, batches, mode }: CalibrationOffer): void =>
    put({
      ...head(),
      ...{ basis: 'mean', method: 'mean', value: mean, mean, ratio: factor, factor },
      ...{ coupons, batches, mode, taken: new Date().toISOString() },
    });
  /** True where the coupons have changed since their value was taken. */
  const isOld = (one: Allowable): boolean => {
    const offer =
      one.basis === 'mean'
        ? props.report.calibration
        : props.report.offers.find(({ basis }) => basis === one.basis);
    return (
      one.set === props.report.setId &&
      (!offer || Math.abs(offer.factor - one.factor) > 1e-9 * one.factor)
    );
  };

  return (
    <section class="coupon-block" aria-label="Allowables">
      <h2>
        Allowables: {props.report.adhesive.name} at{' '}
        {environment(props.report.temperature, props.report.moisture)}
      </h2>
      <Show when={props.report.notOffered}>
        {(why) => <p class="about">No allowable from this set. {why()}</p>}
      </Show>
      <For each={props.report.offers}>
        {(offer) => (
          <p class="allowable-offer">
            <span class="allowable-words">
              {offer.basis}-basis {figureText('stress', offer.value)} of{' '}
              {figureText('stress', offer.mean)} mean ({methodOf(offer.method)}), measured over
              predicted for the adhesive {figure(offer.ratio)}: a strength of{' '}
              <b>{figure(offer.factor)}</b> times what the properties of the adhesive give.
            </span>
            <button type="button" class="plain" onClick={() => take(offer)}>
              Take the {offer.basis} value as the allowable
            </button>
          </p>
        )}
      </For>
      <Show when={props.report.offers.length > 0}>
        <p class="units">
          {shortText(props.report.statistics)} The strength of a standard’s lap is no design
          allowable by itself (ASTM D4896): what is taken is the factor over the model, which has
          the stresses of this piece in it. Confirm it on tubes in sleeves.
        </p>
      </Show>
      <Show when={props.report.calibration}>
        {(one) => (
          <p class="allowable-offer">
            <span class="allowable-words">
              Or the mean alone, as a calibration: measured over predicted for the adhesive{' '}
              {figure(one().factor)}, 95 % interval {figure(one().low)} to {figure(one().high)},{' '}
              {one().coupons} coupons. It is no allowable; the knockdown for scatter stays.
            </span>
            <button type="button" class="plain" onClick={() => calibrate(one())}>
              Take the mean as a calibration
            </button>
          </p>
        )}
      </Show>
      <Show
        when={taken().length > 0}
        fallback={
          <p class="units">
            Nothing is taken yet: margins rest on the adhesive’s own rows and its knockdown for
            scatter.
          </p>
        }
      >
        <ul class="allowable-list">
          <For each={taken()}>
            {(one) => (
              <li classList={{ 'is-here': isHere(one) }}>
                {restsOn(one.basis, one.coupons, one)}, {one.setName}: {figure(one.factor)} times
                the adhesive’s strength,{' '}
                {one.basis === 'mean'
                  ? 'beside the knockdown for scatter'
                  : 'in place of the knockdown for scatter'}
                ; taken {one.taken.slice(0, 10)}.
                <Show when={isOld(one)}>
                  {' '}
                  <b>The coupons have changed since: take it again.</b>
                </Show>
                <RemoveButton
                  label={`Remove the allowable at ${environment(one.temperature, one.moisture)}`}
                  title="Remove"
                  onRemove={() => set(taken().filter((other) => other !== one))}
                />
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={here() === undefined && taken().length > 0}>
        <p class="units">
          None of them was tested at {environment(props.report.temperature, props.report.moisture)}.
        </p>
      </Show>
    </section>
  );
}
