/** Layered laps of all joint types, random and not, and what they are measured with. */
import fc from 'fast-check';
import type { AdhesiveState } from '../../src/model/joint/adhesive-state.ts';
import { type Assembly, assemble } from '../../src/model/joint/assembly.ts';
import type { IsotropicMaterial, JointInput, Material } from '../../src/model/joint/types.ts';
import { type FlowZone, solveLayered } from '../../src/model/layered/lap.ts';
import { type EdgeLoads, layeredLap, layerOrder } from '../../src/model/layered/of-joint.ts';
import { positive } from './random-laps.ts';

export const metal = (modulus: number, poisson = 0.33, expansion = 9e-6): IsotropicMaterial => ({
  kind: 'isotropic',
  modulus,
  poisson,
  expansion,
  yieldStrength: 1e9,
  ultimateStrength: 1e9,
});

export const laminate = (axial: number, hoop: number): Material => ({
  kind: 'orthotropic',
  axialModulus: axial,
  hoopModulus: hoop,
  shearModulus: 15_000,
  poisson: 0.3,
  axialExpansion: 1e-6,
  hoopExpansion: 6e-6,
  throughShearModulus: 4000,
  throughModulus: 9000,
  throughExpansion: 30e-6,
  tensileStrength: 1e9,
  compressiveStrength: 1e9,
  shearStrength: 1e9,
});

export const glue = (more: Partial<AdhesiveState> = {}): AdhesiveState => ({
  modulus: 2400,
  shearModulus: 900,
  shearYield: 30,
  plasticStrain: 0.5,
  peelStrength: 40,
  expansion: 55e-6,
  outsideTable: false,
  ...more,
});

export interface Lap {
  readonly joint: JointInput;
  readonly adhesive: AdhesiveState;
  readonly deltaT: number;
  readonly edge?: EdgeLoads | undefined;
}

export function build({ joint, adhesive, deltaT, edge }: Lap) {
  const assembly = assemble(joint, 'nominal');
  const lap = layeredLap(
    assembly,
    assembly.bonds.map(() => adhesive),
    deltaT,
    edge,
  );
  const { signs, layers } = layerOrder(assembly);
  const flow = assembly.bonds.map(() => 0);
  const solution = (zones: readonly FlowZone[] = [{ to: lap.length, flow }]) =>
    solveLayered(lap, zones);
  return { assembly, lap, signs, tubeLayer: layers[0]!, solution };
}
export type Built = ReturnType<typeof build>;

/** Radius of mid-bond, or the width of a flat joint: arc per radian, as the equations have it. */
export const arc = ({ flat, bonds }: Assembly, j: number): number =>
  flat ? bonds[j]!.width : bonds[j]!.radius;

const anyMaterial = (low: number, high: number): fc.Arbitrary<Material> =>
  fc.oneof(
    fc
      .record({ e: positive(low, high), nu: fc.double({ min: 0, max: 0.45, noNaN: true }) })
      .map(({ e, nu }) => metal(e, nu, 9e-6)),
    fc.record({ x: positive(2e4, 2e5), t: positive(1e4, 1e5) }).map(({ x, t }) => laminate(x, t)),
  );

const share = fc.double({ min: 0, max: 1, noNaN: true });

export type LapType = JointInput['type'];

/** Overlaps of 1 to 100 mm, unless others are given, and walls of 0.3 to 10 mm. */
export const randomLaps = (
  type: LapType,
  { tapered = false, thermal = true, usual = false, overlap = positive(1, 100) } = {},
): fc.Arbitrary<Lap> =>
  fc
    .record({
      overlap,
      tube: usual ? anyMaterial(4e4, 2.2e5) : anyMaterial(3000, 4e5),
      first: usual ? anyMaterial(4e4, 2.2e5) : anyMaterial(3000, 4e5),
      second: usual ? anyMaterial(4e4, 2.2e5) : anyMaterial(3000, 4e5),
      tubeWall: usual ? positive(0.8, 4) : positive(0.3, 10),
      walls: usual
        ? fc.tuple(positive(0.8, 4), positive(0.8, 4))
        : fc.tuple(positive(0.3, 10), positive(0.3, 10)),
      slope: fc.double({ min: 0.3, max: 1, noNaN: true }),
      bore: positive(1.2, 8),
      gaps: fc.tuple(positive(0.05, 1), positive(0.05, 1)),
      width: positive(5, 50),
      side: fc.constantFrom('socket' as const, 'spigot' as const),
      modulus: positive(300, 5000),
      poisson: fc.double({ min: 0.2, max: 0.44, noNaN: true }),
      shearYield: positive(10, 60),
      deltaT: thermal ? fc.double({ min: -150, max: 80, noNaN: true }) : fc.constant(0),
      edge: fc.record({ k: share }),
    })
    .map((r): Lap => {
      const gap = (j: 0 | 1) => ({ gap: r.gaps[j], tolerance: 0 });
      const wall = (material: Material, t: number) => ({
        material,
        atRoot: t,
        atMouth: tapered ? Math.max(0.3, t * r.slope) : t,
      });
      const [first, second] = [wall(r.first, r.walls[0]), wall(r.second, r.walls[1])];
      // Room inside for a spigot, and mean radii from 1.2 walls up.
      const inside = r.bore * Math.max(r.tubeWall, r.walls[0]) + r.walls[0] + r.gaps[0];
      const tube = {
        material: r.tube,
        outsideDiameter: 2 * (inside + r.tubeWall),
        wall: r.tubeWall,
      };
      const strip = { material: r.tube, thickness: r.tubeWall };
      const lever = (r.tubeWall + r.walls[0]) / 2 + r.gaps[0];
      const base = { overlap: r.overlap };
      const joints: Record<LapType, JointInput> = {
        'sleeve-single': {
          ...base,
          type: 'sleeve-single',
          side: r.side,
          tube,
          sleeve: first,
          bond: gap(0),
          offset: 0,
        },
        'sleeve-double': {
          ...base,
          type: 'sleeve-double',
          tube,
          spigot: first,
          socket: second,
          innerBond: gap(0),
          outerBond: gap(1),
          offset: 0,
        },
        'flat-single': {
          ...base,
          type: 'flat-single',
          width: r.width,
          strip,
          plate: first,
          bond: gap(0),
        },
        'flat-double': {
          ...base,
          type: 'flat-double',
          width: r.width,
          strip,
          lowerStrap: first,
          upperStrap: second,
          lowerBond: gap(0),
          upperBond: gap(1),
        },
      };
      return {
        joint: joints[type],
        adhesive: glue({
          modulus: r.modulus,
          shearModulus: r.modulus / (2 * (1 + r.poisson)),
          shearYield: r.shearYield,
        }),
        deltaT: Math.abs(r.deltaT) < 0.01 ? 0 : r.deltaT,
        edge:
          type === 'flat-single'
            ? { moment: (r.edge.k * lever) / 2, shear: ((1 - r.edge.k) * lever) / r.overlap }
            : undefined,
      };
    });

const POINTS = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

/** Gauss points from a to b in rising order, their panels growing from both ends of each piece. */
export function gaussPoints(
  breaks: readonly number[],
  smallest: number,
): { readonly x: number[]; readonly weight: number[] } {
  const x: number[] = [];
  const weight: number[] = [];
  for (let i = 1; i < breaks.length; i++) {
    const [a, b] = [breaks[i - 1]!, breaks[i]!];
    const half = (b - a) / 2;
    const marks = [0];
    for (let at = smallest; at < half; at = at * 1.2 + smallest / 4) marks.push(at);
    marks.push(half);
    const places = [...marks.map((m) => a + m), ...marks.map((m) => b - m).reverse()];
    for (let k = 1; k < places.length; k++) {
      const [from, to] = [places[k - 1]!, places[k]!];
      const h = (to - from) / 2;
      if (!(h > 0)) continue;
      for (const sign of [-1, 1]) {
        for (let p = 0; p < 4; p++) {
          const q = sign < 0 ? 3 - p : p;
          x.push((from + to) / 2 + sign * h * POINTS[q]!);
          weight.push(h * WEIGHTS[q]!);
        }
      }
    }
  }
  return { x, weight };
}
