/** Answers about variants of a joint side by side. N, mm, MPa; masses in grams. */
import type { Joint } from './project.ts';
import type { RequestError } from './reply.ts';
import type { Flag, Margin, StressReport } from './reports.ts';
import type { MassReport, PrintReport, SpringState } from './reports-springs.ts';
import type { Said } from './said.ts';

export type Equal = 'overlap' | 'mass' | 'margin';

export interface VariantReport {
  /** Id of the joint that it varies. */
  readonly of: string;
  readonly joint: Joint;
  /** What was changed, in words, one entry for each thing. */
  readonly changed: readonly Said[];
  /** What both were made equal in; null at equal overlap. Grams, or the lowest margin. */
  readonly equal: {
    readonly what: 'mass' | 'margin';
    readonly of: number;
    readonly variant: number;
  } | null;
}

/** What one bond carries and bears, in the case that is drawn. */
export interface BondShare {
  readonly part: string;
  /** Axial force at this clocking's line load, N. */
  readonly force: number;
  /** Of the load of all bonds. */
  readonly share: number;
  /** Bonded area, mm². */
  readonly area: number;
  readonly peakShear: number;
  readonly peakPeel: number;
  /** Largest shear strain of the adhesive. */
  readonly strain: number;
}

/** What the bond carries in the case, as a factor on its loads. */
export interface Carried {
  /** In shear: adhesive ultimate strain. */
  readonly shear: number;
  /** The first failure of bond or plies, shear among them. */
  readonly first: { readonly factor: number; readonly label: string };
}

export interface CompareColumn {
  readonly id: string;
  readonly kind: 'joint' | 'variant';
  readonly name: string;
  readonly description: string;
  readonly overlap: number;
  /** Why it could not be computed; all that follows is then empty or null. */
  readonly refused: RequestError | null;
  /** Lowest first, as for the joint by itself. */
  readonly margins: readonly Margin[];
  readonly lowest: Margin | null;
  /** Of the common case, at the nominal gap and the common clocking. */
  readonly stress: StressReport | null;
  readonly bonds: readonly BondShare[];
  readonly carried: Carried | null;
  readonly mass: MassReport | null;
  readonly print: PrintReport | null;
  /** In the common case's surroundings, or at the first row of the adhesive where there is no case. */
  readonly stiffness: SpringState | null;
  readonly flags: readonly Flag[];
}

/** One input that is not the same in all columns. */
export interface Difference {
  /** `socket.atRoot`: the same field of all columns, whatever lap they have. */
  readonly field: string;
  /** In words. */
  readonly label: string;
  /** Empty where the values are texts or pure numbers. */
  readonly unit: string;
  /** One for each column; null where a joint has no such field. */
  readonly values: readonly (string | number | null)[];
}

export interface CompareReport {
  /** The load case that stress, strength and stiffness are compared in; null when the columns share none. */
  readonly caseId: string | null;
  readonly caseName: string;
  readonly columns: readonly CompareColumn[];
  readonly differences: readonly Difference[];
  /** How each further column carries beside the first, with the reasons in figures. */
  readonly sentences: readonly Said[];
}
