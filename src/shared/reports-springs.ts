/** Answers about a joint as springs, and about what it weighs. N, mm, radians; masses in grams, volumes in mm³. */
import type { Moisture } from './project.ts';
import type { Flag } from './reports.ts';

export type SpringKind = 'axial' | 'bending' | 'torsion';

export interface Spring {
  readonly kind: SpringKind;
  /** Where the frame's tube ends at the mouth; N/mm, or N·mm per radian. */
  readonly stiffness: number;
  /** EA, EI or GJ of the bare tube; N, or N·mm². */
  readonly tube: number;
  /** In series at the root, where the frame's tube runs on to it; null where no spring can be. */
  readonly atRoot: number | null;
  /** Length of bare tube past the mouth that gives as much, mm. */
  readonly tubeLength: number;
}

/** The springs at one temperature and moisture. */
export interface SpringState {
  readonly temperature: number;
  readonly moisture: Moisture;
  /** Load cases and conditions that are at it; empty where it is a row of the adhesive's table. */
  readonly names: readonly string[];
  readonly springs: readonly Spring[];
  /** Across the tube: walls side by side, N/mm. */
  readonly shear: number;
}

export interface PartMass {
  readonly part: string;
  readonly volume: number;
  /** Null where the density is not given. */
  readonly mass: number | null;
}

export interface MassReport {
  readonly tube: PartMass;
  readonly walls: readonly PartMass[];
  readonly bonds: readonly PartMass[];
  readonly adhesiveVolume: number;
  /** What the joint adds to the bare tube over the overlap: sleeve walls and adhesive. */
  readonly added: number | null;
  /** Materials without a density, by name. */
  readonly without: readonly string[];
}

export interface PrintReport {
  readonly layerThickness: number;
  /** Overlap and base, mm. */
  readonly height: number;
  readonly layers: number;
}

export interface SpringsReport {
  readonly jointId: string;
  readonly name: string;
  readonly description: string;
  readonly flat: boolean;
  readonly overlap: number;
  readonly states: readonly SpringState[];
  readonly mass: MassReport;
  readonly print: PrintReport;
  /** True when a property from `typical` or `memory` stands behind the figures. */
  readonly typical: boolean;
  readonly flags: readonly Flag[];
}
