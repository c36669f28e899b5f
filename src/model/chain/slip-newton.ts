/**
 * Newton's method on the slips alone, for uniform walls: the forces are eliminated cell by cell, which
 * leaves a block-tridiagonal system of at most 4 × 4 blocks. Same formula, same order and same answer as
 * `newton.ts`, many times faster. With s″ = f(s) = C·τ(s), Δ = s₁ − s₀ and G = ∂f/∂s, the slip rates at the
 * two ends of a cell are
 *
 *   e₀ + e₁ = 2Δ/h + h/6·(f₁ − f₀)
 *   e₁ − e₀ = h/2·(f₀ + f₁) + h²/12·(G₀ê₀ − G₁ê₁),   ê₀ = Δ/h − h/6·(2f₀ + f₁),  ê₁ = Δ/h + h/6·(f₀ + 2f₁)
 *
 * and the unknowns are found from their continuity at the nodes. Not for bonds so soft that ωL < 0.02:
 * there the differences of slip drown in rounding, and `newton.ts` keeps the forces as unknowns.
 */
import { type LapProblem, slipAtYield, thermalMismatch } from '../lap/problem.ts';
import { evaluateLaw, makeTraction, type Regime, tangentGradient } from './law.ts';
import type { Chain, Control } from './newton.ts';

const TOLERANCE = 1e-12;

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

/** Solves A·X = B in place for small dense A (n × n, row-major) and B (n × w); false when singular. */
function solveSmall(a: Float64Array, b: Float64Array, n: number, w: number): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(a[i * n + k]!) > Math.abs(a[pivot * n + k]!)) pivot = i;
    }
    const top = a[pivot * n + k]!;
    if (top === 0 || !Number.isFinite(top)) return false;
    if (pivot !== k) {
      for (let c = k; c < n; c++) {
        const swap = a[k * n + c]!;
        a[k * n + c] = a[pivot * n + c]!;
        a[pivot * n + c] = swap;
      }
      for (let c = 0; c < w; c++) {
        const swap = b[k * w + c]!;
        b[k * w + c] = b[pivot * w + c]!;
        b[pivot * w + c] = swap;
      }
    }
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k]! / top;
      if (factor === 0) continue;
      for (let c = k + 1; c < n; c++) a[i * n + c]! -= factor * a[k * n + c]!;
      for (let c = 0; c < w; c++) b[i * w + c]! -= factor * b[k * w + c]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let c = 0; c < w; c++) {
      let sum = b[k * w + c]!;
      for (let i = k + 1; i < n; i++) sum -= a[k * n + i]! * b[i * w + c]!;
      b[k * w + c] = sum / a[k * n + k]!;
    }
  }
  return true;
}

/** Slip rates at both ends of one cell and their derivatives with respect to both ends' slips. */
class Cell {
  readonly e0: Float64Array;
  readonly e1: Float64Array;
  /** ∂e₀/∂s₀, ∂e₀/∂s₁, ∂e₁/∂s₀, ∂e₁/∂s₁, row-major. */
  readonly by: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
  private readonly n: number;
  private readonly channels: number;
  private readonly bonds: number;
  private readonly problem: LapProblem;
  private readonly yieldScale: number;
  /** C: curvature of slip u per stress v, MPa⁻¹mm⁻¹. */
  private readonly curvature: Float64Array;
  private readonly gradient = new Float64Array(4);
  private readonly sides;

  constructor(problem: LapProblem, yieldScale: number) {
    this.problem = problem;
    this.yieldScale = yieldScale;
    this.channels = problem.channels.length;
    this.bonds = problem.bonds.length;
    const n = this.channels * this.bonds;
    this.n = n;
    const square = (): Float64Array => new Float64Array(n * n);
    this.e0 = new Float64Array(n);
    this.e1 = new Float64Array(n);
    this.by = [square(), square(), square(), square()];
    this.curvature = square();
    problem.channels.forEach((channel, q) => {
      for (let j = 0; j < this.bonds; j++) {
        for (let i = 0; i < this.bonds; i++) {
          const own = i === j ? 1 / channel.outers[j]!.stiffness : 0;
          this.curvature[(q * this.bonds + j) * n + q * this.bonds + i] =
            channel.levers[j]! *
            channel.levers[i]! *
            problem.bonds[i]!.width *
            (1 / channel.tube.stiffness + own);
        }
      }
    });
    const side = () => ({
      f: new Float64Array(n),
      rate: new Float64Array(n),
      /** G = ∂f/∂s */
      g: square(),
      /** ∂(G·ê)/∂s at fixed ê */
      turn: square(),
      traction: problem.bonds.map(() => makeTraction()),
    });
    this.sides = [side(), side()] as const;
  }

  private evaluate(end: 0 | 1, s: Float64Array, at: number, regimes: readonly Regime[]): void {
    const { n, bonds, channels, curvature: C, problem } = this;
    const { f, g, traction } = this.sides[end];
    for (let j = 0; j < bonds; j++) {
      const bond = problem.bonds[j]!;
      const s1 = channels > 1 ? s[at + bonds + j]! : 0;
      const limit = bond.shearYield * this.yieldScale;
      evaluateLaw(bond.stiffness, limit, s[at + j]!, s1, regimes[j]!, traction[j]!);
    }
    for (let q = 0; q < channels; q++) {
      for (let j = 0; j < bonds; j++) {
        const u = q * bonds + j;
        let sum = 0;
        for (let i = 0; i < bonds; i++) {
          const c = C[u * n + q * bonds + i]!;
          sum += c * traction[i]!.stress[q]!;
          for (let p = 0; p < channels; p++) {
            g[u * n + p * bonds + i] = c * traction[i]!.tangent[q + p]!;
          }
        }
        f[u] = sum;
      }
    }
  }

  /** Derivative of G·ê with the direction of the slip: only two channels at once can turn. */
  private evaluateTurn(end: 0 | 1, regimes: readonly Regime[]): void {
    const { n, bonds, channels, curvature: C, problem } = this;
    const { turn, rate, traction } = this.sides[end];
    turn.fill(0);
    if (channels === 1) return;
    for (let i = 0; i < bonds; i++) {
      if (regimes[i] !== 'plastic' || !(traction[i]!.size > 0)) continue;
      const limit = problem.bonds[i]!.shearYield * this.yieldScale;
      const d = this.gradient;
      tangentGradient(limit, traction[i]!, rate[i]!, rate[bonds + i]!, d);
      for (let q = 0; q < 2; q++) {
        for (let j = 0; j < bonds; j++) {
          const u = q * bonds + j;
          const c = C[u * n + q * bonds + i]!;
          turn[u * n + i]! += c * d[2 * q]!;
          turn[u * n + bonds + i]! += c * d[2 * q + 1]!;
        }
      }
    }
  }

  compute(s: Float64Array, at: number, h: number, regimes: readonly Regime[]): void {
    const { n } = this;
    this.evaluate(0, s, at, regimes);
    this.evaluate(1, s, at + n, regimes);
    const [a, b] = this.sides;
    const smooth = regimes[0] !== 'either' && regimes[regimes.length - 1] !== 'either';
    for (let u = 0; u < n; u++) {
      const slope = (s[at + n + u]! - s[at + u]!) / h;
      a.rate[u] = slope - (h / 6) * (2 * a.f[u]! + b.f[u]!);
      b.rate[u] = slope + (h / 6) * (a.f[u]! + 2 * b.f[u]!);
    }
    const twelfth = smooth ? (h * h) / 12 : 0;
    if (smooth) {
      this.evaluateTurn(0, regimes);
      this.evaluateTurn(1, regimes);
    }
    const [e0s0, e0s1, e1s0, e1s1] = this.by;
    for (let u = 0; u < n; u++) {
      let ga = 0;
      let gb = 0;
      for (let v = 0; v < n; v++) {
        ga += a.g[u * n + v]! * a.rate[v]!;
        gb += b.g[u * n + v]! * b.rate[v]!;
      }
      const sum = (2 * (s[at + n + u]! - s[at + u]!)) / h + (h / 6) * (b.f[u]! - a.f[u]!);
      const difference = (h / 2) * (a.f[u]! + b.f[u]!) + twelfth * (ga - gb);
      this.e0[u] = (sum - difference) / 2;
      this.e1[u] = (sum + difference) / 2;
      for (let v = 0; v < n; v++) {
        const k = u * n + v;
        const one = u === v ? 1 : 0;
        const sumBy0 = (-2 * one) / h - (h / 6) * a.g[k]!;
        const sumBy1 = (2 * one) / h + (h / 6) * b.g[k]!;
        let by0 = (h / 2) * a.g[k]!;
        let by1 = (h / 2) * b.g[k]!;
        if (smooth) {
          let aa = 0;
          let ab = 0;
          let ba = 0;
          let bb = 0;
          for (let w = 0; w < n; w++) {
            const gaw = a.g[u * n + w]!;
            const gbw = b.g[u * n + w]!;
            aa += gaw * a.g[w * n + v]!;
            ab += gaw * b.g[w * n + v]!;
            ba += gbw * a.g[w * n + v]!;
            bb += gbw * b.g[w * n + v]!;
          }
          const ga0 = -a.g[k]! / h - (h / 3) * aa + a.turn[k]!;
          const ga1 = a.g[k]! / h - (h / 6) * ab;
          const gb0 = -b.g[k]! / h + (h / 6) * ba;
          const gb1 = b.g[k]! / h + (h / 3) * bb + b.turn[k]!;
          by0 += twelfth * (ga0 - gb0);
          by1 += twelfth * (ga1 - gb1);
        }
        e0s0[k] = (sumBy0 - by0) / 2;
        e0s1[k] = (sumBy1 - by1) / 2;
        e1s0[k] = (sumBy0 + by0) / 2;
        e1s1[k] = (sumBy1 + by1) / 2;
      }
    }
  }
}

/** Linear end conditions: matrix on the slip rates, on the slips, on λ, and the constant. */
interface EndRows {
  readonly onRate: Float64Array;
  readonly onSlip: Float64Array;
  readonly onLambda: Float64Array;
  readonly constant: Float64Array;
}

function endRows(problem: LapProblem, omega: number): { root: EndRows; mouth: EndRows } {
  const bonds = problem.bonds.length;
  const n = problem.channels.length * bonds;
  const make = (): EndRows => ({
    onRate: new Float64Array(n * n),
    onSlip: new Float64Array(n * n),
    onLambda: new Float64Array(n),
    constant: new Float64Array(n),
  });
  const root = make();
  const mouth = make();
  problem.channels.forEach((channel, q) => {
    const u = q * bonds;
    for (let j = 0; j < bonds; j++) {
      // Mouth: the outers are free, the tube carries λP.
      mouth.onRate[(u + j) * n + u + j] = 1;
      mouth.onLambda[u + j] = (-channel.levers[j]! * channel.load) / channel.tube.stiffness;
      mouth.constant[u + j] = -thermalMismatch(channel, j);
    }
    // Root: the tube is free and the outers together carry λP.
    const weights = channel.outers.map((outer, j) => outer.stiffness / channel.levers[j]!);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    for (let j = 0; j < bonds; j++) {
      root.onRate[u * n + u + j] = weights[j]! / total;
      root.constant[u]! -= (weights[j]! / total) * thermalMismatch(channel, j);
    }
    root.onLambda[u] = channel.load / total;
    if (bonds === 2) {
      // Spigot and socket are one piece behind the root.
      root.onSlip[(u + 1) * n + u] = omega / channel.levers[0]!;
      root.onSlip[(u + 1) * n + u + 1] = -omega / channel.levers[1]!;
    }
  });
  return { root, mouth };
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
  const cell = new Cell(problem, yieldScale);
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
      cell.compute(slips, i * n, nodes[i + 1]! - nodes[i]!, regimes[i]!);
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
    if (largest * damping < 1e-9 * most && norm < 1e-7 * most) return finish();
    if (norm < TOLERANCE * most) return finish();
  }
  return norm < 1e-8 * size() ? finish() : null;
}

/** Forces of the outers from the slip rates: a(N_t/K_t − N/K) + Δε = e, N_t = λP − ΣN. */
function outerForces(
  problem: LapProblem,
  q: number,
  lambda: number,
  rates: Float64Array,
  node: number,
  values: Float64Array,
): void {
  const channel = problem.channels[q]!;
  const bonds = problem.bonds.length;
  const n = problem.channels.length * bonds;
  const m = 2 * n + 1;
  const flexTube = 1 / channel.tube.stiffness;
  // N_j = K_j·(N_t/K_t − r_j) with r_j = (e_j − Δε_j)/a_j; summed over j this gives N_t.
  let stiffness = 0;
  let drawn = 0;
  const strain = channel.outers.map((outer, j) => {
    const r = (rates[node * n + q * bonds + j]! - thermalMismatch(channel, j)) / channel.levers[j]!;
    stiffness += outer.stiffness;
    drawn += outer.stiffness * r;
    return r;
  });
  const tubeForce = (lambda * channel.load + drawn) / (1 + stiffness * flexTube);
  channel.outers.forEach((outer, j) => {
    values[node * m + 2 * (q * bonds + j) + 1] =
      outer.stiffness * (tubeForce * flexTube - strain[j]!);
  });
}
