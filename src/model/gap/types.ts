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

/** A length and its standard uncertainty (k = 1), mm. */
export interface Spread {
  readonly value: number;
  readonly standard: number;
}

export interface PlacedSpread extends Spread {
  /** From the mouth, mm. */
  readonly x: number;
  /** From the mark, radians, in [0, 2π). */
  readonly theta: number;
}

export interface Span {
  readonly min: PlacedSpread;
  readonly mean: Spread;
  readonly max: PlacedSpread;
}

export interface MeasuredGap {
  /** Both parts on one axis. */
  readonly centred: Span;
  /** The worst that the holding leaves, each section by itself: the tube can shift and tilt. */
  readonly held: Span;
  /** Where the held gap is largest: how far the tube stands off, toward which side. */
  readonly offset: { readonly value: number; readonly theta: number };
  readonly stoppedBy: 'jig' | 'spacer' | 'touch';
  /** Of the bond, mm³. */
  readonly volume: number;
  readonly map: {
    readonly x: readonly number[];
    readonly theta: readonly number[];
    readonly centred: readonly (readonly number[])[];
    /** Toward `offset.theta`. */
    readonly held: readonly (readonly number[])[];
  };
}

export interface SurfaceSummary {
  readonly mean: Spread;
  /** Largest less smallest diameter at one station, mm. */
  readonly ovality: number;
  /** By the straight line through the stations' means: at the mouth less at the root, mm. */
  readonly taper: number;
}

/** What the verdict is made of; lengths in mm. */
export interface VerdictInput {
  readonly bonds: readonly {
    readonly gap: Pick<MeasuredGap, 'centred' | 'held'>;
    /** Null where nothing bounds it. */
    readonly from: number | null;
    readonly to: number | null;
    /** 95 % intervals by Monte Carlo of the room, the thin side and the thick side; they can be wider than ± U. */
    readonly sampled?: {
      readonly room: Interval;
      readonly min: Interval;
      readonly max: Interval;
    };
  }[];
  readonly holding: Holding;
  /** Coverage factor of the uncertainties. */
  readonly coverage: number;
  readonly target: number;
  /** Lowest margin at the gap as measured, and at the ends of its uncertainty; null when not computed. */
  readonly measured: number | null;
  readonly guarded: number | null;
  /** Readings that look wrong and are not confirmed. */
  readonly doubts: number;
  /** True where the readings leave an oval or an end of the joint unseen. */
  readonly unseen: boolean;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface Finding {
  readonly code:
    | 'inside'
    | 'reading'
    | 'does-not-fit'
    | 'below-spacer'
    | 'below-range'
    | 'above-range'
    | 'margin'
    | 'uncertain'
    | 'not-held'
    | 'unseen'
    | 'no-range';
  readonly state: 'accept' | 'hold' | 'reject';
  /** Place in `bonds`; null when it is about the joint. */
  readonly bond: number | null;
  /** What was compared, its uncertainty as expanded, and with what; null where nothing was. */
  readonly value: number | null;
  readonly uncertainty: number | null;
  readonly limit: number | null;
  /** Of `uncertain`: which limit cannot be told from. */
  readonly against: 'spacer' | 'from' | 'to' | 'margin' | null;
}
