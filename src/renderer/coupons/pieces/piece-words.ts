/** What hangs on the sizes of a test piece, and where they are from, in sentences. */
import type { PieceUse } from '../../../shared/coupon-pieces.ts';
import type { Specimen } from '../../../shared/project-coupons.ts';
import { sourceKinds } from '../../size/SourceField.tsx';

const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

/** Why its sizes are better left as they are; nothing where they may be changed at will. */
export function heldBy(standard: string, { withResults, results }: PieceUse): string[] {
  return [
    ...(standard === ''
      ? []
      : [
          `These are sizes of ${standard}. Changed, they are that standard’s no longer, and the piece is one of your own.`,
        ]),
    ...(results === 0
      ? []
      : [
          `${some(withResults, 'set')} of it ${withResults === 1 ? 'has' : 'have'} ${some(results, 'result')}: their strengths are load over the area of these sizes, their predicted loads are of these sizes and materials. A change here changes what was measured to mean.`,
        ]),
  ];
}

/** Where its sizes are from, as the list tells it. */
export const fromText = ({ source }: Specimen): string =>
  source.text.trim() || sourceKinds.find(({ value }) => value === source.kind)!.text;

export const useText = ({ names, results }: PieceUse): string =>
  names.length === 0
    ? 'no set'
    : [some(names.length, 'set'), ...(results === 0 ? [] : [some(results, 'result')])].join(', ');

/** Why it cannot be removed. */
export function usedBy(name: string, { names }: PieceUse): string {
  const shown = names.slice(0, 6).map((one) => `“${one}”`);
  const more = names.length > 6 ? `, and ${names.length - 6} more` : '';
  return `“${name}” stays: ${names.length === 1 ? 'a set uses it' : `${names.length} sets use it`}: ${shown.join(', ')}${more}.`;
}
