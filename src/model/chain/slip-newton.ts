/**
 * Newton's method on the slips alone, for uniform walls: the forces are eliminated cell by cell
 * (`slip-cell.ts`), which leaves a block-tridiagonal system of at most 4 × 4 blocks in the continuity of
 * the slip rates at the nodes. Same formula, same order and same answer as `newton.ts`, many times
 * faster. Not for bonds so soft that ωL < 0.02: there the differences of slip drown in rounding, and
 * `newton.ts` keeps the forces as unknowns.
 */
import { type LapProblem, slipAtYield } from '../lap/problem.ts';
import { solveSmall } from '../numerics/small-solve.ts';
import { SlipCell } from './slip-cell.ts';
import { type EndRows, endRows, outerForces } from './slip-ends.ts';
import type { Chain, Control } from './system.ts';

const TOLERANCE = 1e-12;
/** No rounding is as large as this: without it any residual is small beside slips that run away. */
const NEVER = 1e-3;

/**
 * Work arrays kept from call to call: thousands of short solutions would otherwise spend their time
 * in the garbage collector. Nothing here outlives a call, and a call never nests.
 */
const scratch = new Map<string, Float64Array>();

function workArray(name: string, size: number): Float64Array {
  const kept = scratch.get(name);
  if (kept && kept.length >= size) return kept.subarray(0, size);
  const fresh = new Float64Array(size * 2);
  scratch.set(name, fresh);
  return fresh.subarray(0, size);
}

/**
 * @param omega scale of the decay rate, for the weights of the conditions only
 * @returns null when the iteration does not settle
 */
export function slipNewton(
  problem: LapProblem,
  control: Control,
  start: Chain,
  omega: number,
  yieldScale = 1,
  maxIterations = 25,
): Chain | null {
  const bonds = problem.bonds.length;
  const channels = problem.channels.length;
  const n = channels * bonds;
  const m = 2 * n + 1;
  const { nodes, regimes } = start;
  const count = nodes.length;
  const cells = count - 1;
  const slips = workArray('slips', count * n);
  for (let i = 0; i < count; i++) {
    for (let u = 0; u < n; u++) slips[i * n + u] = start.values[i * m + 2 * u]!;
  }
  let lambda = control.kind === 'load' ? control.factor : start.values[m - 1]!;
  const ends = endRows(problem, omega);
  const cell = new SlipCell(problem, yieldScale);
  const unit = problem.bonds.map(slipAtYield);
  const residual = workArray('residual', count * n);
  const column = workArray('column', count * n);
  const diagonal = workArray('diagonal', count * n * n);
  const ahead = workArray('ahead', count * n * n);
  const behind = workArray('behind', count * n * n);
  const rates = workArray('rates', count * n);
  const reverse = control.kind === 'slip' && control.end === 'root';

  const applyEnd = (rows: EndRows, node: number, e: Float64Array): void => {
    for (let u = 0; u < n; u++) {
      let sum = rows.onLambda[u]! * lambda + rows.constant[u]!;
      for (let v = 0; v < n; v++) {
        sum += rows.onRate[u * n + v]! * e[v]! + rows.onSlip[u * n + v]! * slips[node * n + v]!;
      }
      residual[node * n + u] = sum;
      column[node * n + u] = rows.onLambda[u]!;
    }
  };
  const addProduct = (rows: EndRows, by: Float64Array, out: Float64Array, at: number): void => {
    for (let u = 0; u < n; u++) {
      for (let v = 0; v < n; v++) {
        let sum = 0;
        for (let w = 0; w < n; w++) sum += rows.onRate[u * n + w]! * by[w * n + v]!;
        out[at + u * n + v]! += sum;
      }
    }
  };

  const assemble = (): number => {
    diagonal.fill(0);
    residual.fill(0);
    column.fill(0);
    for (let i = 0; i < cells; i++) {
      const follows = i > 0 && regimes[i] === regimes[i - 1];
      cell.compute(slips, i * n, nodes[i + 1]! - nodes[i]!, regimes[i]!, follows);
      const [e0s0, e0s1, e1s0, e1s1] = cell.by;
      const here = i * n * n;
      const next = here + n * n;
      if (i === 0) {
        applyEnd(ends.root, 0, cell.e0);
        diagonal.set(ends.root.onSlip, 0);
        ahead.fill(0, 0, n * n);
        addProduct(ends.root, e0s0, diagonal, 0);
        addProduct(ends.root, e0s1, ahead, 0);
        rates.set(cell.e0, 0);
      } else {
        for (let u = 0; u < n; u++) residual[i * n + u]! -= cell.e0[u]!;
        for (let k = 0; k < n * n; k++) {
          diagonal[here + k]! -= e0s0[k]!;
          ahead[here + k] = -e0s1[k]!;
        }
      }
      rates.set(cell.e1, (i + 1) * n);
      if (i === cells - 1) {
        applyEnd(ends.mouth, cells, cell.e1);
        behind.set(e1s0, next);
        diagonal.set(e1s1, next);
      } else {
        for (let u = 0; u < n; u++) residual[(i + 1) * n + u] = cell.e1[u]!;
        for (let k = 0; k < n * n; k++) {
          diagonal[next + k] = e1s1[k]!;
          behind[next + k] = e1s0[k]!;
        }
      }
    }
    let norm = 0;
    for (let i = 0; i < count * n; i++) {
      const scaled = residual[i]! / (unit[i % bonds]! * omega);
      norm += scaled * scaled;
    }
    if (control.kind === 'slip') norm += controlMiss() ** 2;
    return Math.sqrt(norm);
  };

  const controlNode = control.kind === 'slip' && control.end === 'mouth' ? cells : 0;
  const controlSlip = (q: number): number =>
    control.kind === 'slip' ? slips[controlNode * n + q * bonds + control.bond]! : 0;
  const controlRadius = (): number =>
    channels > 1 ? Math.hypot(controlSlip(0), controlSlip(1)) : Math.abs(controlSlip(0));
  function controlMiss(): number {
    return control.kind === 'slip' ? (controlRadius() - control.size) / unit[control.bond]! : 0;
  }

  // Elimination leaves, for each node, its step as y − z·δλ − X·(step of the next node).
  const width = n + 2;
  const solved = workArray('solved', count * n * width);
  const work = new Float64Array(n * n);
  const last = new Float64Array((n + 1) * (n + 1));
  const lastRight = new Float64Array(n + 1);
  const step = workArray('step', count * n);
  let lambdaStep = 0;

  const eliminate = (): boolean => {
    for (let k = 0; k < count; k++) {
      const node = reverse ? count - 1 - k : k;
      const here = node * n * n;
      const out = solved.subarray(k * n * width, (k + 1) * n * width);
      const onward = reverse ? behind : ahead;
      const back = reverse ? ahead : behind;
      for (let i = 0; i < n * n; i++) work[i] = diagonal[here + i]!;
      for (let u = 0; u < n; u++) {
        for (let v = 0; v < n; v++) {
          out[u * width + v] = k < count - 1 ? onward[here + u * n + v]! : 0;
        }
        out[u * width + n] = residual[node * n + u]!;
        out[u * width + n + 1] = column[node * n + u]!;
      }
      if (k > 0) {
        const before = (k - 1) * n * width;
        for (let u = 0; u < n; u++) {
          for (let w = 0; w < n; w++) {
            const factor = back[here + u * n + w]!;
            if (factor === 0) continue;
            const row = before + w * width;
            for (let v = 0; v < n; v++) work[u * n + v]! -= factor * solved[row + v]!;
            out[u * width + n]! -= factor * solved[row + n]!;
            out[u * width + n + 1]! -= factor * solved[row + n + 1]!;
          }
        }
      }
      if (k < count - 1) {
        if (!solveSmall(work, out, n, width)) return false;
        continue;
      }
      // The last node closes with the load factor, known or controlled by its slip.
      if (control.kind === 'load') {
        lambdaStep = 0;
        if (!solveSmall(work, out, n, width)) return false;
        for (let u = 0; u < n; u++) step[node * n + u] = out[u * width + n]!;
      } else {
        const side = n + 1;
        last.fill(0);
        const radius = controlRadius();
        for (let u = 0; u < n; u++) {
          for (let v = 0; v < n; v++) last[u * side + v] = work[u * n + v]!;
          last[u * side + n] = out[u * width + n + 1]!;
          lastRight[u] = out[u * width + n]!;
        }
        for (let q = 0; q < channels; q++) {
          last[n * side + q * bonds + control.bond] =
            (radius > 0 ? controlSlip(q) / radius : q === 0 ? 1 : 0) / unit[control.bond]!;
        }
        lastRight[n] = controlMiss();
        if (!solveSmall(last, lastRight, side, 1)) return false;
        for (let u = 0; u < n; u++) step[node * n + u] = lastRight[u]!;
        lambdaStep = lastRight[n]!;
      }
    }
    for (let k = count - 2; k >= 0; k--) {
      const node = reverse ? count - 1 - k : k;
      const next = reverse ? node - 1 : node + 1;
      for (let u = 0; u < n; u++) {
        const row = k * n * width + u * width;
        let sum = solved[row + n]! - solved[row + n + 1]! * lambdaStep;
        for (let v = 0; v < n; v++) sum -= solved[row + v]! * step[next * n + v]!;
        step[node * n + u] = sum;
      }
    }
    return true;
  };

  const finish = (): Chain => {
    const values = new Float64Array(count * m);
    for (let i = 0; i < count; i++) {
      for (let q = 0; q < channels; q++) outerForces(problem, q, lambda, rates, i, values);
      for (let u = 0; u < n; u++) values[i * m + 2 * u] = slips[i * n + u]!;
      values[i * m + m - 1] = lambda;
    }
    return { nodes, values, regimes };
  };

  /** Largest slip over the slip at yield: what rounding is measured against. */
  const size = (): number => {
    let most = 1;
    for (let i = 0; i < count * n; i++) {
      most = Math.max(most, Math.abs(slips[i]!) / unit[i % bonds]!);
    }
    return most;
  };

  let norm = assemble();
  const before = workArray('before', count * n);
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    if (!Number.isFinite(norm)) return null;
    if (!eliminate()) return null;
    before.set(slips);
    const lambdaBefore = lambda;
    const normBefore = norm;
    let largest = 0;
    for (let i = 0; i < count * n; i++) {
      largest = Math.max(largest, Math.abs(step[i]!) / unit[i % bonds]!);
    }
    let damping = 1;
    let most = 1;
    for (let trial = 0; trial < 8; trial++) {
      for (let i = 0; i < count * n; i++) slips[i] = before[i]! - damping * step[i]!;
      lambda = lambdaBefore - damping * lambdaStep;
      norm = assemble();
      most = size();
      if (norm <= normBefore * (1 - 0.1 * damping) || norm < TOLERANCE * most) break;
      // At rounding level the residual cannot fall further.
      if (largest < 1e-8 * most && norm < 1e-7 * most) break;
      damping /= 2;
    }
    if (largest * damping < 1e-9 * most && norm < Math.min(1e-7 * most, NEVER)) return finish();
    if (norm < Math.min(TOLERANCE * most, NEVER)) return finish();
  }
  return norm < Math.min(1e-8 * size(), NEVER) ? finish() : null;
}
