/**
 * Nodes along the overlap: fine at the breakpoints (ends and yield fronts), where the shear decays
 * over 1/ω, and growing with the distance from the nearest one.
 */
export interface Grading {
  /** First cell beside a breakpoint, mm. */
  readonly first: number;
  /** Growth of the cell per distance from the breakpoint. */
  readonly growth: number;
  /** Largest cell, mm. */
  readonly largest: number;
}

/** @param breakpoints rising, from 0 to L */
export function gradedMesh(breakpoints: readonly number[], grading: Grading): Float64Array {
  const nodes = [breakpoints[0]!];
  for (let i = 1; i < breakpoints.length; i++) {
    const from = breakpoints[i - 1]!;
    const to = breakpoints[i]!;
    const half = (to - from) / 2;
    const steps: number[] = [];
    let reached = 0;
    while (reached < half && steps.length < 400) {
      const cell = Math.min(grading.first + grading.growth * reached, grading.largest);
      steps.push(cell);
      reached += cell;
    }
    // At least two cells on each side, stretched so that both sides meet in the middle.
    if (steps.length < 2) steps.push(steps[0]!);
    const scale = half / steps.reduce((sum, step) => sum + step, 0);
    let x = from;
    for (const step of steps) {
      x += step * scale;
      nodes.push(x);
    }
    nodes[nodes.length - 1] = from + half;
    for (let k = steps.length - 1; k > 0; k--) {
      x = nodes[nodes.length - 1]! + steps[k]! * scale;
      nodes.push(x);
    }
    nodes.push(to);
  }
  return Float64Array.from(nodes);
}
