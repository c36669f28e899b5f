/** Shear and peel of the layered shells against the joint as a continuum: the check of physics. */
import { type CurveCase, lazy, type Panel, type Series, type Topic, type Zone } from '../case.ts';
import { type BondedJoint, bondedJoint, solveBondedJoint } from './bonded-joints.ts';

const LAYERED = 'layered shells';
const LAG = 'shear lag';
/** No theory says how far a shell may be from a continuum: the tolerances hold what is found. */
const FOUND = 'set just above what is found';

/** Largest differences allowed away from the corners, of the largest there. */
interface Allowed {
  readonly shear: number;
  readonly peel: number;
  readonly shearLag: number;
}

const gaps = ({ inputs }: BondedJoint): readonly number[] =>
  inputs.layers.filter(({ kind }) => kind === 'bond').map(({ thickness }) => thickness[0]);

function zonesOf(joint: BondedJoint, { shear, peel, shearLag }: Allowed): readonly Zone[] {
  const { overlap } = joint.inputs;
  const corner = Math.max(...gaps(joint)) * (1 - 1e-9);
  const away = { name: 'away from the corners', contains: () => true, of: 'stretch' } as const;
  return [
    {
      name: 'within a gap of an end',
      contains: (x) => x < corner || x > overlap - corner,
      of: 'peak',
      tolerance: Number.POSITIVE_INFINITY,
      why: 'the corners of a square adhesive are singular, and its free end carries no shear',
    },
    {
      ...away,
      series: LAG,
      tolerance: shearLag,
      why: `${FOUND}; no bending of the walls, no hoop stress`,
    },
    {
      ...away,
      stress: 'shear',
      tolerance: shear,
      why: `${FOUND}; walls are straight across their thickness, the adhesive has one shear across the gap`,
    },
    {
      ...away,
      stress: 'peel',
      tolerance: peel,
      why: `${FOUND}; peel is taken as even across the gap, and turns within a gap or two beside the corners`,
    },
  ];
}

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
    remarks,
  };
}

export const layeredShells: Topic = {
  title: 'Finite elements: layered shells',
  intro:
    'Section 7 of the specification: walls as shells, with bending and hoop stress, and the bonds between them. Dots are finite elements, solid lines the layered shells, dashed lines the shear lag of the same joint. Away from the corners the differences are held; within a gap of an end they are only stated, because a square corner has no finite stress to compare with.',
  cases: [
    curve('socket', 'Socket in tension', { shear: 0.05, peel: 0.21, shearLag: 0.12 }),
    curve('socket-thermal', 'Socket cooled', { shear: 0.04, peel: 0.13, shearLag: 0.12 }),
    curve('spigot', 'Spigot in tension', { shear: 0.04, peel: 0.19, shearLag: 0.17 }),
    curve('spigot-thermal', 'Spigot cooled', { shear: 0.07, peel: 0.2, shearLag: 0.28 }),
    curve('socket-tapered', 'Tapered socket in tension', {
      shear: 0.06,
      peel: 0.19,
      shearLag: 0.1,
    }),
    curve('socket-long', 'Long thin socket in tension', {
      shear: 0.06,
      peel: 0.25,
      shearLag: 0.21,
    }),
    curve('socket-bending', 'Socket in bending', { shear: 0.12, peel: 0.17, shearLag: 0.13 }, [
      'The layered shells are solved for a load that is the same all round: here the line load on the tension side. The margins cover what that lacks at the mouth.',
    ]),
    curve('double-lap-sleeve', 'Double-lap sleeve in tension', {
      shear: 0.1,
      peel: 0.43,
      shearLag: 0.12,
    }),
    curve('double-lap-sleeve-thermal', 'Double-lap sleeve cooled', {
      shear: 0.22,
      peel: 0.57,
      shearLag: 0.32,
    }),
    curve('flat-double-lap', 'Flat double lap', { shear: 0.16, peel: 0.56, shearLag: 0.07 }),
    curve('flat-double-lap-unequal', 'Flat double lap, unequal gaps', {
      shear: 0.13,
      peel: 0.44,
      shearLag: 0.11,
    }),
  ],
};
