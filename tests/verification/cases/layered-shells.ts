/** Shear and peel of the layered shells against the joint as a continuum: the check of physics. */
import { type CurveCase, lazy, type Panel, type Series, type Topic } from '../case.ts';
import { type BondedJoint, bondedJoint, solveBondedJoint } from './bonded-joints.ts';
import { type Allowed, LAG, LAYERED, peelChecks, zonesOf } from './layered-zones.ts';

/** About a dozen stations for the table, closer together at the ends. */
function tabled(stations: readonly number[], overlap: number): (x: number) => boolean {
  const marks = [0.2, 0.5, 1, 2, 4, 8].filter((mark) => mark < 0.4 * overlap);
  const wanted = [...marks, overlap / 2, ...marks.map((mark) => overlap - mark)];
  const nearest = (mark: number): number =>
    stations.reduce((best, x) => (Math.abs(x - mark) < Math.abs(best - mark) ? x : best));
  const chosen = new Set(wanted.map(nearest));
  return (x) => chosen.has(x);
}

function panelsOf(joint: BondedJoint): readonly Panel[] {
  const { stations, bonds } = joint.expected;
  const solved = lazy(() => solveBondedJoint(joint));
  const show = tabled(stations, joint.inputs.overlap);
  return bonds.flatMap(({ name, shear, peel }, j) => {
    const series = (
      label: string,
      stress: Series['stress'],
      expected: readonly number[],
      at: (x: number) => number,
    ): Series => ({ name: label, stress, expected, computed: () => at });
    const panel = (title: string, all: readonly Series[]): Panel => ({
      title: bonds.length === 1 ? title : `${title}, ${name}`,
      x: stations,
      series: all,
      tabled: show,
    });
    return [
      panel('Shear', [
        series(LAYERED, 'shear', shear, (x) => solved().layeredShear(j, x)),
        {
          ...series(LAG, 'shear', shear, (x) => solved().shearLag(j, x)),
          line: 'dashed' as const,
        },
      ]),
      panel('Peel', [series(LAYERED, 'peel', peel, (x) => solved().layeredPeel(j, x))]),
    ];
  });
}

function inputsOf({ inputs }: BondedJoint): readonly string[] {
  const { load, moment = 0, temperatureChange, overlap, formulation } = inputs;
  const layers = inputs.layers.map(({ name, material, thickness: [atRoot, atMouth] }) => {
    const size = atRoot === atMouth ? `${atRoot}` : `${atRoot} (root) to ${atMouth} (mouth)`;
    return `${name} ${size} mm${material === 'adhesive' ? '' : ` (${material})`}`;
  });
  const flat = formulation === 'plane strain';
  const loads = [
    ...(load === 0 ? [] : [flat ? `${load} N per mm of width` : `${load} N`]),
    ...(moment === 0 ? [] : [`moment ${moment / 1000} N·m, stress on the tension side`]),
    ...(temperatureChange === 0 ? [] : [`ΔT = ${temperatureChange} °C`.replace('-', '−')]),
  ];
  return [
    `from the ${flat ? 'bottom up' : 'inside out'}: ${layers.join(', ')}`,
    ...(flat ? [] : [`inner radius ${inputs.layers[0]!.inside} mm`]),
    `overlap ${overlap} mm; ${loads.join(', ')}; materials in reference/finite-elements/bonded-joints.json`,
  ];
}

const source =
  'reference/finite-elements: walls and adhesive as solids in CalculiX, axisymmetric or plane strain; stresses in the middle of the gap (bending: elements of our own for one harmonic)';

const CLAMPED_ROOT =
  '**A clamped root hides a peak.** Where a wall is built into solid metal, within about two gaps of the corner, finite elements give up to five times as much peel as the layered shells under load (a gap off the corner, and still more nearer to it), and a tenth to a quarter less on cooling. No margin of peel at a clamped root may rest on the layered shells alone.';

function curve(
  name: string,
  title: string,
  allowed: Allowed,
  remarks: readonly string[] = [],
): CurveCase {
  const joint = bondedJoint(name);
  return {
    id: `layered-${name}`,
    title,
    source,
    tag: 'finite elements',
    inputs: inputsOf(joint),
    length: joint.inputs.overlap,
    panels: panelsOf(joint),
    zones: zonesOf(joint, allowed),
    checks: peelChecks(joint, allowed),
    remarks: [...remarks, ...(allowed.clamped ? [CLAMPED_ROOT] : [])],
  };
}

export const layeredShells: Topic = {
  title: 'Finite elements: layered shells',
  intro:
    'Section 10 of the method: walls as shells, with bending and hoop stress, and the bonds between them. Dots are finite elements, solid lines the layered shells, dashed lines the shear lag of the same joint. Away from the corners the differences are held; within a gap of an end they are only stated, because a square corner has no finite stress to compare with. Where walls are built into solid metal at the root peel is held from 1.5 mm off it: nearer, its peak is not resolved, and each such case says by how much.',
  cases: [
    curve('socket', 'Socket in tension', {
      shear: 0.048,
      rootPeel: 0.21,
      mouthPeel: 0.07,
      quarter: 0.24,
      shearLag: 0.12,
    }),
    curve('socket-thermal', 'Socket cooled', {
      shear: 0.036,
      rootPeel: 0.13,
      mouthPeel: 0.085,
      quarter: 0.41,
      shearLag: 0.12,
    }),
    curve(
      'spigot',
      'Spigot in tension',
      {
        shear: 0.032,
        rootPeel: 0.18,
        mouthPeel: 0.78,
        quarter: 0.19,
        shearLag: 0.17,
      },
      [
        'Towards the mouth of a spigot peel is small, an eighth of that at the root: differences there look large as shares.',
      ],
    ),
    curve('spigot-thermal', 'Spigot cooled', {
      shear: 0.062,
      rootPeel: 0.205,
      mouthPeel: 0.045,
      quarter: 0.21,
      shearLag: 0.28,
    }),
    curve('socket-tapered', 'Tapered socket in tension', {
      shear: 0.05,
      rootPeel: 0.19,
      mouthPeel: 0.04,
      quarter: 0.35,
      shearLag: 0.1,
    }),
    curve('socket-long', 'Long thin socket in tension', {
      shear: 0.054,
      rootPeel: 0.24,
      mouthPeel: 0.045,
      quarter: 0.24,
      shearLag: 0.21,
    }),
    curve(
      'socket-bending',
      'Socket in bending',
      {
        shear: 0.05,
        rootPeel: 0.23,
        mouthPeel: 0.072,
        quarter: 0.23,
        shearLag: 0.13,
      },
      [
        'The layered shells are solved for the first harmonic around the tube, as the finite elements are.',
      ],
    ),
    curve('double-lap-sleeve', 'Double-lap sleeve in tension', {
      shear: 0.095,
      mouthPeel: 0.076,
      quarter: 0.1,
      shearLag: 0.12,
      clamped: { shear: 0.115, peels: [0.72, 0.5] },
    }),
    curve('double-lap-sleeve-thermal', 'Double-lap sleeve cooled', {
      shear: 0.1,
      mouthPeel: 0.14,
      quarter: 0.22,
      shearLag: 0.32,
      clamped: { shear: 0.27, peels: [0.25, 0.12] },
    }),
    curve('flat-double-lap', 'Flat double lap', {
      shear: 0.16,
      mouthPeel: 0.12,
      quarter: 0.12,
      shearLag: 0.07,
      clamped: { shear: 0.067, peels: [0.8, 0.8] },
    }),
    curve('flat-double-lap-unequal', 'Flat double lap, unequal gaps', {
      shear: 0.13,
      mouthPeel: 0.08,
      quarter: 0.105,
      shearLag: 0.11,
      clamped: { shear: 0.058, peels: [0.66, 0.76] },
    }),
  ],
};
