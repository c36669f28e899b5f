/**
 * First-ply failure of a laminate wall, by Tsai-Wu and by maximum strain, towards the mouth and towards
 * the end of the tube: membrane stress of the wall, hoop stress and bending of the layered model, and
 * the stress that the plies lock into each other on cooling.
 */
import type { Factors, LaminateMaterial } from '../joint/types.ts';
import { type FirstPly, makeFirstPly } from '../laminate/first-ply.ts';
import { addTriple, invertPlane, type Triple, times } from '../laminate/plane.ts';
import { stiffnessOf } from '../laminate/stack.ts';
import { plateProperties, shellOf } from '../layered/shell.ts';
import { askedFactor } from './asked.ts';
import { pullAt } from './bond-fields.ts';
import { worstClockings } from './clocking.ts';
import { type ModeResult, type PlyReach, resultOf, UNLOADED } from './result.ts';
import type { JointState } from './state.ts';
import { thicknessAt, wallLines } from './wall-bending.ts';
import type { WallStresses } from './wall-stress.ts';

/** Stations over each half of the overlap. */
const STATIONS = 8;

export function firstPlyModes(
  state: JointState,
  factors: Factors,
  stresses: WallStresses,
  i: number,
  material: LaminateMaterial,
): ModeResult[] {
  const asked = askedFactor('first-ply', state.loadCase.kind, factors);
  if (asked === null) return [];
  const { assembly, loadCase } = state;
  const plyAt = plyFactorAt(state, stresses, i, material);
  const halves = [
    { from: assembly.overlap / 2, to: assembly.overlap },
    { from: 0, to: assembly.overlap / 2 },
  ];
  return halves.flatMap(({ from, to }): ModeResult[] => {
    const stations = Array.from({ length: STATIONS + 1 }, (_v, k) =>
      k === STATIONS ? to : from + ((to - from) * k) / STATIONS,
    );
    const places = stations.map((x) => ({ x, at: plyAt(x) }));
    const lowest = (theta: number) => {
      let best = { factor: Number.POSITIVE_INFINITY, x: to, reach: null as PlyReach | null };
      for (const { x, at } of places) {
        const reach = at(theta);
        const factor = Math.min(reach.tsaiWu, reach.maximumStrain);
        if (factor < best.factor * (1 - 1e-9)) best = { factor, x, reach };
      }
      return best;
    };
    const [worst] = worstClockings(assembly.flat, loadCase.loads, (theta) => lowest(theta).factor);
    if (!worst || !(worst.factor < UNLOADED)) return [];
    const { factor, x, reach } = lowest(worst.theta);
    const part = stresses.parts[i]!.name;
    const result = resultOf(state, {
      mode: 'first-ply',
      part,
      reached: factor,
      asked,
      x,
      theta: worst.theta,
      wholeBondFlows: false,
      ...(reach ? { plies: reach } : {}),
    });
    return [result];
  });
}

export interface WallStrain {
  /** Mid-surface strain and curvature by temperature, and per load factor. */
  readonly held: { readonly strain: Triple; readonly curvature: Triple };
  readonly load: { readonly strain: Triple; readonly curvature: Triple };
}

/** Strains of a laminate wall at a place and clocking. */
export function wallStrainAt(
  state: JointState,
  stresses: WallStresses,
  i: number,
  material: LaminateMaterial,
): (x: number) => (theta: number) => WallStrain {
  const { a, thermalForce } = stiffnessOf(material.stack);
  const flexibility = invertPlane(a);
  const free = times(flexibility, thermalForce);
  const lines = wallLines(state, i);
  const properties = plateProperties(material);
  return (x) => {
    const t = thicknessAt(state, i, x);
    const { bending } = shellOf(
      properties,
      { radius: 1, thickness: t, flat: state.assembly.flat },
      'both',
      0,
    );
    const { momentHeld, momentLoad, hoopHeld, hoopLoad } = lines(x);
    const stressAt = stresses.at(i, x);
    return (theta) => {
      const { axial, thermal, shear } = stressAt(theta);
      const pull = pullAt(state, theta);
      const held = times(flexibility, [thermal * t, hoopHeld, 0]);
      return {
        held: {
          strain: addTriple(held, free, state.deltaT),
          // Strain at z is ε − z·φ′.
          curvature: [-momentHeld / bending, 0, 0],
        },
        load: {
          strain: times(flexibility, [axial * t, hoopLoad * pull, shear * t]),
          curvature: [(-momentLoad * pull) / bending, 0, 0],
        },
      };
    };
  };
}

function plyFactorAt(
  state: JointState,
  stresses: WallStresses,
  i: number,
  material: LaminateMaterial,
): (x: number) => (theta: number) => PlyReach {
  const firstPly = makeFirstPly(material.stack);
  const strainAt = wallStrainAt(state, stresses, i, material);
  return (x) => {
    const at = strainAt(x);
    return (theta) => {
      const { held, load } = at(theta);
      return reachOf(firstPly({ ...held, deltaT: state.deltaT }, load));
    };
  };
}

function reachOf({ tsaiWu, maximumStrain }: FirstPly): PlyReach {
  const byStrain = maximumStrain.factor < tsaiWu.factor;
  const place = byStrain ? maximumStrain.place : tsaiWu.place;
  return {
    tsaiWu: tsaiWu.factor,
    maximumStrain: maximumStrain.factor,
    ply: place?.ply ?? 0,
    angle: place?.angle ?? 0,
    criterion: byStrain ? 'maximum-strain' : 'tsai-wu',
  };
}
