/** What the handlers answer: plain data, N, mm, MPa, °C, degrees for clocking. */
import type { Project } from './project.ts';
import type { RequestError } from './reply.ts';
import type { FileOnDisk } from './reports-files.ts';
import type { StressReport } from './reports-stress.ts';
import type { Said, SaidFigure } from './said.ts';

export * from './reports-corners.ts';
export type { JobFound, JobProgress, JobStopped } from './reports-job.ts';
export type * from './reports-laminate.ts';
export type * from './reports-sizing.ts';
export type * from './reports-stress.ts';
export type * from './reports-working.ts';

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
export interface Flag extends Said {
  readonly code: string;
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
  /** Those in it, for whoever reads in other units. */
  readonly restsOnFigures?: readonly SaidFigure[];
  /** One short sentence that adds to the figure, such as the trough's length; empty when none. */
  readonly remark: string;
  /** The lengths of that remark, mm, where it is of the trough: for whoever reads in other units. */
  readonly trough?: TroughLengths;
  /** Domains of the method that this figure leaves; empty when it leaves none. */
  readonly flags: readonly Flag[];
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
  /** Version of Node that the core runs on. */
  readonly node: string;
  /** Null where the core does not run in Electron. */
  readonly electron: { readonly version: string; readonly chromium: string } | null;
}
