/**
 * Elastic - perfectly plastic shear lag of one bond in one channel, exact (L. J. Hart-Smith's
 * problem, 1973), with unequal adherends and thermal mismatch.
 *
 *   s″ = C·τ(s),  τ = k·s to s_e, then τp;  C = a²c(1/K_t + 1/K_s);  ω² = C·k
 *
 * In a plastic zone s is a parabola, in the elastic trough a pair of decaying exponentials; the
 * trough's length ℓ is the root of one monotone equation for each arrangement of the zones.
 * With g0 = −s′(0), gL = s′(L), q = C·τp = ω²·s_e and z = ωℓ/2:
 *
 *   both ends, same direction   g0 + gL = q(L − ℓ) + 2·ω·s_e·tanh z
 *   both ends, opposite         g0 − gL = q(L − ℓ) + 2·ω·s_e·coth z
 *   one end (here x = L)        gL = q(L − ℓ) + ω·s_e·tanh ωℓ − g0/cosh ωℓ
 *
 * Valid for a load below a·c·τp·L, at which the whole bond flows.
 */
import { type BondLaw, type Channel, slipAtYield, thermalMismatch } from '../lap/problem.ts';
import { findRoot } from '../numerics/root.ts';
import { makeBasis } from '../shear-lag/basis.ts';
import { decayRate } from '../shear-lag/one-bond.ts';

export interface OneBondPlastic {
  /** Length of the plastic zone at the root and at the mouth, mm; 0 when that end is elastic. */
  readonly plasticAtRoot: number;
  readonly plasticAtMouth: number;
  /** Slip at the ends, mm. */
  readonly slipAtRoot: number;
  readonly slipAtMouth: number;
  /** Slip (tube minus sleeve) at x, mm. */
  slip(x: number): number;
  /** Shear stress at x, MPa. */
  shear(x: number): number;
  /** Force in the sleeve at x, N. */
  outerForce(x: number): number;
  /** Lowest |shear| along the bond, MPa. */
  readonly lowestShear: number;
}

interface Ends {
  readonly omega: number;
  readonly yieldSlip: number;
  /** Curvature of the slip in a plastic zone, ω²·s_e. */
  readonly q: number;
  readonly g0: number;
  readonly gL: number;
  readonly length: number;
}

/** Load at which the whole bond flows: no equilibrium beyond it. */
export const flowLoad = (channel: Channel, bond: BondLaw, length: number): number =>
  channel.levers[0]! * bond.width * bond.shearYield * length;

function endsOf(channel: Channel, bond: BondLaw, length: number): Ends {
  const omega = decayRate(channel, bond);
  const yieldSlip = slipAtYield(bond);
  const strain = channel.levers[0]! * channel.load;
  const mismatch = thermalMismatch(channel, 0);
  return {
    omega,
    yieldSlip,
    q: omega * omega * yieldSlip,
    g0: strain / channel.outers[0]!.stiffness - mismatch,
    gL: strain / channel.tube.stiffness + mismatch,
    length,
  };
}

/** z − tanh z, without cancellation for small z. */
function tanhDefect(z: number): number {
  if (z > 0.05) return z - Math.tanh(z);
  const z2 = z * z;
  return (z * z2 * (1 - z2 * (2 / 5 - z2 * (17 / 105 - (z2 * 62) / 945)))) / 3;
}

/** Zones as [at root, at mouth], or null when this arrangement is not the solution. */
type Zones = readonly [number, number] | null;

function bothSame({ omega, yieldSlip, q, length }: Ends, g0: number, gL: number): Zones {
  const excess = length - (g0 + gL) / q;
  if (excess < 0) return null;
  const balance = (trough: number): number =>
    (2 / omega) * tanhDefect((omega * trough) / 2) - excess;
  if (!(balance(length) > 0)) return null;
  const trough = excess === 0 ? 0 : findRoot(balance, 0, length);
  const slope = omega * yieldSlip * Math.tanh((omega * trough) / 2);
  const zones = [(g0 - slope) / q, (gL - slope) / q] as const;
  return zones[0] >= 0 && zones[1] >= 0 ? zones : null;
}

function bothOpposite({ omega, yieldSlip, q, length }: Ends, g0: number, gL: number): Zones {
  const slope = (trough: number): number => (omega * yieldSlip) / Math.tanh((omega * trough) / 2);
  const balance = (trough: number): number => (g0 + gL - 2 * slope(trough)) / q + trough - length;
  if (!(balance(length) > 0)) return null;
  const trough = findRoot(balance, length * 1e-12, length);
  const zones = [(g0 - slope(trough)) / q, (gL - slope(trough)) / q] as const;
  return zones[0] >= 0 && zones[1] >= 0 ? zones : null;
}

/** Plastic zone at one end; `near` is that end's slope, `far` that of the elastic end. */
function oneEnd({ omega, yieldSlip, q, length }: Ends, near: number, far: number): number | null {
  const farSlip = (trough: number): number => {
    const decay = Math.exp(-omega * trough);
    const cosh = 1 + decay * decay;
    return (yieldSlip * 2 * decay + (far / omega) * (1 - decay * decay)) / cosh;
  };
  const balance = (trough: number): number => {
    const decay = Math.exp(-omega * trough);
    return (
      near -
      q * (length - trough) -
      omega * yieldSlip * Math.tanh(omega * trough) +
      (far * 2 * decay) / (1 + decay * decay)
    );
  };
  // Below this length the far end would have yielded too, and the equation is not monotone.
  const bound = far / (omega * yieldSlip);
  if (bound >= 1) return null;
  const shortest = bound > 0 ? (2 / omega) * Math.atanh(bound) : 0;
  if (shortest >= length || !(balance(length) >= 0) || !(balance(shortest) <= 0)) return null;
  const trough = findRoot(balance, shortest, length);
  return Math.abs(farSlip(trough)) <= yieldSlip * (1 + 1e-9) ? length - trough : null;
}

/**
 * @throws RangeError when the load is above `flowLoad`: no equilibrium
 */
export function solvePlastic(channel: Channel, bond: BondLaw, length: number): OneBondPlastic {
  const found = findPlastic(channel, bond, length);
  if (found) return found;
  throw new RangeError(
    `no equilibrium at a load of ${channel.load} N: the bond flows at ${flowLoad(channel, bond, length)} N`,
  );
}

/** Null when the load is above `flowLoad`, or so near below it that rounding leaves no trough. */
export function findPlastic(
  channel: Channel,
  bond: BondLaw,
  length: number,
): OneBondPlastic | null {
  const ends = endsOf(channel, bond, length);
  const { omega, yieldSlip, g0, gL } = ends;
  const basis = makeBasis(omega, length);
  const even = (g0 + gL) / (2 * omega * basis.tanh);
  const odd = ((gL - g0) * basis.tanh) / (2 * omega);
  const elasticRoot = even - odd;
  const elasticMouth = even + odd;
  const signRoot = Math.sign(elasticRoot);
  const signMouth = Math.sign(elasticMouth);
  // Past yield by a rounding error is at yield: the zone would be shorter than its own digits.
  const atYield = yieldSlip * (1 + 1e-9);
  const rootYields = Math.abs(elasticRoot) > atYield;
  const mouthYields = Math.abs(elasticMouth) > atYield;

  if (!rootYields && !mouthYields) {
    return describe(ends, channel, bond, [0, 0], elasticRoot, elasticMouth);
  }
  const arrangements: (() => [readonly [number, number], number, number] | null)[] = [
    () => {
      const opposite = signRoot * signMouth < 0;
      const zones = (opposite ? bothOpposite : bothSame)(ends, signRoot * g0, signMouth * gL);
      return zones && [zones, signRoot * yieldSlip, signMouth * yieldSlip];
    },
    () => {
      const zone = oneEnd(ends, signMouth * gL, signMouth * g0);
      if (zone === null) return null;
      const trough = makeBasis(omega, length - zone);
      return [[0, zone], startOf(trough, signMouth * yieldSlip, g0), signMouth * yieldSlip];
    },
    () => {
      const zone = oneEnd(ends, signRoot * g0, signRoot * gL);
      if (zone === null) return null;
      const trough = makeBasis(omega, length - zone);
      return [[zone, 0], signRoot * yieldSlip, startOf(trough, signRoot * yieldSlip, gL)];
    },
  ];
  if (!(rootYields && mouthYields)) arrangements.push(arrangements.shift()!);
  for (const arrangement of arrangements) {
    const found = arrangement();
    if (found) return describe(ends, channel, bond, ...found);
  }
  return null;
}

/** Slip at the elastic end of a trough whose other end is at yield; `slope` is outward there. */
function startOf(
  trough: { omega: number; length: number },
  atYield: number,
  slope: number,
): number {
  const decay = Math.exp(-trough.omega * trough.length);
  const cosh = 1 + decay * decay;
  return (atYield * 2 * decay + (slope / trough.omega) * (1 - decay * decay)) / cosh;
}

/** The solution's curves from the zones and the slips at the ends of the elastic trough. */
function describe(
  ends: Ends,
  channel: Channel,
  bond: BondLaw,
  zones: readonly [number, number],
  troughStart: number,
  troughEnd: number,
): OneBondPlastic {
  const { omega, q, g0, gL, length } = ends;
  const [c0, cL] = zones;
  const trough = Math.max(length - c0 - cL, 0);
  const basis = makeBasis(omega, Math.max(trough, length * 1e-12));
  const even = (troughStart + troughEnd) / 2;
  const odd = (troughEnd - troughStart) / 2;
  const curveRoot = Math.sign(troughStart) * q;
  const curveMouth = Math.sign(troughEnd) * q;
  // A parabola through yield at the front with the known slope at the end.
  const slipAtRoot = c0 > 0 ? troughStart + g0 * c0 - (curveRoot * c0 * c0) / 2 : troughStart;
  const slipAtMouth = cL > 0 ? troughEnd + gL * cL - (curveMouth * cL * cL) / 2 : troughEnd;
  // A station may lie beyond an end by a rounding error.
  const inside = (x: number): number => Math.min(Math.max(x, 0), length);
  const slip = (station: number): number => {
    const x = inside(station);
    if (x < c0) return slipAtRoot - g0 * x + (curveRoot * x * x) / 2;
    const back = length - x;
    if (back < cL) return slipAtMouth - gL * back + (curveMouth * back * back) / 2;
    const xi = Math.min(Math.max(x - c0, 0), trough);
    return even * basis.even(xi) + odd * basis.odd(xi);
  };
  const shear = (station: number): number => {
    const x = inside(station);
    if (x < c0) return Math.sign(troughStart) * bond.shearYield;
    if (length - x < cL) return Math.sign(troughEnd) * bond.shearYield;
    return bond.stiffness * slip(x);
  };
  const transfer = channel.levers[0]! * bond.width;
  const outerForce = (station: number): number => {
    const x = inside(station);
    const inMouth = Math.min(length - x, cL);
    let sum = Math.sign(troughEnd) * bond.shearYield * inMouth;
    const xi = Math.min(Math.max(x - c0, 0), trough);
    if (length - x > cL) {
      sum += bond.stiffness * (even * basis.evenBeyond(xi) + odd * basis.oddBeyond(xi));
    }
    if (x < c0) sum += Math.sign(troughStart) * bond.shearYield * (c0 - x);
    return transfer * sum;
  };
  return {
    plasticAtRoot: c0,
    plasticAtMouth: cL,
    slipAtRoot,
    slipAtMouth,
    slip,
    shear,
    outerForce,
    lowestShear: bond.stiffness * lowestSlip(omega, trough, even, odd),
  };
}

/** Lowest |even·cosh ωξ/cosh + odd·sinh ωξ/sinh| over −ℓ/2 … ℓ/2. */
function lowestSlip(omega: number, trough: number, even: number, odd: number): number {
  const ends = Math.min(Math.abs(even - odd), Math.abs(even + odd));
  // The slip changes sign inside the trough.
  if ((even - odd) * (even + odd) <= 0) return 0;
  const tanh = Math.tanh((omega * trough) / 2);
  if (!(tanh > 0)) return ends;
  const ratio = odd / (even * tanh);
  // Stationary where tanh ωξ = −ratio; outside the trough the ends are lowest.
  if (Math.abs(ratio) >= tanh) return ends;
  return (Math.abs(even) * Math.sqrt(1 - ratio * ratio)) / Math.cosh((omega * trough) / 2);
}
