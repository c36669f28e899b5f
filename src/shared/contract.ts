/**
 * The contract, once. Every request that a page, a terminal or a test can make, with the schema of
 * what it sends. The Electron bridge, the loopback route and the command line all derive from it.
 */
import { z } from 'zod';
import { fileRequests } from './contract-files.ts';
import { type KeptSets, keptRowsSchema } from './kept-rows.ts';
import type { MenuCommand } from './menu-commands.ts';
import { gapCheckSchema, measuredSurfaceSchema } from './project-bench.ts';
import { id as setId } from './project-fields.ts';
import { quantities } from './quantities.ts';
import type { Reply } from './reply.ts';
import type {
  About,
  CheckReport,
  CornersReport,
  JobFound,
  JobProgress,
  JobStopped,
  JointReport,
  LaminateReport,
  Opened,
  SizesReport,
  SizingReport,
  StressReport,
  SweepReport,
  Working,
} from './reports.ts';
import type { CompareReport, VariantReport } from './reports-compare.ts';
import type { CouponsReport } from './reports-coupons.ts';
import type { FileAnswers } from './reports-files.ts';
import type { GapLimitsReport, GapReport, GapVerdict, Kept } from './reports-gap.ts';
import type { LedgerReport } from './reports-ledger.ts';
import {
  type InputTolerance,
  type MattersReport,
  type ScatterReport,
  scatterDefaults,
} from './reports-scatter.ts';
import type { JointSheet, SheetSaved } from './reports-sheet.ts';
import type { SpringsReport } from './reports-springs.ts';
import { varied } from './vary-joint.ts';

const jointId = z.string().max(64);
const caseId = z.string().max(64);
const gapState = z.enum(['min', 'nominal', 'max', 'thin-side', 'thick-side']);
/** Checked by `readProject`, not here: its errors name the place in the document. */
const document = z.unknown();

/** Which state of a joint to draw. What is left out is chosen: the governing one. */
const focus = z.strictObject({
  caseId: caseId.optional(),
  /** Condition that the case is judged in; null for its own surroundings. */
  conditionId: z.string().max(64).nullable().optional(),
  gapState: gapState.optional(),
  theta: z.number().min(-360).max(360).optional(),
  loadFactor: z.number().min(0).max(100).optional(),
  stations: z.int().min(2).max(2000).optional(),
  /** Also the stresses around the bond, at this many clockings. */
  map: z.int().min(4).max(360).optional(),
});

/** Figures other than margins that can show their working. */
export const figures = [
  'peak-shear',
  'peak-peel',
  'bond-strength',
  'plateau',
  'edge-moment',
] as const;

/** Surfaces as read so far; the plan of the joint is told by `src/shared/measuring-plan.ts`. */
const measured = z.array(measuredSurfaceSchema).max(4);

const job = z.string().min(1).max(64);
/** Input of a long request: an id that the caller chooses, by which to follow and to stop it. */
const long = <S extends z.core.$ZodShape>(shape: S) =>
  z.strictObject({ ...shape, job: job.optional() });

/** Answered within a frame or two, by the thread that is asked. */
const quickRequests = {
  'app.about': z.strictObject({}),
  /** Whether this user starts for the first time; asked once, it is not so any more. */
  'app.first-start': z.strictObject({}),
  'project.initial': z.strictObject({}),
  'project.demo': z.strictObject({}),
  'project.read': z.strictObject({ text: z.string(), origin: z.string().max(300) }),
  'project.schema': z.strictObject({}),
  'joint.stress': z.strictObject({ document, jointId, focus }),
  /** At the temperature and moisture of one load case, or of all that the joint carries. */
  'joint.springs': z.strictObject({ document, jointId, caseId: caseId.optional() }),
  /** How the inputs of the joint vary: of the project, of the joint, or typical. */
  'joint.tolerances': z.strictObject({ document, jointId }),
  /** The gap between measured parts: mistakes, gaps, uncertainty, adhesive; no margins. */
  'joint.gap': z.strictObject({ document, jointId, measured }),
  /** Keeps a check of measured parts outside the project file, as at each entry. */
  'bench.keep': z.strictObject({ project: z.string().max(120), check: gapCheckSchema }),
  /** What is kept of a project's checks. */
  'bench.kept': z.strictObject({ project: z.string().max(120) }),
  /** Puts a kept check away: it is offered no more. */
  'bench.drop': z.strictObject({ project: z.string().max(120), checkId: z.string().max(64) }),
  /** Keeps the rows of a set that no project file has yet, in the place of those kept before. */
  'rows.keep': z.strictObject({ project: z.string().max(120), setId, rows: keptRowsSchema }),
  /** What is kept of a project's sets. */
  'rows.kept': z.strictObject({ project: z.string().max(120) }),
  /** Puts the rows of a set away: they are offered no more. */
  'rows.drop': z.strictObject({ project: z.string().max(120), setId }),
  /** Saves the sheet that the window shows as a PDF, through the system's dialog: in the program's own window alone. */
  'sheet.pdf': z.strictObject({ name: z.string().min(1).max(120) }),
  'laminate.describe': z.strictObject({
    document,
    adherendId: z.string().max(64),
    /** Wall that the plies make, mm; their own thickness when left out. */
    wall: z.number().min(0.05).max(100).optional(),
    /** A strip has a lower and an upper face where a tube has an inside and an outside. */
    flat: z.boolean().optional(),
  }),
} as const;

/** About a long request on its way; answered at once, also while it waits. */
const jobRequests = {
  'job.progress': z.strictObject({ job }),
  /** What a check of the whole project has found so far, from the joint of this number on. */
  'job.found': z.strictObject({ job, from: z.number().int().min(0) }),
  'job.stop': z.strictObject({ job }),
} as const;

/** These run in a worker thread: they tell how far they are, and can be stopped. */
const longRequests = {
  /** Every margin of a joint, and the stresses of the state in focus. */
  'joint.analyse': long({ document, jointId, focus }),
  'project.check': long({ document }),
  /** With a joint: that one alone, and every corner of it. */
  'project.corners': long({ document, jointId: jointId.optional() }),
  'joint.explain': long({
    document,
    jointId,
    /** A mode of the margin list, or one of `figures`. */
    subject: z.string().max(40),
    /** Bond or wall, where the subject has several. */
    part: z.string().max(40).optional(),
    place: z.enum(['root', 'mouth', 'within']).optional(),
    focus,
  }),
  'joint.size': long({
    document,
    jointId,
    vary: z.enum(varied),
    /** The project's own when left out. */
    target: z.number().min(quantities.targetMargin.min).max(quantities.targetMargin.max).optional(),
    /** mm; the project's own when left out. */
    step: z.number().min(quantities.step.min).max(quantities.step.max).optional(),
    /** Between which values to look, mm; chosen by what varies when left out. */
    from: z.number().min(0.01).max(500).optional(),
    to: z.number().min(0.01).max(500).optional(),
  }),
  'joint.sizes': long({
    document,
    jointId,
    /** An overlap for each size; one for all when false. */
    each: z.boolean(),
  }),
  'joint.sweep': long({
    document,
    jointId,
    from: z.number().min(1).max(500).optional(),
    to: z.number().min(1).max(500).optional(),
    points: z.int().min(2).max(500).optional(),
  }),
  /** The joint with the other lap, made equal to it in one thing. */
  'joint.variant': long({
    document,
    jointId,
    lap: z.enum(['single', 'double']),
    equal: z.enum(['overlap', 'mass', 'margin']),
  }),
  /** May these parts be bonded: `joint.gap`, and the margins at the gap as measured. */
  'joint.gap-verdict': long({ document, jointId, measured }),
  /** Gaps at which the joint reaches its target, those at which coupons exist, those that are set. */
  'joint.gap-limits': long({ document, jointId }),
  /** The lowest margin at both ends of each input's tolerance. */
  'joint.matters': long({ document, jointId }),
  /** The lowest margin of many samples of the inputs. */
  'joint.scatter': long({
    document,
    jointId,
    samples: z.int().min(100).max(1_000_000).default(scatterDefaults.samples),
    seed: z.int().min(0).max(4_294_967_295).default(scatterDefaults.seed),
    /** Most samples by fitted surfaces, or each by the full model. */
    method: z.enum(['fitted', 'each']).default(scatterDefaults.method),
  }),
  /** All that the printed sheet says of a joint; the working of so many of its lowest margins. */
  'joint.sheet': long({
    document,
    jointId,
    workings: z.int().min(0).max(200).default(0),
    /** Strength against overlap takes longest: left out where it is known already. */
    sweep: z.boolean().default(true),
  }),
  /** Coupons: predicted, measured, statistics, measured over predicted; one set, or all. */
  'project.coupons': long({ document, setId: z.string().max(64).optional() }),
  /** What strength margins use, and what it rests on: each adhesive, environment and gap. */
  'project.ledger': long({ document }),
  'project.compare': long({
    document,
    columns: z
      .array(z.union([z.strictObject({ joint: jointId }), z.strictObject({ variant: jointId })]))
      .min(2)
      .max(4),
    /** The case that stress and strength are compared in; chosen when left out. */
    caseId: caseId.optional(),
  }),
} as const;

export const requests = {
  ...quickRequests,
  ...jobRequests,
  ...fileRequests,
  ...longRequests,
} as const;

export type LongRequestName = keyof typeof longRequests;
export type JobRequestName = keyof typeof jobRequests;
/** Answered in their own time: one of them waits for a person. */
export type FileRequestName = keyof typeof fileRequests;
export type RequestName = keyof typeof requests;
export type RequestInput<N extends RequestName> = z.input<(typeof requests)[N]>;
export type Focus = z.infer<typeof focus>;

export interface Answers extends FileAnswers {
  'app.about': About;
  'app.first-start': { readonly first: boolean };
  'project.initial': Opened;
  'project.demo': Opened;
  'project.read': Opened;
  'project.check': CheckReport;
  'project.corners': CornersReport;
  'project.schema': Record<string, unknown>;
  'joint.analyse': JointReport;
  'joint.stress': StressReport;
  'joint.explain': Working;
  'laminate.describe': LaminateReport;
  'joint.size': SizingReport;
  'joint.sizes': SizesReport;
  'joint.sweep': SweepReport;
  'job.progress': JobProgress;
  'job.found': JobFound;
  'job.stop': JobStopped;
  'joint.springs': SpringsReport;
  'joint.tolerances': readonly InputTolerance[];
  'joint.matters': MattersReport;
  'joint.scatter': ScatterReport;
  'joint.gap': GapReport;
  'joint.gap-verdict': GapVerdict;
  'joint.gap-limits': GapLimitsReport;
  'bench.keep': { readonly at: string };
  'bench.kept': Kept;
  'bench.drop': { readonly dropped: boolean };
  'rows.keep': { readonly at: string | null };
  'rows.kept': KeptSets;
  'rows.drop': { readonly dropped: boolean };
  'joint.variant': VariantReport;
  'project.compare': CompareReport;
  'project.coupons': CouponsReport;
  'project.ledger': LedgerReport;
  'joint.sheet': JointSheet;
  'sheet.pdf': SheetSaved;
}

export const requestNames = Object.keys(requests) as RequestName[];
export const isRequestName = (value: unknown): value is RequestName =>
  typeof value === 'string' && Object.hasOwn(requests, value);

export const isFileRequest = (name: unknown): name is FileRequestName =>
  typeof name === 'string' && Object.hasOwn(fileRequests, name);

export const longRequestNames = Object.keys(longRequests) as LongRequestName[];
export const isLongRequest = (name: unknown): name is LongRequestName =>
  typeof name === 'string' && Object.hasOwn(longRequests, name);

/** What the preload exposes as `window.lapwright`, and what the loopback page makes for itself. */
export interface Bridge {
  readonly carrier: 'electron' | 'loopback';
  ask<N extends RequestName>(name: N, input: RequestInput<N>): Promise<Reply<Answers[N]>>;
  /** In Electron: hears the commands of the menu, until what is given back is called. */
  onCommand?(listener: (command: MenuCommand) => void): () => void;
  /** In Electron: where a file lies that was dropped on the page; empty where it lies nowhere. */
  pathOf?(file: File): string;
}

/** Largest request body, bytes: a project of 2000 joints under 20 cases each is about 3 MB. */
export const MAX_BODY = 16 * 1024 * 1024;
