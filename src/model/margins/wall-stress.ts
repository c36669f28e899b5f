/**
 * Membrane stress in the walls from the share of each load that they carry in the elastic solution.
 *
 *   σ = F_i/A + M_i·r_o·cosθ/I + N_thermal/A        τ = T_i·r_o/J + 2V_i·sinθ/A
 *
 * Exact annulus, at its outer radius; 2V/A is the peak in a thin tube. Common beam theory, no source.
 */
import type { Assembly, Part } from '../joint/assembly.ts';
import { axialChannel, hoopChannel } from '../joint/local-problem.ts';
import type { Loads } from '../joint/types.ts';
import type { BondLaw } from '../lap/problem.ts';
import type { ElasticSolution } from '../shear-lag/elastic.ts';
import { solveElastic } from '../shear-lag/solve-elastic.ts';

export interface WallStress {
  /** Axial stress per unit load factor, and by temperature, MPa. */
  readonly axial: number;
  readonly thermal: number;
  /** Shear stress per unit load factor, MPa. */
  readonly shear: number;
}

export interface WallStresses {
  /** The tube, then the outer adherends. */
  readonly parts: readonly Part[];
  /** Stress in part i at x, for any clocking θ. */
  at(i: number, x: number): (theta: number) => WallStress;
  /** What that stress comes from. */
  behind(i: number, x: number): WallShares;
}

export interface WallShares {
  readonly area: number;
  /** Outer radius over the second moment, and over the polar moment; 0 for a strip. */
  readonly bending: number;
  readonly torsion: number;
  /** Shares of force, moment, and torque and shear that the wall carries here. */
  readonly ofForce: number;
  readonly ofMoment: number;
  readonly ofTorque: number;
  /** N */
  readonly thermalForce: number;
}

/** Section of a tapered wall at x: linear between the nearest of root, middle and mouth. */
function sectionAt(part: Part, t: number): { area: number; bending: number; torsion: number } {
  const [a, b, s] =
    t <= 0.5 ? [part.root, part.middle, 2 * t] : [part.middle, part.mouth, 2 * t - 1];
  const mix = (p: number, q: number): number => p + s * (q - p);
  const radius = mix(a.outerRadius, b.outerRadius);
  return {
    area: mix(a.area, b.area),
    bending: radius === 0 ? 0 : radius / mix(a.secondMoment, b.secondMoment),
    torsion: radius === 0 ? 0 : radius / mix(a.polarMoment, b.polarMoment),
  };
}

export function wallStresses(
  assembly: Assembly,
  bonds: readonly BondLaw[],
  loads: Loads,
  deltaT: number,
): WallStresses {
  const parts = [assembly.tube, ...assembly.outers];
  const { overlap } = assembly;
  const axial = (moment: number): ElasticSolution =>
    solveElastic(
      axialChannel(assembly, 1, { force: 1 - moment, moment }, moment === 0 ? deltaT : 0),
      bonds,
      overlap,
    );
  const byForce = axial(0);
  const byMoment = loads.moment === 0 ? null : axial(1);
  const byTorque =
    loads.torque === 0 && loads.shear === 0
      ? null
      : solveElastic(hoopChannel(assembly, 1), bonds, overlap);

  /** Share of a unit load in part i: an outer's own, or what is left for the tube. */
  const share = (solution: ElasticSolution | null, i: number, x: number): number => {
    if (!solution) return 0;
    if (i > 0) return solution.mechanical.outerForce(i - 1, x);
    let left = 1;
    for (let j = 0; j < bonds.length; j++) left -= solution.mechanical.outerForce(j, x);
    return left;
  };
  const thermalForce = (i: number, x: number): number => {
    if (i > 0) return byForce.thermal.outerForce(i - 1, x);
    let sum = 0;
    for (let j = 0; j < bonds.length; j++) sum -= byForce.thermal.outerForce(j, x);
    return sum;
  };

  return {
    parts,
    behind: (i, x) => ({
      ...sectionAt(parts[i]!, x / overlap),
      ofForce: share(byForce, i, x),
      ofMoment: share(byMoment, i, x),
      ofTorque: share(byTorque, i, x),
      thermalForce: thermalForce(i, x),
    }),
    at: (i, x) => {
      const { area, bending, torsion } = sectionAt(parts[i]!, x / overlap);
      const sideways = share(byTorque, i, x);
      const byAxial = (share(byForce, i, x) * loads.force) / area;
      const byBending = share(byMoment, i, x) * loads.moment * bending;
      const thermal = thermalForce(i, x) / area;
      const byTwist = sideways * loads.torque * torsion;
      const byShear = (sideways * 2 * loads.shear) / area;
      return (theta) => ({
        axial: byAxial + byBending * Math.cos(theta),
        thermal,
        shear: byTwist + byShear * Math.sin(theta),
      });
    },
  };
}
