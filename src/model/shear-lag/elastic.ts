/** What an elastic solution of one channel can be asked, by load and by temperature apart. */
export interface Part {
  /** Shear stress in bond j at x, MPa. */
  shear(j: number, x: number): number;
  /** Force in outer adherend j at x, N. */
  outerForce(j: number, x: number): number;
  /** Stretch of outer adherend j by its force, from the root to the mouth, mm. */
  outerStretch(j: number): number;
}

export interface ElasticSolution {
  /** By the channel's load alone. */
  readonly mechanical: Part;
  /** By temperature alone. */
  readonly thermal: Part;
  /** Largest and smallest decay rate, 1/mm. */
  readonly omegaMax: number;
  readonly omegaMin: number;
}

/** Sum of both parts, the mechanical one times `factor`. */
export function combine(solution: ElasticSolution, factor: number): Part {
  const { mechanical, thermal } = solution;
  return {
    shear: (j, x) => factor * mechanical.shear(j, x) + thermal.shear(j, x),
    outerForce: (j, x) => factor * mechanical.outerForce(j, x) + thermal.outerForce(j, x),
    outerStretch: (j) => factor * mechanical.outerStretch(j) + thermal.outerStretch(j),
  };
}
