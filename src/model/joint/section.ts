/** Cross-section of a wall: an annulus, or a strip of a flat joint. */
export interface Section {
  /** mm² */
  readonly area: number;
  /** Second moment about a diameter, mm⁴; 0 for a strip. */
  readonly secondMoment: number;
  /** Polar second moment, mm⁴; 0 for a strip. */
  readonly polarMoment: number;
  readonly outerRadius: number;
  readonly meanRadius: number;
  readonly thickness: number;
}

/** A = π(b² − a²), I = π(b⁴ − a⁴)/4, J = 2I, from inner radius a to outer radius b. */
export function annulus(inner: number, outer: number): Section {
  const area = Math.PI * (outer - inner) * (outer + inner);
  const secondMoment = (area * (outer * outer + inner * inner)) / 4;
  return {
    area,
    secondMoment,
    polarMoment: 2 * secondMoment,
    outerRadius: outer,
    meanRadius: (inner + outer) / 2,
    thickness: outer - inner,
  };
}

export const strip = (width: number, thickness: number): Section => ({
  area: width * thickness,
  secondMoment: 0,
  polarMoment: 0,
  outerRadius: 0,
  meanRadius: 0,
  thickness,
});
