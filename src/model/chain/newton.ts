/** One solution of the chain on given nodes by Newton's method. */
import type { LapProblem } from '../lap/problem.ts';
import { layoutOf } from './equations.ts';
import { type Chain, type Control, chainSystem } from './system.ts';

const TOLERANCE = 1e-11;
/** No rounding is as large as this: without it any residual is small beside slips that run away. */
const NEVER = 1e-3;

/**
 * @param start nodes, first guess and regimes; the guess is not changed
 * @param yieldScale multiplies the yield stress of every bond, for continuation
 * @returns null when the iteration does not settle
 */
export function newton(
  problem: LapProblem,
  control: Control,
  start: Chain,
  yieldScale = 1,
  maxIterations = 25,
): Chain | null {
  const m = layoutOf(problem).unknowns;
  const { nodes, regimes } = start;
  const values = start.values.slice();
  const size = values.length;
  const system = chainSystem(problem, control, { nodes, values, regimes }, yieldScale);
  const { scale, matrix, residual, assemble } = system;

  /** Largest unknown in its own scale: what rounding is measured against. */
  const magnitude = (): number => {
    let most = 1;
    for (let i = 0; i < size; i++) most = Math.max(most, Math.abs(values[i]!) / scale[i % m]!);
    return most;
  };

  let norm = assemble(true);
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    if (!Number.isFinite(norm)) return null;
    const step = residual.slice();
    if (!matrix.solve(step)) return null;
    const before = values.slice();
    const normBefore = norm;
    let largest = 0;
    for (let i = 0; i < size; i++) largest = Math.max(largest, Math.abs(step[i]!));
    let damping = 1;
    let most = 1;
    for (let trial = 0; trial < 10; trial++) {
      for (let i = 0; i < size; i++) {
        values[i] = before[i]! - damping * step[i]! * scale[i % m]!;
      }
      norm = assemble(true);
      most = magnitude();
      if (norm <= normBefore * (1 - 0.1 * damping) || norm < TOLERANCE * most) break;
      // At rounding level the residual cannot fall further.
      if (largest < 1e-9 * most && norm < 1e-8 * most) break;
      damping /= 2;
    }
    if (largest * damping < TOLERANCE * 100 * most && norm < Math.min(1e-8 * most, NEVER)) {
      return { nodes, values, regimes };
    }
    if (norm < TOLERANCE * 1e-3) return { nodes, values, regimes };
  }
  return norm < Math.min(1e-8 * magnitude(), NEVER) ? { nodes, values, regimes } : null;
}
