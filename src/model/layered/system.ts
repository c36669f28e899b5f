/**
 * The layered lap as a first-order system y′ = A·y + g in x, y = (d, f):
 *
 *   d = (u, w, φ) of each wall, axial at its reference line, radial outward, rotation w′ − γ
 *   f = (n, q, m) of each wall, per radian (per width): what works on u′, w′, φ′
 *
 *   u′ = n/(R·cxx) − (cxt/cxx)·(w/R − αθΔT) + αxΔT          n′ = ∂B/∂u
 *   w′ = φ + q/(R·κ·G13·t)                                   q′ = Nθ + ∂B/∂w
 *   φ′ = m/(R·D)                                             m′ = −q + ∂B/∂φ
 *
 * B the energy of the bonds: shear τ = C⁻¹·Δs, peel σ = k_n·(Δn − δ), each acting on ρ of arc.
 */
import { type Matrix, multiply } from '../numerics/dense.ts';
import { layerPulls } from './layer-pull.ts';
import { peelLaw, type Rows } from './opening-law.ts';
import { NOTHING_READ, type Readings } from './readings.ts';
import type { FlowSigns, LayeredSection } from './section.ts';
import { commonWidthStrain } from './shell.ts';
import { shearLaw, slipFlexibility, slips } from './slip-law.ts';

export interface LayeredSystem {
  /** Unknowns d: three for each wall. */
  readonly half: number;
  /** Matrix of 2·half × 2·half. */
  readonly a: Matrix;
  readonly g: Matrix;
  /**
   * Shear, peel and trial shear of each bond in turn. The trial shear is the shear where the bond is
   * elastic; where it flows, yield plus the plastic slip's worth, with the sign of flow.
   */
  readonly bonds: Readings;
}

export function layeredSystem(section: LayeredSection, flow: FlowSigns): LayeredSystem {
  const { shells, bonds } = section;
  const half = 3 * shells.length;
  const size = 2 * half;
  const a = new Float64Array(size * size);
  const g = new Float64Array(size);
  const put = (row: number, column: number, value: number): void => {
    a[row * size + column]! += value;
  };
  // A flat joint has one strain across its width, for all walls together.
  const width = commonWidthStrain(shells);
  const pulls = layerPulls(section);
  shells.forEach((shell, i) => {
    const [u, w, phi] = [3 * i, 3 * i + 1, 3 * i + 2];
    const [n, q, m] = [half + u, half + w, half + phi];
    const { radius, offset } = shell;
    const ratio = shell.cxt / shell.cxx;
    const bend = 1 / (radius * shell.bending);
    const pull = pulls[i]!;
    // What the walls themselves carry of n and m.
    g[u]! -= pull.n / (radius * shell.cxx) + offset * bend * (pull.m + offset * pull.n);
    g[phi]! -= bend * (pull.m + offset * pull.n);
    put(u, n, 1 / (radius * shell.cxx) + offset * offset * bend);
    put(u, m, offset * bend);
    put(phi, m, bend);
    put(phi, n, offset * bend);
    put(w, phi, 1);
    put(w, q, 1 / (radius * section.shearFactor * shell.shear));
    put(m, q, -1);
    if (shell.flat) {
      g[u]! += shell.freeAxial - ratio * (width - shell.freeHoop);
    } else {
      const hoop = shell.ctt - ratio * shell.cxt;
      put(u, w, -ratio / radius);
      put(q, n, ratio / radius);
      put(q, w, hoop / radius);
      g[u]! += shell.freeAxial + ratio * shell.freeHoop;
      g[q]! -= hoop * shell.freeHoop + (ratio / radius) * pull.n;
    }
  });
  const count = bonds.length;
  if (count === 0) {
    return { half, a, g, bonds: NOTHING_READ };
  }
  const slip = slips(section);
  const peel = peelLaw(section);
  const { stiffness, fixed } = shearLaw(section, flow);
  bonds.forEach((bond, j) => {
    for (let row = 0; row < half; row++) {
      const pull = bond.radius * slip[j * half + row]!;
      // Peel works on w alone.
      const open = row === 3 * j + 1 ? -bond.radius : row === 3 * j + 4 ? bond.radius : 0;
      if (pull !== 0) {
        for (let column = 0; column < half; column++) {
          for (let k = 0; k < count; k++) {
            const law = stiffness[j * count + k]!;
            if (law !== 0) put(half + row, column, pull * law * slip[k * half + column]!);
          }
        }
        g[half + row]! += pull * fixed[j]!;
      }
      if (open !== 0) {
        for (let column = 0; column < size; column++) {
          put(half + row, column, open * peel.rows[j * size + column]!);
        }
        g[half + row]! += open * peel.fixed[j]!;
      }
    }
  });
  return { half, a, g, bonds: bondReadings(section, flow, { slip, peel, stiffness, fixed }) };
}

interface Laws {
  readonly slip: Matrix;
  readonly peel: Rows;
  readonly stiffness: Matrix;
  readonly fixed: Matrix;
}

function bondReadings(
  section: LayeredSection,
  flow: FlowSigns,
  { slip, peel, stiffness, fixed }: Laws,
): Readings {
  const count = section.bonds.length;
  const half = slip.length / count;
  const size = 2 * half;
  const c = slipFlexibility(section);
  const rows = new Float64Array(3 * count * size);
  const constants = new Float64Array(3 * count);
  const shears = multiply(stiffness, slip, count, count, half);
  // Slip beyond what the shears of all bonds make of it.
  const beyond = multiply(c, shears, count, count, half);
  const beyondFixed = multiply(c, fixed, count, count, 1);
  for (let j = 0; j < count; j++) {
    const [shear, across, trial] = [3 * j * size, (3 * j + 1) * size, (3 * j + 2) * size];
    const own = flow[j] === 0 ? 0 : 1 / c[j * count + j]!;
    for (let i = 0; i < half; i++) {
      const value = shears[j * half + i]!;
      rows[shear + i] = value;
      rows[trial + i] = value + own * (slip[j * half + i]! - beyond[j * half + i]!);
    }
    for (let i = 0; i < size; i++) rows[across + i] = peel.rows[j * size + i]!;
    constants[3 * j] = fixed[j]!;
    constants[3 * j + 1] = peel.fixed[j]!;
    constants[3 * j + 2] = fixed[j]! - own * beyondFixed[j]!;
  }
  return { count: 3 * count, rows, constants };
}
