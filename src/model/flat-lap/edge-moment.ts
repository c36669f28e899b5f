/**
 * Moments and transverse forces at both ends of the overlap of a flat single lap, by two methods.
 *
 * x = 0 is the root, where the `root` adherend carries the whole load; x = L the mouth, where the
 * `mouth` adherend does. Lever of the load e = (t_root + t_mouth)/2 + h. At each end
 *
 *   M = k·P·e/2,   V = (P·e − M_root − M_mouth)/L
 *
 * so that the overlap as a free body is in balance. For P > 0 a positive M puts the bonded face of
 * the adherend that carries the load in tension, a positive V pulls that adherend off the other:
 * ∫σ dx = V.
 *
 * Equal adherends: the factors of edge-factor.ts. Unequal adherends, which the sources do not cover:
 *
 * - Goland and Reissner: their assumption (an overlap that bends as one plate, long run-outs) solved
 *   for two different ends. With the overlap's neutral axis e_i from the axis of adherend i,
 *   D₁₂ = D₁ + D₂ + (t₁/2 + t₂/2)²·A₁A₂/(A₁ + A₂), u² = P/D₁₂, r_i = √(D₁₂/D_i), T = tanh(uL),
 *   q = 1/cosh(uL), deflections in the run-outs that decay as exp(−x·√(P/D_i)) and equal slopes:
 *
 *     M₁ = P·(e₁T + r₂(e₁ + q·e₂)) / ((1 + r₁r₂)·T + r₁ + r₂),   M₂ with 1 and 2 exchanged
 *
 *   Equal homogeneous adherends give back the published factor (u, with D₁₂ = 8D, is theirs). As in
 *   the source the adhesive adds nothing to D₁₂.
 * - Hart-Smith: one factor from the stiffer adherend, the larger of the two, shared between the ends
 *   as √D, which is the exact share as P → 0 in any model. A cautious stand-in, not his.
 *
 * The weaker adherend for both ends would not be cautious: k falls with P/D, and the stiffer run-out
 * takes the larger moment. A factor can thus exceed 1 (never 2) at the stiffer end.
 *
 * Compression has no such factors. With P < 0 the formulas turn complex: nothing decays in a long
 * run-out that is compressed, it buckles at once. What would happen depends on the free length and
 * the supports, which are not asked for. The moments of the undeformed shape are returned, k the limit
 * as P → 0, and `growsWithLoad` says that the true ones are larger: no margin may rest on them.
 */
import { type FlatAdherend, requireFinite, requirePositive } from './adherend.ts';
import { golandReissnerFactor, hartSmithFactor } from './edge-factor.ts';

export interface FlatSingleLap {
  /** Load per unit width, N/mm, tension positive. */
  readonly load: number;
  /** Length of the overlap, mm. */
  readonly overlap: number;
  /** Thickness of the adhesive, mm; 0 to neglect it. */
  readonly gap: number;
  /** The adherend that carries the whole load at the root, x = 0. */
  readonly root: FlatAdherend;
  /** The adherend that carries the whole load at the mouth, x = L. */
  readonly mouth: FlatAdherend;
}

export interface EdgeMoment {
  /** k, of P·e/2. */
  readonly factor: number;
  /** N·mm per mm of width. */
  readonly moment: number;
}

export interface EdgeLoads {
  readonly root: EdgeMoment;
  readonly mouth: EdgeMoment;
  /** The same at both ends, N per mm of width. */
  readonly transverseForce: number;
}

export interface EdgeMoments {
  readonly golandReissner: EdgeLoads;
  readonly hartSmith: EdgeLoads;
  /** Lever of the load, mm. */
  readonly lever: number;
  /** Both adherends alike: the published formulas apply as they stand. */
  readonly balanced: boolean;
  /** Compression: the figures are those of the undeformed shape, and the true ones are larger. */
  readonly growsWithLoad: boolean;
}

/** Closer than any measured property: only rounding is forgiven. */
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(a, b);

const isBalanced = ({ root, mouth }: FlatSingleLap): boolean =>
  alike(root.thickness, mouth.thickness) &&
  alike(root.membraneStiffness, mouth.membraneStiffness) &&
  alike(root.bendingStiffness, mouth.bendingStiffness);

function check({ overlap, gap, root, mouth, load }: FlatSingleLap): void {
  requirePositive(overlap, 'overlap');
  if (gap !== 0) requirePositive(gap, 'gap');
  requireFinite(load, 'load');
  for (const wall of [root, mouth]) {
    requirePositive(wall.thickness, 'thickness');
    requirePositive(wall.membraneStiffness, 'membraneStiffness');
    requirePositive(wall.bendingStiffness, 'bendingStiffness');
  }
}

/** The factors at root and mouth. */
type Factors = readonly [root: number, mouth: number];

/** D₁₂: both adherends bending as one plate, without the adhesive between them. */
export function pairStiffness({ root, mouth }: Pick<FlatSingleLap, 'root' | 'mouth'>): number {
  const share = root.membraneStiffness / (root.membraneStiffness + mouth.membraneStiffness);
  const lever = (root.thickness + mouth.thickness) / 2;
  return (
    root.bendingStiffness + mouth.bendingStiffness + lever * lever * share * mouth.membraneStiffness
  );
}

function rigidOverlap({ overlap, root, mouth }: FlatSingleLap, tension: number): Factors {
  const sum = root.membraneStiffness + mouth.membraneStiffness;
  const rootShare = root.membraneStiffness / sum;
  const pair = pairStiffness({ root, mouth });
  const r1 = Math.sqrt(pair / root.bendingStiffness);
  const r2 = Math.sqrt(pair / mouth.bendingStiffness);
  const uL = Math.sqrt(tension / pair) * overlap;
  if (r1 === r2 && rootShare === 0.5) {
    const k = golandReissnerFactor(uL / 2, r1);
    return [k, k];
  }
  // Distances of the adherends' axes from the neutral axis, in units of e/2.
  const e1 = 2 * (1 - rootShare);
  const e2 = 2 * rootShare;
  const t = Math.tanh(uL);
  const q = 1 / Math.cosh(uL);
  const below = (1 + r1 * r2) * t + r1 + r2;
  return [(e1 * t + r2 * (e1 + q * e2)) / below, (e2 * t + r1 * (e2 + q * e1)) / below];
}

function separateAdherends({ overlap, root, mouth }: FlatSingleLap, tension: number): Factors {
  const stiffer = Math.max(root.bendingStiffness, mouth.bendingStiffness);
  const k = hartSmithFactor((Math.sqrt(tension / stiffer) * overlap) / 2);
  const a = Math.sqrt(root.bendingStiffness);
  const b = Math.sqrt(mouth.bendingStiffness);
  return [(k * 2 * a) / (a + b), (k * 2 * b) / (a + b)];
}

export function edgeMoments(lap: FlatSingleLap): EdgeMoments {
  check(lap);
  const lever = (lap.root.thickness + lap.mouth.thickness) / 2 + lap.gap;
  const half = (lap.load * lever) / 2;
  const tension = Math.max(lap.load, 0);
  const loads = ([root, mouth]: Factors): EdgeLoads => {
    // No load, or the undeformed shape: nothing left to balance, and no rounding of it.
    const transverseForce = tension > 0 ? ((2 - root - mouth) * half) / lap.overlap : 0;
    requireFinite(transverseForce, 'load');
    return {
      root: { factor: root, moment: root * half },
      mouth: { factor: mouth, moment: mouth * half },
      transverseForce,
    };
  };
  return {
    golandReissner: loads(rigidOverlap(lap, tension)),
    hartSmith: loads(separateAdherends(lap, tension)),
    lever,
    balanced: isBalanced(lap),
    growsWithLoad: lap.load < 0,
  };
}
