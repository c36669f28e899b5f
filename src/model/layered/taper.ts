/**
 * A tapered overlap as short stretches, each exact to fourth order in its length: Magnus' exponent
 * from the system at the two Gauss points, Ω = (A1 + A2)·h/2 + √3/12·h²·[A2, A1].
 */
import { type Matrix, multiply } from '../numerics/dense.ts';
import type { LayeredLap } from './lap.ts';
import type { FlowSigns } from './section.ts';
import { type Stretch, uniformStretch } from './stretch.ts';
import { layeredSystem } from './system.ts';

/** Stretches over a whole tapered overlap: halving them moves stresses by less than 1e-6 of the peak. */
const STRETCHES = 32;

export function taperedStretches(
  lap: LayeredLap,
  flow: FlowSigns,
  from: number,
  to: number,
): Stretch[] {
  const count = Math.max(2, Math.ceil((STRETCHES * (to - from)) / lap.length));
  const h = (to - from) / count;
  const gauss = (Math.sqrt(3) / 6) * h;
  return Array.from({ length: count }, (_v, i) => {
    const middle = from + (i + 0.5) * h;
    const first = layeredSystem(lap.sectionAt(middle - gauss), flow);
    const second = layeredSystem(lap.sectionAt(middle + gauss), flow);
    const size = 2 * first.half;
    const bracket = commutator(second, first, size);
    const c = (Math.sqrt(3) / 12) * h;
    const a = first.a.map((value, k) => (value + second.a[k]!) / 2 + c * bracket.a[k]!);
    const g = first.g.map((value, k) => (value + second.g[k]!) / 2 + c * bracket.g[k]!);
    return uniformStretch(a, g, h);
  });
}

interface Affine {
  readonly a: Matrix;
  readonly g: Matrix;
}

/** [P, Q] of affine systems y′ = A·y + g: the last column goes along as that of a constant. */
function commutator(p: Affine, q: Affine, size: number): Affine {
  const pq = multiply(p.a, q.a, size, size, size);
  const qp = multiply(q.a, p.a, size, size, size);
  const pg = multiply(p.a, q.g, size, size, 1);
  const qg = multiply(q.a, p.g, size, size, 1);
  return {
    a: pq.map((value, k) => value - qp[k]!),
    g: pg.map((value, k) => value - qg[k]!),
  };
}
