/** Answers about measured parts, as the core would give them for a single lap. */
import { findMistakes } from '../../../src/shared/measured-mistakes.ts';
import { measuringPlan } from '../../../src/shared/measuring-plan.ts';
import type { Joint, MeasuredSurface } from '../../../src/shared/project.ts';
import type { BondGap, GapReport, GapVerdict } from '../../../src/shared/reports-gap.ts';

const at = (value: number, uncertainty = 0.01) => ({ value, uncertainty, x: 0, theta: 0 });
const ring = Array.from({ length: 36 }, () => 0.2);

export function makeGapReport(joint: Joint, measured: readonly MeasuredSurface[]): GapReport {
  const plan = measuringPlan(joint)!;
  const mistakes = findMistakes(joint, measured);
  const missing = plan.surfaces.flatMap(({ surface }) => {
    const one = measured.find((here) => here.surface === surface);
    const count = one
      ? one.diameters.flat().filter((value) => value === null).length
      : plan.stations.length * plan.clockings.length;
    return count > 0 ? [{ surface, count }] : [];
  });
  const whole = missing.length === 0 && !mistakes.some(({ level }) => level === 'wrong');
  const bonds = plan.bonds.map(
    ({ bond, inside, outside }): BondGap => ({
      bond,
      inside,
      outside,
      centred: { min: at(0.19), mean: at(0.2), max: at(0.21) },
      held: { min: at(0.12, 0), mean: at(0.2), max: at(0.28) },
      reach: { from: 0.12, to: 0.29 },
      offset: { value: 0.08, theta: 180 },
      stoppedBy: 'spacer',
      map: {
        x: [0, joint.overlap],
        theta: ring.map((_, i) => 10 * i),
        centred: [ring, ring],
        held: [ring, ring],
      },
      volume: 700,
    }),
  );
  return {
    jointId: joint.id,
    missing,
    mistakes,
    shapes: whole
      ? measured.map(({ surface }) => ({ surface, mean: at(32), ovality: 0.01, taper: 0 }))
      : [],
    bonds: whole ? bonds : [],
    limits: plan.bonds.map(({ bond }) => ({
      bond,
      from: 0.12,
      to: 0.5,
      fromBy: 'spacer',
      toBy: 'coupons',
    })),
    amounts: {
      volume: 700,
      mixVolume: 1050,
      mixMass: 1.24,
      resin: 0.83,
      hardener: 0.41,
      waste: 1.5,
    },
    flags: [{ code: 'typical-gaps', message: 'The range is typical, not from your coupons.' }],
  };
}

export const makeGapVerdict = (
  joint: Joint,
  measured: readonly MeasuredSurface[],
  change: Partial<GapVerdict> = {},
): GapVerdict => ({
  jointId: joint.id,
  state: 'accept',
  reasons: [{ code: 'inside', state: 'accept', bond: null, message: 'All is inside.' }],
  gap: makeGapReport(joint, measured),
  scatter: [],
  measured: null,
  guarded: null,
  targetMargin: 0.25,
  modelVersion: '2',
  at: '2026-03-01T10:00:00.000Z',
  ...change,
});
