/**
 * The one-dimensional lap: a tube (or strip) bonded to one or two outer adherends over x = 0 … L.
 * x = 0 is the sleeve root, where the tube ends; x = L the mouth, where the tube leaves. A channel
 * is one direction of shear, axial or circumferential. See docs/method.md, section 4.
 */

export interface Member {
  /** Force per unit strain, N, at the root. */
  readonly stiffness: number;
  /** The same at mid-overlap and at the mouth when the wall tapers; left out for a uniform wall. */
  readonly taper?: { readonly middle: number; readonly mouth: number };
  /** Free thermal strain, α·ΔT. */
  readonly thermalStrain: number;
}

export interface Channel {
  /** Force on the tube at the mouth, N. */
  readonly load: number;
  readonly tube: Member;
  /** One outer adherend for each bond. */
  readonly outers: readonly Member[];
  /** Slip at the bond per unit strain difference, one for each bond: 1 when the radii agree. */
  readonly levers: readonly number[];
}

export interface BondLaw {
  /** Bonded width, 2πρ or b, mm. */
  readonly width: number;
  /** Shear stress per slip, MPa/mm, the adherends' own shear included. */
  readonly stiffness: number;
  /** Shear stress at yield, MPa. */
  readonly shearYield: number;
  /** Slip at which the adhesive fails, mm. */
  readonly slipAtFailure: number;
}

export interface LapProblem {
  readonly length: number;
  readonly bonds: readonly BondLaw[];
  /** One channel, or axial and circumferential. */
  readonly channels: readonly Channel[];
}

/** Slip at which the bond yields, mm. */
export const slipAtYield = (bond: BondLaw): number => bond.shearYield / bond.stiffness;

export const isTapered = (channel: Channel): boolean =>
  channel.outers.some((outer) => outer.taper !== undefined);

/** Stiffness of a member at x: a parabola through root, middle and mouth. */
export function stiffnessAt(member: Member, x: number, length: number): number {
  const { stiffness, taper } = member;
  if (taper === undefined) return stiffness;
  const t = x / length;
  const square = 2 * (stiffness + taper.mouth - 2 * taper.middle);
  const linear = taper.mouth - stiffness - square;
  return stiffness + t * (linear + t * square);
}

/** Slope of that parabola, N/mm: how much the stiffness rises along the overlap. */
export function stiffnessRiseAt({ stiffness, taper }: Member, x: number, length: number): number {
  if (taper === undefined) return 0;
  const t = x / length;
  const square = 2 * (stiffness + taper.mouth - 2 * taper.middle);
  const linear = taper.mouth - stiffness - square;
  return (linear + 2 * t * square) / length;
}

/** Δε of bond j: how much more the tube expands than its outer adherend. */
export const thermalMismatch = (channel: Channel, j: number): number =>
  channel.tube.thermalStrain - channel.outers[j]!.thermalStrain;

/** The same problem with the mechanical loads multiplied and, if asked, the temperature removed. */
export function scaleLoads(problem: LapProblem, factor: number): LapProblem {
  return {
    ...problem,
    channels: problem.channels.map((channel) => ({ ...channel, load: channel.load * factor })),
  };
}
