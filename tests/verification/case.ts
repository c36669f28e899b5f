/**
 * What the verification book is made of: cases with figures from outside the program, each with its
 * source, and the computation that must meet it. The tests and the book read the same cases.
 */
import type { Tolerance } from '../support/close.ts';

/** Where an expected figure comes from. */
export const tags = {
  published: { name: 'published', meaning: "the source's own text was read" },
  abstract: { name: 'published, abstract', meaning: 'only the abstract was read' },
  'second-hand': {
    name: 'published, second-hand',
    meaning: 'quoted, with its citation, in another public document',
  },
  memory: {
    name: 'from memory',
    meaning: 'formula or figure as remembered; the source was not seen',
  },
  independent: {
    name: 'own independent solution',
    meaning: 'other equations or another method, in other code',
  },
  'finite elements': {
    name: 'own finite elements',
    meaning: 'the joint as a continuum, not as beams or shells',
  },
} as const;
export type Tag = keyof typeof tags;

/** One figure. */
export interface ValueCheck {
  readonly kind: 'value';
  readonly name: string;
  /** Empty for a plain number. */
  readonly unit: string;
  readonly expected: number;
  /** The figure as the source prints it, where it prints one. */
  readonly printed?: string;
  readonly computed: () => number;
  readonly tolerance: Tolerance;
  /** Why the tolerance is what it is. */
  readonly why: string;
  /** Where this figure's provenance is not that of the case. */
  readonly tag?: Tag;
}

export interface Comparison {
  /** Which one: the case of the fixture, the place. */
  readonly what: string;
  readonly expected: number;
  readonly computed: number;
  /** What the difference is taken of; the expected value when left out. */
  readonly scale?: number;
}

/** Many figures of one kind, of which the book shows the worst. */
export interface GroupCheck {
  readonly kind: 'group';
  readonly name: string;
  readonly compare: () => readonly Comparison[];
  /** Largest difference allowed, as a share of the scale. */
  readonly tolerance: number;
  /** What the scale is, in words: "of the value". */
  readonly scale: string;
  readonly why: string;
}

/** Words, counts and places that must be the same. */
export interface SameCheck {
  readonly kind: 'same';
  readonly name: string;
  readonly compare: () => readonly {
    readonly what: string;
    readonly expected: string;
    readonly computed: string;
  }[];
}

export type Check = ValueCheck | GroupCheck | SameCheck;

interface Common {
  /** Unique in the book; the name of the plot's file where there is one. */
  readonly id: string;
  readonly title: string;
  /** The full citation. */
  readonly source: string;
  readonly tag: Tag;
  /** Readable lines: what was put in. */
  readonly inputs: readonly string[];
  readonly remarks?: readonly string[];
}

export interface Case extends Common {
  readonly checks: readonly Check[];
}

/** Stress along the bond: blue for shear, orange for peel. */
export interface Series {
  readonly name: string;
  readonly stress: 'shear' | 'peel';
  /** Dashed for a second theory beside the first, of the same stress. */
  readonly line?: 'solid' | 'dashed';
  /** At the panel's stations; the same list for two theories of one stress. */
  readonly expected: readonly number[];
  /** The computed curve, made once and asked at any x. */
  readonly computed: () => (x: number) => number;
}

export interface Panel {
  readonly title: string;
  /** Stations, mm. */
  readonly x: readonly number[];
  readonly series: readonly Series[];
  /** Stations that the table shows; all when left out. The plot and the checks take all. */
  readonly tabled?: (x: number) => boolean;
}

/** A stretch of the bond with a tolerance of its own; first the one that fits counts. */
export interface Zone {
  readonly name: string;
  readonly contains: (x: number) => boolean;
  /** Only for this stress; for both when left out. */
  readonly stress?: Series['stress'];
  /** Only for the series of this name. */
  readonly series?: string;
  /** Share of the expected value at the place, of the series' largest, or of its largest in this stretch. */
  readonly of: 'value' | 'peak' | 'stretch';
  /** Infinity where differences are stated and not held. */
  readonly tolerance: number;
  readonly why: string;
}

export interface CurveCase extends Common {
  /** The plot runs from 0 to here, mm. */
  readonly length: number;
  readonly panels: readonly Panel[];
  readonly zones: readonly Zone[];
  /** Figures beside the curves. */
  readonly checks?: readonly Check[];
}

export interface Topic {
  readonly title: string;
  readonly intro: string;
  readonly cases: readonly (Case | CurveCase)[];
}

export const isCurve = (one: Case | CurveCase): one is CurveCase => 'panels' in one;

/** Half a unit of the last printed digit: `40.6` gives 0.05. */
export function halfLastDigit(printed: string): number {
  const [, fraction = ''] = printed.replace(/e.*$/i, '').split('.');
  const exponent = Number(/e([-+]?\d+)$/i.exec(printed)?.[1] ?? 0);
  return Number(`5e${exponent - fraction.length - 1}`);
}

type Rest<T extends Check> = Omit<T, 'kind'>;

export const value = (check: Rest<ValueCheck>): ValueCheck => ({ kind: 'value', ...check });
export const group = (check: Rest<GroupCheck>): GroupCheck => ({ kind: 'group', ...check });
export const same = (check: Rest<SameCheck>): SameCheck => ({ kind: 'same', ...check });

/** A figure that must come out correct to the last digit that the source prints. */
export const printed = (
  name: string,
  unit: string,
  text: string,
  computed: () => number,
  tag?: Tag,
): ValueCheck => ({
  kind: 'value',
  name,
  unit,
  expected: Number(text),
  printed: text,
  computed,
  tolerance: { absolute: halfLastDigit(text) },
  why: 'half of the last printed digit',
  ...(tag && { tag }),
});

/** Computed when first asked for, and once. */
export function lazy<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
