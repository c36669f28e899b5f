/**
 * Shear lag of two bondlines on the two faces of one tube wall (or strip).
 *
 *   τ_j″ = k_j·a_j·( Σ a_i·c_i·τ_i / K_t + a_j·c_j·τ_j / K_j )
 *   mouth: τ_j′(L) = k_j(a_j·P/K_t + Δε_j);  root: s_1/a_1 = s_2/a_2 and Σ ∫ a_j·c_j·τ_j dx = P
 *
 * The outer adherends are one piece of metal behind the root, so they share one displacement there:
 * that, not an assumed half and half, decides who carries what. With y_j = τ_j·√(c_j/k_j) the matrix
 * is symmetric, p pᵀ/K_t + diag(p_j²/K_j), p_j = a_j·√(c_j·k_j); its eigenvectors uncouple all
 * conditions but two. The symmetric flat double lap is the special case of equal halves.
 */
import { type BondLaw, type Channel, thermalMismatch } from '../lap/problem.ts';
import { makeBasis } from './basis.ts';
import type { ElasticSolution, Part } from './elastic.ts';

interface Mode {
  readonly omega: number;
  readonly v: readonly [number, number];
}

/** Eigenpairs of the symmetric matrix [[a, b], [b, d]], larger first; positive definite is assumed. */
function eigenpairs(a: number, b: number, d: number, determinant: number): [Mode, Mode] {
  const half = (a - d) / 2;
  const large = (a + d) / 2 + Math.hypot(half, b);
  // The small one by the product: a difference would cancel when the two are far apart.
  const small = determinant / large;
  const angle = Math.atan2(b, half) / 2;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return [
    { omega: Math.sqrt(large), v: [c, s] },
    { omega: Math.sqrt(small), v: [-s, c] },
  ];
}

const dot = (u: readonly [number, number], v: readonly [number, number]): number =>
  u[0] * v[0] + u[1] * v[1];

export function solveTwoBonds(
  channel: Channel,
  bonds: readonly BondLaw[],
  length: number,
): ElasticSolution {
  const [bond1, bond2] = [bonds[0]!, bonds[1]!];
  const root1 = Math.sqrt(bond1.width * bond1.stiffness);
  const root2 = Math.sqrt(bond2.width * bond2.stiffness);
  const p: [number, number] = [channel.levers[0]! * root1, channel.levers[1]! * root2];
  const flexTube = 1 / channel.tube.stiffness;
  const flex1 = 1 / channel.outers[0]!.stiffness;
  const flex2 = 1 / channel.outers[1]!.stiffness;
  const determinant = p[0] ** 2 * p[1] ** 2 * (flexTube * (flex1 + flex2) + flex1 * flex2);
  const modes = eigenpairs(
    p[0] ** 2 * (flexTube + flex1),
    p[0] * p[1] * flexTube,
    p[1] ** 2 * (flexTube + flex2),
    determinant,
  );
  const bases = modes.map(({ omega }) => makeBasis(omega, length));
  /** A slip common to both joined outers: orthogonal to this. */
  const tie: [number, number] = [p[1], -p[0]];

  const solve = (load: number, slope: readonly [number, number]): Part => {
    const force = modes.map(({ omega, v }, m) => (dot(p, v) * 2 * bases[m]!.tanh) / omega);
    const joined = modes.map(({ v }, m) => dot(tie, v) * (1 + bases[m]!.tanh ** 2));
    const drive = modes.map(({ omega, v }, m) => (dot(v, slope) * bases[m]!.tanh) / omega);
    const free = dot(tie, modes[0].v) * drive[0]! + dot(tie, modes[1].v) * drive[1]!;
    const scale = force[0]! * joined[1]! - force[1]! * joined[0]!;
    const even = [
      (load * joined[1]! - free * force[1]!) / scale,
      (free * force[0]! - load * joined[0]!) / scale,
    ];
    const odd = drive.map((value, m) => value - even[m]! * bases[m]!.tanh ** 2);
    const perBond = [
      Math.sqrt(bond1.stiffness / bond1.width),
      Math.sqrt(bond2.stiffness / bond2.width),
    ];
    return {
      shear: (j, x) =>
        perBond[j]! *
        (modes[0].v[j]! * (even[0]! * bases[0]!.even(x) + odd[0]! * bases[0]!.odd(x)) +
          modes[1].v[j]! * (even[1]! * bases[1]!.even(x) + odd[1]! * bases[1]!.odd(x))),
      outerForce: (j, x) =>
        p[j]! *
        (modes[0].v[j]! * (even[0]! * bases[0]!.evenBeyond(x) + odd[0]! * bases[0]!.oddBeyond(x)) +
          modes[1].v[j]! * (even[1]! * bases[1]!.evenBeyond(x) + odd[1]! * bases[1]!.oddBeyond(x))),
      outerStretch: (j) =>
        (p[j]! *
          (modes[0].v[j]! * (even[0]! * bases[0]!.evenArea + odd[0]! * bases[0]!.oddArea) +
            modes[1].v[j]! * (even[1]! * bases[1]!.evenArea + odd[1]! * bases[1]!.oddArea))) /
        channel.outers[j]!.stiffness,
    };
  };

  const { load } = channel;
  return {
    mechanical: solve(load, [p[0] * load * flexTube, p[1] * load * flexTube]),
    thermal: solve(0, [root1 * thermalMismatch(channel, 0), root2 * thermalMismatch(channel, 1)]),
    omegaMax: modes[0].omega,
    omegaMin: modes[1].omega,
  };
}
