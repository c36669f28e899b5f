/** Loads, areas and numbers of a set as the page writes them. */
import type { CouponSet } from '../../shared/project-coupons.ts';
import { figure } from '../../shared/words.ts';

/** `4.18 kN`; small loads in N. */
export const loadText = (load: number): string =>
  load < 1000 ? `${figure(load)} N` : `${figure(load / 1000)} kN`;

export const areaText = (area: number): string => `${area.toFixed(area < 1000 ? 1 : 0)} mm²`;

/** `3 × 6`; `–` where nothing is planned. */
export const plannedText = ({ planned }: Pick<CouponSet, 'planned'>): string =>
  planned ? `${planned.batches} × ${planned.each}` : '–';

export const plannedNumber = ({ planned }: Pick<CouponSet, 'planned'>): number =>
  planned ? planned.batches * planned.each : 0;

/** `1 result`, `2 results`. */
export const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
