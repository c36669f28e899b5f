/**
 * The gap between two circles off one axis, seen from the inner one's centre: exact for circles. Of
 * ovals each radius is taken at its own angle; what that leaves is about twice the oval times the offset
 * over the radius, below a micrometre here.
 */

/** Angle from the direction in which the inner circle is moved, by its cosine and sine. */
export interface Angle {
  readonly cos: number;
  readonly sin: number;
}

export const angleOf = (psi: number): Angle => ({ cos: Math.cos(psi), sin: Math.sin(psi) });

/** Gap at the angle ψ with the inner circle moved by e: h = √(R² − e²·sin²ψ) − e·cos ψ − r. */
export function gapOffAxis(outer: number, inner: number, e: number, { cos, sin }: Angle): number {
  const across = e * sin;
  return Math.sqrt(outer * outer - across * across) - e * cos - inner;
}

/**
 * How far the inner circle moves until the gap at ψ is s: e = √(R² − d²·sin²ψ) − d·cos ψ with
 * d = r + s. 0 where there is less to begin with.
 */
export function offsetToContact(
  outer: number,
  inner: number,
  s: number,
  { cos, sin }: Angle,
): number {
  const d = inner + s;
  const across = d * sin;
  const root = outer * outer - across * across;
  if (root <= 0) return 0;
  return Math.max(0, Math.sqrt(root) - d * cos);
}
