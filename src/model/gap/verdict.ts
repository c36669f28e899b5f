/**
 * May the parts be bonded? Guard band by the uncertainty: accepted only where the whole interval,
 * value ± U, is inside every limit (the rule of JCGM 106:2012, "The role of measurement uncertainty
 * in conformity assessment", 8.3.2: guarded acceptance). A limit itself is inside.
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
  const expanded = ({ value, standard }: { value: number; standard: number }) => ({
    bond,
    value,
    uncertainty: coverage * standard,
  });

  const room = expanded(gap.centred.min);
  const [roomLow, roomHigh] = [room.value - room.uncertainty, room.value + room.uncertainty];
  if (below(roomHigh, 0)) findings.push(finding('does-not-fit', 'reject', { ...room, limit: 0 }));
  else if (below(roomHigh, spacer)) {
    findings.push(finding('below-spacer', 'reject', { ...room, limit: spacer }));
  } else if (below(roomLow, spacer)) {
    findings.push(finding('uncertain', 'hold', { ...room, limit: spacer, against: 'spacer' }));
  }

  if (from === null || to === null) findings.push(finding('no-range', 'hold', { bond }));
  const least = expanded(gap.held.min);
  if (from !== null) {
    // Where parts fit, spacers do not let the gap be thinner than they are.
    const low = Math.max(least.value - least.uncertainty, spacer);
    if (below(least.value + least.uncertainty, from)) {
      findings.push(finding('below-range', 'reject', { ...least, limit: from }));
    } else if (below(low, from)) {
      findings.push(finding('uncertain', 'hold', { ...least, limit: from, against: 'from' }));
    }
  }
  const most = expanded(gap.held.max);
  if (to !== null) {
    if (below(to, most.value - most.uncertainty)) {
      findings.push(finding('above-range', 'reject', { ...most, limit: to }));
    } else if (below(to, most.value + most.uncertainty)) {
      findings.push(finding('uncertain', 'hold', { ...most, limit: to, against: 'to' }));
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
    ...ofMargins(input),
  ];
  if (findings.length === 0) return [finding('inside', 'accept')];
  const rank = ({ code, state }: Finding): number =>
    severity[state] * order.length + order.indexOf(code);
  return findings.sort((a, b) => rank(a) - rank(b));
}
