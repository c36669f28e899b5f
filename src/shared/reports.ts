/** What the handlers answer: plain data, N, mm, MPa, °C, degrees for clocking. */
import type { Project } from './project.ts';
import type { RequestError } from './reply.ts';
import type { FileOnDisk } from './reports-files.ts';

export * from './reports-corners.ts';
export type { JobProgress, JobStopped } from './reports-job.ts';
export type * from './reports-sizing.ts';

/**
 * `min`, `max`: tolerance and offset together, all the way round. `thin-side`, `thick-side`: the offset
 * alone, where tube and sleeve are nearest and farthest; in a double lap those of the outer bond.
 */
export type GapState = 'min' | 'nominal' | 'max' | 'thin-side' | 'thick-side';
export type MarginState = 'fails' | 'low' | 'holds';
/** `within` is a place inside the overlap, away from both ends. */
export type Place = 'root' | 'mouth' | 'within';

export type Mode =
  | 'adhesive-yield'
  | 'adhesive-strain'
  /** Peel alone; both failure modes of peel are taken with the shear capped at yield. */
  | 'adhesive-peel'
  /** First yield under peel and shear together. */
  | 'peel-shear'
  /** Between the plies next to a bond. */
  | 'interlaminar'
  /** First ply, at the mouth or at the end of the tube. */
  | 'first-ply'
  | 'fracture'
  | 'durability-trough'
  | 'cyclic-shear'
  /** Of all cyclic cases together, their damage added up. */
  | 'cyclic-damage'
  | 'metal-yield'
  | 'metal-ultimate'
  | 'laminate-strength';

/** Something the reader must know about a figure: outside a method's domain, nearest value used, … */
export interface Flag {
  readonly code: string;
  readonly message: string;
}

/** Of the bond at the load asked, mm. */
export interface TroughLengths {
  readonly elastic: number;
  /** Below a tenth of yield. */
  readonly rest: number;
}

export interface Margin {
  readonly mode: Mode;
  /** In plain words, such as `adhesive, ultimate strain`, `tube, laminate strength`. */
  readonly label: string;
  /** (reached / asked) − 1. */
  readonly margin: number;
  readonly state: MarginState;
  /** Factor on the case's loads at which the mode is reached. */
  readonly reached: number;
  /** Factor on the case's loads that is asked for. */
  readonly asked: number;
  readonly caseId: string;
  readonly caseName: string;
  /** Condition of the project that the case is judged in; null in its own surroundings. */
  readonly conditionId: string | null;
  readonly conditionName: string | null;
  readonly gapState: GapState;
  readonly place: Place;
  /** Distance from the root, mm. */
  readonly x: number;
  /** Clocking from the plane of bending, degrees. */
  readonly theta: number;
  /** Bond or adherend it happens in, such as `inner bond` or `tube`. */
  readonly part: string;
  /** True when a property from `typical` or `memory` stands behind it. */
  readonly typical: boolean;
  /** What the strength of the bond rests on, such as `B-basis, 18 coupons, 60 °C wet`; empty for a wall. */
  readonly restsOn: string;
  /** One short sentence that adds to the figure, such as the trough's length; empty when none. */
  readonly remark: string;
  /** The lengths of that remark, mm, where it is of the trough: for whoever reads in other units. */
  readonly trough?: TroughLengths;
  /** Domains of the method that this figure leaves; empty when it leaves none. */
  readonly flags: readonly Flag[];
}

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

export interface CardValue {
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  /** Empty for a pure number. */
  readonly unit: string;
}

/** One equation with the values that went into a figure. */
export interface Card {
  readonly id: string;
  readonly title: string;
  /** What it says, in a sentence or two. */
  readonly statement: string;
  /** In the symbols of `values`; plain arithmetic that any reader can repeat. */
  readonly formula: string;
  /** The same with the values put in. */
  readonly filled: string;
  readonly values: readonly CardValue[];
  readonly result: CardValue;
  readonly source: string;
  readonly domain: readonly { readonly text: string; readonly inside: boolean }[];
}

/** How one figure came about: cards in the order of the calculation, the figure's own last. */
export interface Working {
  readonly jointId: string;
  readonly title: string;
  /** Case, gap and place that it holds for, in words. */
  readonly where: string;
  readonly margin: Margin | null;
  readonly cards: readonly Card[];
}

/** Rows 1, 2, 6 of a symmetric 3 × 3. */
export type Rows3 = readonly (readonly number[])[];

export interface LaminatePlane {
  readonly axialModulus: number;
  readonly hoopModulus: number;
  readonly shearModulus: number;
  readonly poisson: number;
  readonly axialExpansion: number;
  readonly hoopExpansion: number;
}

export interface LaminateReport {
  readonly adherendId: string;
  /** As written, in its shortest usual form. */
  readonly stack: string;
  readonly plies: readonly { readonly angle: number; readonly thickness: number }[];
  /** Thickness of the plies as they come, and of the wall that they were scaled to. */
  readonly plyThickness: number;
  readonly wall: number;
  readonly symmetric: boolean;
  readonly balanced: boolean;
  /** One sentence for each thing to know: not symmetric, not balanced, scaled to the wall. */
  readonly notes: readonly string[];
  readonly a: Rows3;
  readonly b: Rows3;
  readonly d: Rows3;
  /** From A: where B ≠ 0 they hold the curvature suppressed. */
  readonly plane: LaminatePlane;
  /** B ≠ 0. */
  readonly curvatureHeld: boolean;
  /** Constants of the wall free to bend and twist, those that differ from `plane` by more than 1 %. */
  readonly free: Partial<LaminatePlane>;
  readonly bending: { readonly axialModulus: number; readonly hoopModulus: number };
  readonly through: {
    readonly modulus: number;
    readonly shearModulus: number;
    readonly expansion: number;
    readonly interlaminarTension: number;
    readonly interlaminarShear: number;
  };
}

export interface JointSummary {
  readonly jointId: string;
  readonly name: string;
  /** `single lap, tube in socket` and so on. */
  readonly description: string;
  readonly overlap: number;
  /** Null when the joint has no load case. */
  readonly lowest: Margin | null;
  /** Why the joint could not be computed; null when it could. */
  readonly refused: RequestError | null;
  readonly flags: readonly Flag[];
}

export interface CheckReport {
  readonly project: string;
  readonly targetMargin: number;
  readonly joints: readonly JointSummary[];
  readonly counts: Readonly<Record<MarginState, number>>;
  readonly modelVersion: string;
}

export interface JointReport {
  readonly jointId: string;
  readonly description: string;
  readonly targetMargin: number;
  /** Lowest first; one row for each mode and part, the worst over every case and gap. */
  readonly margins: readonly Margin[];
  /** The state that is drawn: as asked for, else that of the lowest adhesive margin. */
  readonly stress: StressReport | null;
  readonly flags: readonly Flag[];
  readonly modelVersion: string;
}

export interface SweepPoint {
  readonly overlap: number;
  /** Bond strength over the load asked for: 1 is margin 0. Worst over cases and gaps. */
  readonly bond: number;
  /** The same for the lowest of all strength modes (the durability trough is left out: it is a length rule). */
  readonly all: number;
  /** Label of the mode that sets `all`. */
  readonly mode: string;
}

export interface SweepReport {
  readonly jointId: string;
  readonly points: readonly SweepPoint[];
  /** Overlap past which the bond gains under 2 % however long it is made; null when beyond the sweep. */
  readonly plateau: number | null;
  /** Ratio on the plateau: bond strength of a very long overlap over the load asked for. */
  readonly plateauStrength: number;
  /** The case that sets it, with the condition that it is judged in. */
  readonly caseName: string;
  readonly flags: readonly Flag[];
}

export interface Opened {
  readonly document: Project;
  /** File name it came from; `Curlew (demonstration)` for the demo. */
  readonly origin: string;
  /** Where it stands on disk, if this program may save it there. */
  readonly file?: FileOnDisk;
  /** Version of the project file, where that is an older one. */
  readonly olderVersion?: number;
}

export interface About {
  readonly version: string;
  readonly modelVersion: string;
  readonly carrier: 'electron' | 'loopback' | 'terminal';
}
