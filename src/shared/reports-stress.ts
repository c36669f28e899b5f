/** Stress along the bonds of one state of a joint, around it, and in the walls beside it. */
import type { Flag, GapState } from './reports.ts';

/** Shear and peel of a bond by the layered-shell model. */
export interface LayeredStress {
  /** Elastic, along the axis, tension positive. */
  readonly shear: readonly number[];
  /** Elastic, opening positive. */
  readonly peel: readonly number[];
  /** The same with the shear capped at yield; null where nothing yields or no capped state exists. */
  readonly capped: { readonly shear: readonly number[]; readonly peel: readonly number[] } | null;
  /** Largest opening stress of the curve that counts: the capped one where there is one. */
  readonly peak: { readonly x: number; readonly value: number };
  /** Stress across the bond that it may reach, knockdowns taken off; null when not known. */
  readonly strength: number | null;
}

export interface BondStress {
  /** `bond`, or `inner bond` and `outer bond` (`lower`/`upper` when flat). */
  readonly part: string;
  readonly gap: number;
  /** Radius of the middle of the bond; 0 for a flat joint. */
  readonly radius: number;
  /** Shear along the axis, tension positive, at each x. */
  readonly axialShear: readonly number[];
  /** Shear around the axis at each x. */
  readonly hoopShear: readonly number[];
  /** √(axial² + hoop²), carrying the sign of the axial shear where there is no hoop shear. */
  readonly shear: readonly number[];
  readonly shearYield: number;
  readonly peak: { readonly x: number; readonly value: number };
  /** Stretches of the overlap where the adhesive has yielded. */
  readonly plastic: readonly { readonly from: number; readonly to: number }[];
  /** Largest adhesive shear strain and the strain it may reach. */
  readonly strain: number;
  readonly strainAllowed: number;
  /** Axial force that this bond carries at this clocking's line load, N. */
  readonly force: number;
  readonly layered: LayeredStress;
}

/** Elastic shear and peel of one bond over the overlap and around it. */
export interface BondMap {
  readonly part: string;
  /** One row for each clocking, one value for each x; the resultant of axial and hoop shear. */
  readonly shear: readonly (readonly number[])[];
  readonly peel: readonly (readonly number[])[];
}

export interface StressMap {
  readonly x: readonly number[];
  /** Degrees from the plane of bending. */
  readonly theta: readonly number[];
  readonly bonds: readonly BondMap[];
}

/** Factors k of the edge moment k·P·e/2 of a flat single lap, by both methods, at each end. */
export interface EdgeMomentReport {
  readonly chosen: 'goland-reissner' | 'hart-smith';
  readonly golandReissner: { readonly root: number; readonly mouth: number };
  readonly hartSmith: { readonly root: number; readonly mouth: number };
}

export interface LedgerRow {
  readonly name: 'environment' | 'gap' | 'ageing' | 'scatter' | 'fitting';
  /** What is left of the strength; for the fitting factor, its inverse. */
  readonly factor: number;
}

/** The knockdowns of one bond at the gap drawn, and what they leave. */
export interface Ledger {
  readonly part: string;
  readonly gap: number;
  readonly rows: readonly LedgerRow[];
  /** What is left of the strength before the fitting factor: K of the working cards. */
  readonly strength: number;
  /** After it. */
  readonly left: number;
}

export interface AdherendStress {
  readonly part: string;
  /** Axial force carried at each x for this clocking's line load, N. */
  readonly force: readonly number[];
  readonly stressAtRoot: number;
  readonly stressAtMouth: number;
}

export interface StressReport {
  readonly jointId: string;
  readonly caseId: string;
  /** Null in the case's own surroundings. */
  readonly conditionId: string | null;
  readonly conditionName: string | null;
  readonly gapState: GapState;
  /** Gap states that differ for this joint, as a list of them is read. */
  readonly gapStates: readonly GapState[];
  readonly temperature: number;
  readonly moisture: 'dry' | 'wet';
  readonly theta: number;
  /** The loads of the case are multiplied by this. */
  readonly loadFactor: number;
  /** False when the bond cannot carry loadFactor: the curves then show the most it carries. */
  readonly carried: boolean;
  /** Largest load factor that the bond carries, by adhesive ultimate strain. */
  readonly capacity: number;
  readonly x: readonly number[];
  readonly bonds: readonly BondStress[];
  readonly adherends: readonly AdherendStress[];
  readonly trough: {
    /** Lowest |shear| along the bond over the yield shear. */
    readonly ratio: number;
    /** Length of the elastic trough between the plastic zones, mm. */
    readonly elasticLength: number;
    /** Length over which |shear| is at or below a tenth of yield, mm. */
    readonly restLength: number;
  };
  readonly ledgers: readonly Ledger[];
  /** Flat single laps only. */
  readonly edgeMoment: EdgeMomentReport | null;
  /** Only where it was asked for. */
  readonly map: StressMap | null;
  readonly flags: readonly Flag[];
}
