/** How far the layered shells may be from finite elements, and where that is held. */
import { type Check, group, lazy, value, type Zone } from '../case.ts';
import { type BondedJoint, solveBondedJoint } from './bonded-joints.ts';

export const LAYERED = 'layered shells';
export const LAG = 'shear lag';
/** No theory says how far a shell may be from a continuum: the tolerances hold what is found. */
const FOUND = 'set just above what is found';

/** Largest differences allowed away from the corners. */
export interface Allowed {
  /** Of the largest shear there. */
  readonly shear: number;
  readonly shearLag: number;
  /** Of the largest peel in each half of the bond; in the whole of it where the root is clamped. */
  readonly rootPeel?: number;
  readonly mouthPeel: number;
  /** Of peel itself, where it is over a quarter of its largest. */
  readonly quarter: number;
  readonly clamped?: ClampedRoot;
}

/** Where walls are built into solid metal at the root. */
interface ClampedRoot {
  /** Of the largest shear there. */
  readonly shear: number;
  /** How far the largest peel there is from that of the finite elements, by bonds. */
  readonly peels: readonly number[];
}

/** Within this of a clamped root the layered model does not resolve peel, mm. */
const CLAMPED = 1.5;

const gaps = ({ inputs }: BondedJoint): readonly number[] =>
  inputs.layers.filter(({ kind }) => kind === 'bond').map(({ thickness }) => thickness[0]);

/** The held stretch of the bonds: a gap from free ends, for peel more from a clamped root. */
function heldRange(
  joint: BondedJoint,
  { clamped }: Allowed,
): { readonly corner: number; readonly from: number; readonly to: number } {
  const corner = Math.max(...gaps(joint)) * (1 - 1e-9);
  return { corner, from: clamped ? CLAMPED : corner, to: joint.inputs.overlap - corner };
}

export function zonesOf(joint: BondedJoint, allowed: Allowed): readonly Zone[] {
  const { overlap } = joint.inputs;
  const { corner, from, to } = heldRange(joint, allowed);
  const { clamped } = allowed;
  const peelAway: Zone = {
    name: 'away from the corners',
    contains: () => true,
    of: 'stretch',
    stress: 'peel',
    tolerance: allowed.mouthPeel,
    why: `${FOUND}; peel is taken as even across the gap, and turns within a gap or two beside the corners`,
  };
  const shearWhy = `${FOUND}; walls are straight across their thickness, the adhesive has one shear across the gap`;
  const nearClamped: readonly Zone[] = clamped
    ? [
        {
          name: `within ${CLAMPED} mm of the clamped root`,
          contains: (x) => x < from,
          stress: 'peel',
          of: 'stretch',
          tolerance: Number.POSITIVE_INFINITY,
          why: 'the peak of peel in a clamped corner is not resolved: see the figures below',
        },
        {
          name: `within ${CLAMPED} mm of the clamped root`,
          contains: (x) => x < from,
          stress: 'shear',
          series: LAYERED,
          of: 'stretch',
          tolerance: clamped.shear,
          why: `${FOUND}; the corner turns shear into peel`,
        },
      ]
    : [];
  return [
    {
      name: 'within a gap of an end',
      contains: (x) => x < corner || x > to,
      of: 'peak',
      tolerance: Number.POSITIVE_INFINITY,
      why: 'the corners of a square adhesive are singular, and its free end carries no shear',
    },
    ...nearClamped,
    {
      name: 'away from the corners',
      contains: () => true,
      of: 'stretch',
      series: LAG,
      tolerance: allowed.shearLag,
      why: `${FOUND}; no bending of the walls, no hoop stress`,
    },
    {
      name: 'away from the corners',
      contains: () => true,
      of: 'stretch',
      stress: 'shear',
      tolerance: allowed.shear,
      why: shearWhy,
    },
    ...(allowed.rootPeel === undefined
      ? []
      : [
          {
            ...peelAway,
            name: `${peelAway.name}, root half`,
            contains: (x: number) => x <= overlap / 2,
            tolerance: allowed.rootPeel,
          },
        ]),
    allowed.rootPeel === undefined
      ? peelAway
      : { ...peelAway, name: `${peelAway.name}, mouth half` },
  ];
}

const largest = (figures: readonly number[]): number => Math.max(...figures.map(Math.abs));

/** Peel where it counts, and what a clamped root hides. */
export function peelChecks(joint: BondedJoint, allowed: Allowed): readonly Check[] {
  const { stations, bonds } = joint.expected;
  const { corner, from, to } = heldRange(joint, allowed);
  const solved = lazy(() => solveBondedJoint(joint));
  const counting = group({
    name: 'peel where it is over a quarter of its largest away from the corners',
    compare: () =>
      bonds.flatMap(({ name, peel }, j) => {
        const held = stations.flatMap((x, i) => (x >= from && x <= to ? [i] : []));
        const over = largest(held.map((i) => peel[i]!)) / 4;
        return held
          .filter((i) => Math.abs(peel[i]!) > over)
          .map((i) => ({
            what: `x = ${stations[i]} mm${bonds.length > 1 ? `, ${name}` : ''}`,
            expected: peel[i]!,
            computed: solved().layeredPeel(j, stations[i]!),
          }));
      }),
    tolerance: allowed.quarter,
    scale: 'of the value',
    why: `${FOUND}; steep places weigh most: a curve moved by a tenth of a gap is off by so much there`,
  });
  const near = stations.filter((x) => x >= corner && x < from);
  const hidden = (allowed.clamped?.peels ?? []).map((tolerance, j) =>
    value({
      name: `largest peel from a gap to ${CLAMPED} mm off the clamped root, ${bonds[j]!.name}`,
      unit: 'MPa',
      expected: largest(near.map((x) => bonds[j]!.peel[stations.indexOf(x)]!)),
      computed: () => largest(near.map((x) => solved().layeredPeel(j, x))),
      tolerance: { relative: tolerance },
      why: 'NOT RESOLVED by the layered shells: stated so that nobody takes the figure for a peak; held so that a change shows',
    }),
  );
  return [counting, ...hidden];
}
