/**
 * May the parts be bonded? Guard band by the uncertainty: accepted only where the whole interval,
 * value ± U, is inside every limit (the rule of JCGM 106:2012, "The role of measurement uncertainty
 * in conformity assessment", 8.3.2: guarded acceptance). A limit itself is inside.
 *
 * An extreme of readings that scatter lies beyond the extreme of what was read: the samples of the
 * Monte Carlo see that, ± U does not. Where they reach further, they count.
 */
import type { Finding, VerdictInput } from './types.ts';

/** What the last digit of a difference of diameters can be off, mm: no limit hangs on it. */
const ROUNDING = 1e-9;

const order: readonly Finding['code'][] = [
  'does-not-fit',
  'below-spacer',
  'below-range',
  'above-range',
  'margin',
  'uncertain',
  'not-held',
  'unseen',
  'no-range',
  'inside',
];
const severity = { reject: 0, hold: 1, accept: 2 } as const;

type Parts = Partial<Omit<Finding, 'code' | 'state'>>;
const finding = (code: Finding['code'], state: Finding['state'], parts: Parts = {}): Finding => ({
  code,
  state,
  bond: null,
  value: null,
  uncertainty: null,
  limit: null,
  against: null,
  ...parts,
});

const below = (value: number, limit: number): boolean => value < limit - ROUNDING;

function ofBond(input: VerdictInput, bond: number): readonly Finding[] {
  const { coverage, holding } = input;
  const { gap, from, to } = input.bonds[bond]!;
  const { spacer } = holding;
  const findings: Finding[] = [];
  /** U toward a limit on one side: the larger of the law's and the samples'. */
  const toward = (
    { value, standard }: { readonly value: number; readonly standard: number },
    reach: number | undefined,
  ) => ({
    bond,
    value,
    uncertainty: Math.max(coverage * standard, Math.abs((reach ?? value) - value)),
  });
  const { sampled } = input.bonds[bond]!;

  const room = gap.centred.min;
  const roomUp = toward(room, sampled && Math.max(room.value, sampled.room.high));
  const roomDown = toward(room, sampled && Math.min(room.value, sampled.room.low));
  const roomHigh = room.value + roomUp.uncertainty;
  if (below(roomHigh, 0)) findings.push(finding('does-not-fit', 'reject', { ...roomUp, limit: 0 }));
  else if (below(roomHigh, spacer)) {
    findings.push(finding('below-spacer', 'reject', { ...roomUp, limit: spacer }));
  } else if (below(room.value - roomDown.uncertainty, spacer)) {
    findings.push(finding('uncertain', 'hold', { ...roomDown, limit: spacer, against: 'spacer' }));
  }

  if (from === null || to === null) findings.push(finding('no-range', 'hold', { bond }));
  const thin = gap.held.min;
  if (from !== null) {
    const up = toward(thin, sampled && Math.max(thin.value, sampled.min.high));
    const down = toward(thin, sampled && Math.min(thin.value, sampled.min.low));
    // Where parts fit, spacers do not let the gap be thinner than they are.
    const low = Math.max(thin.value - down.uncertainty, spacer);
    if (below(thin.value + up.uncertainty, from)) {
      findings.push(finding('below-range', 'reject', { ...up, limit: from }));
    } else if (below(low, from)) {
      findings.push(finding('uncertain', 'hold', { ...down, limit: from, against: 'from' }));
    }
  }
  const thick = gap.held.max;
  if (to !== null) {
    const up = toward(thick, sampled && Math.max(thick.value, sampled.max.high));
    const down = toward(thick, sampled && Math.min(thick.value, sampled.max.low));
    if (below(to, thick.value - down.uncertainty)) {
      findings.push(finding('above-range', 'reject', { ...down, limit: to }));
    } else if (below(to, thick.value + up.uncertainty)) {
      findings.push(finding('uncertain', 'hold', { ...up, limit: to, against: 'to' }));
    }
  }
  return findings;
}

function ofMargins({ measured, guarded, target }: VerdictInput): readonly Finding[] {
  if (measured === null) return [];
  const parts = { value: measured, limit: target };
  if (measured < 0) return [finding('margin', 'reject', { ...parts, limit: 0 })];
  if (below(measured, target)) return [finding('margin', 'hold', parts)];
  return guarded !== null && below(guarded, target)
    ? [finding('uncertain', 'hold', { value: guarded, limit: target, against: 'margin' })]
    : [];
}

/** The deciding finding first; never empty. */
export function judgeGap(input: VerdictInput): readonly Finding[] {
  const { spacer, offset } = input.holding;
  // A reading that may be wrong makes all else worthless.
  if (input.doubts > 0) return [finding('reading', 'hold', { value: input.doubts })];
  const findings = [
    ...input.bonds.flatMap((_, bond) => ofBond(input, bond)),
    ...(spacer === 0 && offset === Number.POSITIVE_INFINITY ? [finding('not-held', 'hold')] : []),
    ...(input.unseen ? [finding('unseen', 'hold')] : []),
    ...ofMargins(input),
  ];
  if (findings.length === 0) return [finding('inside', 'accept')];
  const rank = ({ code, state }: Finding): number =>
    severity[state] * order.length + order.indexOf(code);
  return findings.sort((a, b) => rank(a) - rank(b));
}
