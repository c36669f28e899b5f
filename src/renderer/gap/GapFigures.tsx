/** The gap in figures, and each bond seen along its axis with the gap drawn larger than it is. */

import { For, type JSX, Show } from 'solid-js';
import { fixedOf, plainOf, plainText, symbolOf } from '../../shared/measures.ts';
import type { GapCheck } from '../../shared/project.ts';
import type {
  BondGap,
  GapLimits,
  GapReport,
  PlacedGap,
  Uncertain,
} from '../../shared/reports-gap.ts';
import { svgWithin, TakeOut } from '../parts/TakeOut.tsx';
import { aroundSheet, gapSheet, recordedSheet } from '../sheets/gap-sheets.ts';

const gapText = (value: number): string => fixedOf('small', value, 3);
export const within = ({ value, uncertainty }: Uncertain): string =>
  `${gapText(value)} ± ${gapText(uncertainty)}`;
/** Spacers keep the thin side from being thinner, whatever the readings may be off. */
const thinnest = ({ held: { min }, reach }: BondGap): string =>
  reach.from > min.value - min.uncertainty + 5e-4
    ? `${gapText(min.value)} +${gapText(min.uncertainty)} −${gapText(min.value - reach.from)}`
    : within(min);
export const placeOf = ({ x, theta }: PlacedGap): string =>
  `${plainText('length', Number(x.toFixed(1)))} from the mouth, ${Math.round(theta) % 360}°`;
export const limitText = ({ from, to }: Pick<GapLimits, 'from' | 'to'>): string =>
  from === null || to === null
    ? 'no limits known'
    : `${plainOf('small', from)} to ${plainText('small', to)}`;

const whose = { engineer: 'engineer', coupons: 'coupons', spacer: 'spacers' } as const;
/** With whoever set them. */
const limitsText = (limits: GapLimits): string =>
  limits.from === null || limits.to === null
    ? limitText(limits)
    : `${plainText('small', limits.from)} (${whose[limits.fromBy!]}) to ${plainText('small', limits.to)} (${whose[limits.toBy!]})`;

const SIZE = 150;
const RADIUS = 44;
/** A gap as large as this share of the drawing is the thickest one. */
const THICK = 26;

/** Points of a closed line around the axis, the mark at the top, turning to the right. */
function around(radii: readonly number[]): string {
  return radii
    .map((radius, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      const x = SIZE / 2 + radius * Math.sin(angle);
      const y = SIZE / 2 - radius * Math.cos(angle);
      return `${x.toFixed(2)},${y.toFixed(2)}`;
    })
    .join(' ');
}

/** The section at which the held gap is thickest, drawn as held. */
function Ring(props: { readonly gap: BondGap; readonly radius: number }): JSX.Element {
  const row = (): readonly number[] => {
    const { map, held } = props.gap;
    const nearest = map.x.reduce(
      (best, x, i) => (Math.abs(x - held.max.x) < Math.abs(map.x[best]! - held.max.x) ? i : best),
      0,
    );
    return map.held[nearest]!;
  };
  const scale = (): number => THICK / Math.max(1e-6, ...row());
  /** How much larger than the parts the gap is drawn. */
  const times = (): number => Math.round((scale() * props.radius) / RADIUS);
  let figure!: HTMLElement;
  return (
    <figure class="gap-ring-figure" ref={figure}>
      <TakeOut
        what={`Gap around the ${props.gap.bond}`}
        about={`as held; gap drawn ${times()} times larger`}
        sheet={() => aroundSheet(props.gap)}
        picture={() => svgWithin(figure, 'Seen from the mouth, the mark at the top')}
      />
      <svg
        class="gap-ring"
        viewBox={`0 0 ${SIZE} ${SIZE}`}
        role="img"
        aria-label={`The ${props.gap.bond} as held, seen from the mouth: thinnest ${within(props.gap.held.min)} ${symbolOf('small')}, thickest ${within(props.gap.held.max)} ${symbolOf('small')} at ${placeOf(props.gap.held.max)} from the mark. The gap is drawn ${times()} times as large as the parts.`}
      >
        <polygon
          class="gap-ring-bond"
          points={around(row().map((gap) => RADIUS + gap * scale()))}
        />
        <circle class="gap-ring-part" cx={SIZE / 2} cy={SIZE / 2} r={RADIUS} />
        <path class="gap-ring-mark" d={`M${SIZE / 2} ${SIZE / 2 - RADIUS} v9`} />
      </svg>
      <figcaption>gap drawn {times()} times larger</figcaption>
    </figure>
  );
}

/** Where the held gap lies between its limits, with its uncertainty. */
function Gauge(props: { readonly gap: BondGap; readonly limits: GapLimits }): JSX.Element {
  const least = (): number => props.gap.reach.from;
  const most = (): number => props.gap.reach.to;
  const top = (): number => 1.15 * Math.max(most(), props.limits.to ?? 0, 1e-6);
  const at = (value: number): number => Math.max(0, Math.min(100, (100 * value) / top()));
  return (
    <svg class="gap-gauge" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
      <Show when={props.limits.from !== null && props.limits.to !== null}>
        <rect
          class="gap-gauge-range"
          x={at(props.limits.from!)}
          width={at(props.limits.to!) - at(props.limits.from!)}
          y="0"
          height="12"
        />
      </Show>
      <rect
        class="gap-gauge-gap"
        x={at(least())}
        width={at(most()) - at(least())}
        y="4"
        height="4"
      />
    </svg>
  );
}

export function GapFigures(props: { readonly report: GapReport }): JSX.Element {
  const radiusOf = ({ inside }: BondGap): number =>
    (props.report.shapes.find(({ surface }) => surface === inside)?.mean.value ?? 0) / 2;
  return (
    <For each={props.report.bonds}>
      {(gap, i) => (
        <section class="gap-figures" aria-label={`Gap of the ${gap.bond}`}>
          <Ring gap={gap} radius={radiusOf(gap)} />
          <div>
            <p class="take-row">
              <TakeOut
                what={`Gap of the ${gap.bond}`}
                sheet={() => gapSheet(props.report, gap.bond)}
              />
            </p>
            <table>
              <thead>
                <tr>
                  <th scope="col">
                    {gap.bond === 'bond' ? 'gap' : gap.bond}, {symbolOf('small')}
                  </th>
                  <th scope="col">centred</th>
                  <th scope="col">as held</th>
                </tr>
              </thead>
              <tbody>
                <tr>
                  <th scope="row">thinnest</th>
                  <td title={placeOf(gap.centred.min)}>{within(gap.centred.min)}</td>
                  <td title={placeOf(gap.held.min)}>{thinnest(gap)}</td>
                </tr>
                <tr>
                  <th scope="row">mean</th>
                  <td>{within(gap.centred.mean)}</td>
                  <td>{within(gap.held.mean)}</td>
                </tr>
                <tr>
                  <th scope="row">thickest</th>
                  <td title={placeOf(gap.centred.max)}>{within(gap.centred.max)}</td>
                  <td title={placeOf(gap.held.max)}>{within(gap.held.max)}</td>
                </tr>
              </tbody>
            </table>
            <Gauge gap={gap} limits={props.report.limits[i()]!} />
            <p class="units">
              Limits: {limitsText(props.report.limits[i()]!)}. As held thinnest at{' '}
              {placeOf(gap.held.min)}, thickest at {placeOf(gap.held.max)} from the mark.
            </p>
          </div>
        </section>
      )}
    </For>
  );
}

/** Of a check that was recorded earlier: what was written down then, never computed anew. */
export function RecordedFigures(props: {
  readonly bonds: NonNullable<GapCheck['result']>['bonds'];
}): JSX.Element {
  return (
    <>
      <p class="take-row">
        <TakeOut what="Gap as recorded" sheet={() => recordedSheet(props.bonds)} />
      </p>
      <table class="gap-recorded">
        <thead>
          <tr>
            <th scope="col">as recorded, {symbolOf('small')}</th>
            <th scope="col">thinnest</th>
            <th scope="col">mean</th>
            <th scope="col">thickest</th>
            <th scope="col">limits</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.bonds}>
            {(bond) => (
              <tr>
                <th scope="row">{bond.bond === 'bond' ? 'gap' : bond.bond}</th>
                <td>{within(bond.min)}</td>
                <td>{within(bond.mean)}</td>
                <td>{within(bond.max)}</td>
                <td>{limitText(bond)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </>
  );
}
