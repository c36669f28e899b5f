/**
 * Algebra of plane stress and strain: components in the order x, y, xy, with the engineering shear
 * strain γxy. A laminate's x is the tube's axis, y its hoop direction.
 */
export type Triple = readonly [number, number, number];

/** A symmetric 3 × 3: stiffness, compliance, or one block of the ABD matrix. */
export interface Plane {
  readonly c11: number;
  readonly c12: number;
  readonly c22: number;
  readonly c16: number;
  readonly c26: number;
  readonly c66: number;
}

export const zeroPlane: Plane = { c11: 0, c12: 0, c22: 0, c16: 0, c26: 0, c66: 0 };

/** p + factor·q */
export const addPlane = (p: Plane, q: Plane, factor: number): Plane => ({
  c11: p.c11 + factor * q.c11,
  c12: p.c12 + factor * q.c12,
  c22: p.c22 + factor * q.c22,
  c16: p.c16 + factor * q.c16,
  c26: p.c26 + factor * q.c26,
  c66: p.c66 + factor * q.c66,
});

/** v + factor·w */
export const addTriple = (v: Triple, w: Triple, factor: number): Triple => [
  v[0] + factor * w[0],
  v[1] + factor * w[1],
  v[2] + factor * w[2],
];

export const dot = (v: Triple, w: Triple): number => v[0] * w[0] + v[1] * w[1] + v[2] * w[2];

export const times = (p: Plane, [x, y, s]: Triple): Triple => [
  p.c11 * x + p.c12 * y + p.c16 * s,
  p.c12 * x + p.c22 * y + p.c26 * s,
  p.c16 * x + p.c26 * y + p.c66 * s,
];

/** By cofactors: the matrices of a laminate are well conditioned (about E1/G12). */
export function invertPlane({ c11, c12, c22, c16, c26, c66 }: Plane): Plane {
  const k11 = c22 * c66 - c26 * c26;
  const k12 = c16 * c26 - c12 * c66;
  const k16 = c12 * c26 - c22 * c16;
  const determinant = c11 * k11 + c12 * k12 + c16 * k16;
  return {
    c11: k11 / determinant,
    c12: k12 / determinant,
    c22: (c11 * c66 - c16 * c16) / determinant,
    c16: k16 / determinant,
    c26: (c12 * c16 - c11 * c26) / determinant,
    c66: (c11 * c22 - c12 * c12) / determinant,
  };
}

/** Rows of a plane, for products that are not symmetric. */
export const rowsOf = ({ c11, c12, c22, c16, c26, c66 }: Plane): [Triple, Triple, Triple] => [
  [c11, c12, c16],
  [c12, c22, c26],
  [c16, c26, c66],
];

export interface Turn {
  readonly cos: number;
  readonly sin: number;
}

/** Cosine and sine of degrees, exact at multiples of 45°: no stray 16 or 26 term from rounding. */
export function turnBy(degrees: number): Turn {
  const turn = degrees % 360;
  if (turn % 45 === 0) {
    const eighth = (turn / 45 + 8) % 8;
    const at = (i: number): number =>
      [0, Math.SQRT1_2, 1, Math.SQRT1_2][i % 4]! * (i < 4 ? 1 : -1) + 0;
    return { cos: at((eighth + 2) % 8), sin: at(eighth) };
  }
  const angle = (turn * Math.PI) / 180;
  return { cos: Math.cos(angle), sin: Math.sin(angle) };
}

export const turnBack = ({ cos, sin }: Turn): Turn => ({ cos, sin: -sin });

/** Strain in ply axes to strain in laminate axes, the ply's 1 lying at the turn from x. */
export function turnStrain([e1, e2, g12]: Triple, { cos, sin }: Turn): Triple {
  const cc = cos * cos;
  const ss = sin * sin;
  const cs = cos * sin;
  return [
    cc * e1 + ss * e2 - cs * g12,
    ss * e1 + cc * e2 + cs * g12,
    2 * cs * (e1 - e2) + (cc - ss) * g12,
  ];
}
