/** Strength against gap from own coupons: offered in place of the adhesive's table, taken by a person. */

import { For, type JSX } from 'solid-js';
import { plainOf, plainText, symbolOf } from '../../shared/measures.ts';
import type { Knockdowns } from '../../shared/project.ts';
import type { GapCurve } from '../../shared/reports-coupons.ts';
import { inSi } from '../../shared/shown-units.ts';
import { environment } from '../../shared/words.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { gapCurveSheet } from '../sheets/coupon-sheets.ts';
import type { ProjectState } from '../state/project.ts';

export interface GapCurvesProps {
  readonly project: ProjectState;
  readonly curves: readonly GapCurve[];
}

/** More than the coupons of the reference gap carry is not drawn out of others. */
const rowsOf = ({ rows }: GapCurve): Knockdowns['gap'] =>
  rows.map(({ gap, factor }) => ({ gap, factor: Number(Math.min(1, factor).toFixed(4)) }));

const bare = { environment: 1, ageing: 1, scatter: 1 } as const;

export function GapCurves(props: GapCurvesProps): JSX.Element {
  const take = (curve: GapCurve): void => {
    const adhesives = props.project.document()?.adhesives ?? [];
    const index = adhesives.findIndex(({ id }) => id === curve.adhesive);
    if (index < 0) return;
    const { environment: around, ageing, scatter } = adhesives[index]!.knockdowns ?? bare;
    const coupons = curve.rows.reduce((sum, { n }) => sum + n, 0);
    props.project.edit(['adhesives', index, 'knockdowns'], {
      environment: around,
      ageing,
      scatter,
      gap: rowsOf(curve),
      source: {
        kind: 'tested',
        text: `Strength against gap from ${coupons} coupons at ${inSi(() => environment(curve.temperature, curve.moisture))}; the other knockdowns as they were.`,
      },
    });
  };
  return (
    <For each={props.curves}>
      {(curve) => (
        <section class="coupon-block" aria-label="Strength against gap">
          <h2>
            Strength against gap, {environment(curve.temperature, curve.moisture)}{' '}
            <TakeOut
              what={`Strength against gap, ${environment(curve.temperature, curve.moisture)}`}
              sheet={() => gapCurveSheet(curve)}
            />
          </h2>
          <table class="coupon-figures is-narrow">
            <thead>
              <tr>
                <th scope="col" class="number">
                  gap, {symbolOf('small')}
                </th>
                <th scope="col" class="number">
                  of that at {plainText('small', curve.reference)}
                </th>
                <th scope="col" class="number">
                  coupons
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={curve.rows}>
                {({ gap, factor, n }) => (
                  <tr>
                    <td class="number">{plainOf('small', gap)}</td>
                    <td class="number">{factor.toFixed(3)}</td>
                    <td class="number">{n}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <p class="units under">
            What the thickness itself does to the stresses is in the prediction, not in this. Above
            1 counts as 1.
          </p>
          <button type="button" class="plain" onClick={() => take(curve)}>
            Take it in place of the adhesive’s table
          </button>
        </section>
      )}
    </For>
  );
}
