/**
 * Measured parts as the model takes them: mm, radians; stations count from the mouth of the sleeve.
 */

/** Diameters of one surface over a full grid of stations and clockings. */
export interface MeasuredSurface {
  /** Rising. */
  readonly stations: readonly number[];
  /** Rising, in [0, π): a diameter is the same half a turn on. */
  readonly clockings: readonly number[];
  /** One row for each station, one value for each clocking. */
  readonly diameters: readonly (readonly number[])[];
  /** Half of the width of a uniform error that all its readings share. */
  readonly error: number;
  /** Standard deviation of each reading by itself. */
  readonly repeatability: number;
}

export interface MeasuredBond {
  /** Outside diameters of the part inside. */
  readonly inside: MeasuredSurface;
  /** Inside diameters of the part outside. */
  readonly outside: MeasuredSurface;
  /** True where the tube is the part inside: moved to a side, it thins the gap there. */
  readonly tubeInside: boolean;
}

/** What keeps the tube from touching the sleeve; both at once act together. */
export interface Holding {
  /** Least gap anywhere, mm; 0 without spacers. */
  readonly spacer: number;
  /** Most that the tube's axis can stand off the sleeve's, mm; Infinity without a jig. */
  readonly offset: number;
}

export interface MeasuredJoint {
  readonly overlap: number;
  /** One, or the inner and the outer one of a double lap, whose sleeve is one piece. */
  readonly bonds: readonly MeasuredBond[];
  readonly holding: Holding;
}
