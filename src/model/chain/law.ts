/**
 * Shear stress of the bond from its slip, total-strain elastic - perfectly plastic with one yield
 * surface for the resultant: τ = k·s while |s| ≤ s_e, else τp·s/|s|. One component or two.
 */
export type Regime = 'elastic' | 'plastic' | 'either';

export interface Traction {
  /** Stress per component, MPa. */
  readonly stress: [number, number];
  /** ∂τ/∂s, symmetric: [xx, xθ, θθ], MPa/mm. */
  readonly tangent: [number, number, number];
  /** Radius of the slip, mm, and its direction. */
  size: number;
  readonly direction: [number, number];
}

export const makeTraction = (): Traction => ({
  stress: [0, 0],
  tangent: [0, 0, 0],
  size: 0,
  direction: [0, 0],
});

/**
 * @param regime forces the branch inside a cell whose state is known, `either` decides by |s|
 */
export function evaluateLaw(
  stiffness: number,
  shearYield: number,
  s0: number,
  s1: number,
  regime: Regime,
  out: Traction,
): void {
  const size = s1 === 0 ? Math.abs(s0) : Math.hypot(s0, s1);
  out.size = size;
  out.direction[0] = size > 0 ? s0 / size : 1;
  out.direction[1] = size > 0 ? s1 / size : 0;
  const plastic = regime === 'plastic' || (regime === 'either' && stiffness * size > shearYield);
  if (!plastic || size === 0) {
    out.stress[0] = stiffness * s0;
    out.stress[1] = stiffness * s1;
    out.tangent[0] = stiffness;
    out.tangent[1] = 0;
    out.tangent[2] = stiffness;
    return;
  }
  const n0 = out.direction[0]!;
  const n1 = out.direction[1]!;
  out.stress[0] = shearYield * n0;
  out.stress[1] = shearYield * n1;
  const across = shearYield / size;
  out.tangent[0] = across * n1 * n1;
  out.tangent[1] = -across * n0 * n1;
  out.tangent[2] = across * n0 * n0;
}

/**
 * Derivative of (tangent · v) with respect to the slip, for the plastic branch, into `out`:
 * ∂/∂s0 and ∂/∂s1 of component 0, then of component 1.
 *
 *   d(T·v) = −τp/|s|²·[ (n·ds)·w + m·(n·v) + n·(m·v) ],  w = v − n(n·v),  m = ds − n(n·ds)
 */
export function tangentGradient(
  shearYield: number,
  traction: Traction,
  v0: number,
  v1: number,
  out: Float64Array,
): void {
  const { size, direction } = traction;
  const n0 = direction[0];
  const n1 = direction[1];
  const along = n0 * v0 + n1 * v1;
  const w0 = v0 - n0 * along;
  const w1 = v1 - n1 * along;
  const scale = -shearYield / (size * size);
  // ds = (1, 0): n·ds = n0, m = (1 − n0², −n0·n1); ds = (0, 1) likewise.
  const cross = -n0 * n1;
  const m00 = 1 - n0 * n0;
  const m11 = 1 - n1 * n1;
  const turn0 = m00 * v0 + cross * v1;
  const turn1 = cross * v0 + m11 * v1;
  out[0] = scale * (n0 * w0 + m00 * along + n0 * turn0);
  out[1] = scale * (n1 * w0 + cross * along + n0 * turn1);
  out[2] = scale * (n0 * w1 + cross * along + n1 * turn0);
  out[3] = scale * (n1 * w1 + m11 * along + n1 * turn1);
}
