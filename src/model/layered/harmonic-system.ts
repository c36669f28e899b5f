/**
 * The layered lap under bending: the first harmonic, in which u, w, φ and the hoop forces go with cos θ
 * and the displacement v around with sin θ. A first-order system y′ = A·y with
 *
 *   d = (u, w, φ, v) and f = (n, q, m, s) of each wall, amplitudes per radian
 *
 *   εθ = (w + v)/R     γ = v′ − u/R
 *   n′ = −s/R + bonds   q′ = Nθ + bonds   m′ = −q + bonds   s′ = Nθ + bonds
 *
 * and for the rest what layeredSystem has. Temperature, the same all round, has no part in it. Terms
 * of order (t/R)² are left out. The bonds also shear around: Δv with the turning of the walls and of
 * the bond, flexibility h/G + t/3G13 of each wall (the through-thickness moduli taken alike).
 */
import { type Matrix, multiply } from '../numerics/dense.ts';
import { peelLaw } from './opening-law.ts';
import { NOTHING_READ, type Readings } from './readings.ts';
import type { LayeredSection } from './section.ts';
import { shearLaw, slips } from './slip-law.ts';

/** Unknowns of a wall: u, w, φ, v. */
export const HARMONIC = 4;

export interface HarmonicSystem {
  readonly a: Matrix;
  readonly g: Matrix;
  /** Shear, peel and shear around (the amplitude of sin θ) of each bond in turn. */
  readonly bonds: Readings;
}

export function harmonicSystem(section: LayeredSection): HarmonicSystem {
  const { shells, bonds } = section;
  const half = HARMONIC * shells.length;
  const size = 2 * half;
  const a = new Float64Array(size * size);
  const put = (row: number, column: number, value: number): void => {
    a[row * size + column]! += value;
  };
  shells.forEach((shell, i) => {
    const [u, w, phi, v] = [4 * i, 4 * i + 1, 4 * i + 2, 4 * i + 3];
    const [n, q, m, s] = [half + u, half + w, half + phi, half + v];
    const { radius, offset } = shell;
    const ratio = shell.cxt / shell.cxx;
    const hoop = shell.ctt - ratio * shell.cxt;
    const bend = 1 / (radius * shell.bending);
    put(u, n, 1 / (radius * shell.cxx) + offset * offset * bend);
    put(u, m, offset * bend);
    put(phi, m, bend);
    put(phi, n, offset * bend);
    put(w, phi, 1);
    put(w, q, 1 / (radius * section.shearFactor * shell.shear));
    put(v, s, 1 / (radius * shell.planeShear));
    put(v, u, 1 / radius);
    put(v, phi, -offset / radius);
    put(n, s, -1 / radius);
    put(m, q, -1);
    put(m, s, offset / radius);
    for (const around of [w, v]) {
      put(u, around, -ratio / radius);
      put(q, around, hoop / radius);
      put(s, around, hoop / radius);
    }
    put(q, n, ratio / radius);
    put(s, n, ratio / radius);
  });
  const count = bonds.length;
  const g = new Float64Array(size);
  if (count === 0) return { a, g, bonds: NOTHING_READ };
  const slip = slips(section, HARMONIC);
  const peel = peelLaw(section, HARMONIC);
  const { stiffness } = shearLaw(
    section,
    bonds.map(() => 0),
  );
  const shears = multiply(stiffness, slip, count, count, half);
  const turn = turns(section);
  bonds.forEach((bond, j) => {
    for (let row = 0; row < half; row++) {
      const pull = bond.radius * slip[j * half + row]!;
      for (let column = 0; pull !== 0 && column < half; column++) {
        for (let k = 0; k < count; k++) {
          put(half + row, column, pull * stiffness[j * count + k]! * slip[k * half + column]!);
        }
      }
      const twist = bond.radius * turn.stiffness[j]! * turn.rows[j * half + row]!;
      for (let column = 0; twist !== 0 && column < half; column++) {
        put(half + row, column, twist * turn.rows[j * half + column]!);
      }
    }
    for (const [row, sign] of [
      [4 * j + 1, -1],
      [4 * j + 5, 1],
    ] as const) {
      for (let column = 0; column < size; column++) {
        put(half + row, column, sign * bond.radius * peel.rows[j * size + column]!);
      }
    }
  });
  const rows = new Float64Array(3 * count * size);
  for (let j = 0; j < count; j++) {
    const [shear, across, around] = [3 * j * size, (3 * j + 1) * size, (3 * j + 2) * size];
    for (let i = 0; i < half; i++) {
      rows[shear + i] = shears[j * half + i]!;
      rows[around + i] = turn.stiffness[j]! * turn.rows[j * half + i]!;
    }
    for (let i = 0; i < size; i++) rows[across + i] = peel.rows[j * size + i]!;
  }
  return { a, g, bonds: { count: 3 * count, rows, constants: new Float64Array(3 * count) } };
}

/** Slip around of each bond as a row over d, and its stiffness. */
function turns({ shells, bonds }: LayeredSection): { rows: Matrix; stiffness: number[] } {
  const half = HARMONIC * shells.length;
  const rows = new Float64Array(bonds.length * half);
  const stiffness = bonds.map((bond, j) => {
    let flexibility = bond.gap / bond.shearModulus;
    for (const [i, side] of [
      [j, -1],
      [j + 1, 1],
    ] as const) {
      const { radius, thickness, throughShear } = shells[i]!;
      const lever = thickness / (2 * radius) + bond.gap / (2 * bond.radius);
      rows[j * half + 4 * i + 3]! += side - lever;
      rows[j * half + 4 * i + 1]! -= lever;
      flexibility += thickness / (3 * throughShear);
    }
    return 1 / flexibility;
  });
  return { rows, stiffness };
}
