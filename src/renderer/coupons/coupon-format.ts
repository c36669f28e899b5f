/** Loads, areas and numbers of a set as the page writes them. */
import { figureText, symbolOf } from '../../shared/measures.ts';
import type { CouponSet } from '../../shared/project-coupons.ts';

/** `4.18 kN`; small loads in N. */
export const loadText = (load: number): string => figureText(load < 1000 ? 'load' : 'force', load);

export const areaText = (area: number): string =>
  symbolOf('area') === 'mm²'
    ? `${area.toFixed(area < 1000 ? 1 : 0)} mm²`
    : figureText('area', area);

/** `3 × 6`; `–` where nothing is planned. */
export const plannedText = ({ planned }: Pick<CouponSet, 'planned'>): string =>
  planned ? `${planned.batches} × ${planned.each}` : '–';

export const plannedNumber = ({ planned }: Pick<CouponSet, 'planned'>): number =>
  planned ? planned.batches * planned.each : 0;

/** `1 result`, `2 results`. */
export const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
