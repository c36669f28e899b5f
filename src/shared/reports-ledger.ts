/** The ledger of allowables: what strength a margin uses, where, at which gap, and what it rests on. */

import type { Source } from './project-fields.ts';
import type { Adhesive, Allowable, Moisture } from './project-materials.ts';
import type { RequestError } from './reply.ts';
import type { BasisKind } from './reports-coupons.ts';
import type { SaidFigure } from './said.ts';

/** A basis value of own coupons or their mean, or the kind of the adhesive's own figures: those are no allowables, nor is a mean. */
export type StrengthBasis = BasisKind | 'mean' | Source['kind'];

/** MPa; the strain is a pure number. */
export interface LedgerStrength {
  readonly shearYield: number;
  /** Shear strain from yield to failure. */
  readonly plasticStrain: number;
  /** Null where the adhesive does not say: peel is not checked there. */
  readonly peelStrength: number | null;
}

/** What is left of the strength, step by step. */
export interface LedgerFactors {
  readonly environment: number;
  readonly ageing: number;
  /** Of the knockdown for scatter, or of the allowable that stands in its place. */
  readonly scatter: number;
  readonly gap: number;
  /** Their product. */
  readonly left: number;
}

/** An allowable behind a strength, and how its coupons stand today. */
export interface LedgerAllowable {
  readonly taken: Allowable;
  /** Day of the test, where the set is there and says it. */
  readonly tested: string | null;
  /**
   * `changed`: the results that count, or where they were tested, are not those it was taken from. What
   * else has changed since, as the properties that the coupons are predicted with, is not looked at.
   */
  readonly set: 'as-taken' | 'changed' | 'gone';
}

/** Coupons with results in this environment that no allowable was taken from. */
export interface LedgerOffer {
  readonly setId: string;
  readonly name: string;
  readonly gap: number;
  readonly tested: string | null;
  readonly results: number;
  /** Those that count: neither off a surface, nor of a broken adherend, nor kept apart. */
  readonly counted: number;
  /** Why no allowable can come of it, where that shows without its statistics; empty otherwise. */
  readonly barred: string;
}

/** A joint that is judged in an environment, and the cases that bring it there. */
export interface LedgerUse {
  readonly jointId: string;
  readonly name: string;
  readonly cases: readonly {
    readonly caseId: string;
    readonly caseName: string;
    /** Condition that the case is judged in; null in its own surroundings. */
    readonly conditionId: string | null;
    readonly conditionName: string | null;
  }[];
}

export interface LedgerGap {
  /** mm; null where nothing names a gap: the strength does not hang on it then. */
  readonly gap: number | null;
  /** Whose gap it is: of bonds, of the table of strength against gap, of coupons. */
  readonly of: readonly ('joints' | 'table' | 'coupons')[];
  /** Null where the adhesive has no properties in this environment. */
  readonly factors: LedgerFactors | null;
  /** What margins use. */
  readonly strength: LedgerStrength | null;
  /** True beyond the table of strength against gap: its nearest row is used. */
  readonly outsideTable: boolean;
  /** True where a strength of own coupons is used at another gap than theirs, where none that count were tested. */
  readonly otherGap: boolean;
  /** Ids of the joints that have a bond of this gap in this environment, in one gap state or more. */
  readonly joints: readonly string[];
}

export interface LedgerEnvironment {
  readonly temperature: number;
  readonly moisture: Moisture;
  /** Load cases and conditions of the project there, whether a joint of this adhesive meets them or not. */
  readonly names: readonly string[];
  /** The adhesive's rows before knockdowns; null where it has none of this moisture. */
  readonly table: LedgerStrength | null;
  /** Why there is no strength; empty where there is one. */
  readonly why: string;
  /** How the rows give it: `at` one of them, `between` two, or `beyond` them all, from the nearest. */
  readonly rows: 'at' | 'between' | 'beyond' | 'none';
  /** Temperatures of those rows, °C. */
  readonly rowsAt: readonly number[];
  /** Null where there is no strength. */
  readonly basis: StrengthBasis | null;
  /** As the margins say it; empty where there is no strength. */
  readonly restsOn: string;
  /** Those in it. */
  readonly restsOnFigures?: readonly SaidFigure[];
  /** Where that is from: the set of coupons, or the text of the adhesive's source. */
  readonly source: string;
  /** What stands in place of the knockdown for scatter, the lower of two first; none where that counts. */
  readonly allowables: readonly LedgerAllowable[];
  /** False where its allowables were tested at another temperature. */
  readonly testedHere: boolean;
  readonly offers: readonly LedgerOffer[];
  readonly uses: readonly LedgerUse[];
  /** The thinnest first. */
  readonly gaps: readonly LedgerGap[];
}

/** All that is known of one adhesive's strengths. */
export interface AdhesiveLedger {
  readonly id: string;
  readonly name: string;
  /** Of its rows of temperature and moisture. */
  readonly source: Source;
  readonly knockdowns: Adhesive['knockdowns'] | null;
  readonly fracture: Adhesive['fracture'] | null;
  readonly fatigue: Adhesive['fatigue'] | null;
  /** Joints bonded with it. */
  readonly joints: number;
  readonly environments: readonly LedgerEnvironment[];
  /** Lines of environment and gap that no joint uses and that are left out, there being too many. */
  readonly leftOut: number;
}

export interface LedgerReport {
  readonly project: string;
  readonly adhesives: readonly AdhesiveLedger[];
  /** Joints that cannot be computed: no margin uses anything for them. */
  readonly refused: readonly {
    readonly jointId: string;
    readonly name: string;
    readonly error: RequestError;
  }[];
  readonly modelVersion: string;
}
