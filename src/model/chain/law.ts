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
  const [n0, n1] = out.direction;
  out.stress[0] = shearYield * n0;
  out.stress[1] = shearYield * n1;
  const across = shearYield / size;
  out.tangent[0] = across * n1 * n1;
  out.tangent[1] = -across * n0 * n1;
  out.tangent[2] = across * n0 * n0;
}

/**
 * Derivative of (tangent · v) with respect to the slip, for the plastic branch:
 * [∂/∂s0, ∂/∂s1] of component 0, then of component 1.
 */
export function tangentGradient(
  shearYield: number,
  traction: Traction,
  v0: number,
  v1: number,
): [number, number, number, number] {
  const { size, direction } = traction;
  const [n0, n1] = direction;
  const along = n0 * v0 + n1 * v1;
  const w0 = v0 - n0 * along;
  const w1 = v1 - n1 * along;
  const scale = -shearYield / (size * size);
  // d(T·v) = −τp/|s|²·[ (n·ds)·w + m·(n·v) + n·(m·v) ],  m = ds − n(n·ds)
  const column = (d0: number, d1: number): [number, number] => {
    const radial = n0 * d0 + n1 * d1;
    const m0 = d0 - n0 * radial;
    const m1 = d1 - n1 * radial;
    const turn = m0 * v0 + m1 * v1;
    return [
      scale * (radial * w0 + m0 * along + n0 * turn),
      scale * (radial * w1 + m1 * along + n1 * turn),
    ];
  };
  const c0 = column(1, 0);
  const c1 = column(0, 1);
  return [c0[0], c1[0], c0[1], c1[1]];
}
