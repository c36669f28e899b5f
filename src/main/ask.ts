/**
 * The one door to the model. Whatever carries a request (Electron IPC, the loopback route, the
 * command line), it ends here: name and input are checked, the handler runs, the reply is data.
 */
import { z } from 'zod';
import packageJson from '../../package.json' with { type: 'json' };
import { forgetSurroundings } from '../model/margins/state.ts';
import { MODEL_VERSION } from '../model/version.ts';
import {
  type Answers,
  type FileRequestName,
  isFileRequest,
  isLongRequest,
  isRequestName,
  type JobRequestName,
  type LongRequestName,
  type RequestName,
  requests,
} from '../shared/contract.ts';
import { type Project, projectShape } from '../shared/project.ts';
import { readProject } from '../shared/read-project.ts';
import { ok, type Reply, refuse } from '../shared/reply.ts';
import type { About, Opened } from '../shared/reports.ts';
import { openDemo } from './demo/demo.ts';
import type { BenchJournal } from './files/bench-journal.ts';
import type { ProjectFiles } from './files/project-files.ts';
import { projectOfText } from './files/read-project-file.ts';
import type { RowJournal } from './files/row-journal.ts';
import { check } from './handlers/check.ts';
import { compare } from './handlers/compare.ts';
import { corners } from './handlers/corners.ts';
import { couponsReport } from './handlers/coupons/report.ts';
import { rowRequests } from './handlers/coupons/requests.ts';
import { explain } from './handlers/explain.ts';
import { type FileContext, fileHandlers } from './handlers/files/requests.ts';
import { gapOf } from './handlers/gap/gap.ts';
import { gapLimits } from './handlers/gap/gap-limits.ts';
import { gapVerdict } from './handlers/gap/gap-verdict.ts';
import { benchRequests } from './handlers/gap/requests.ts';
import { guarded } from './handlers/guarded.ts';
import { analyse, stressOf, sweep } from './handlers/joint.ts';
import { describeLaminate } from './handlers/laminate.ts';
import { ledgerReport } from './handlers/ledger/ledger.ts';
import { governingModes } from './handlers/margins.ts';
import { type ResolvedJoint, resolveJoint } from './handlers/resolve.ts';
import { matters, scatter } from './handlers/scatter.ts';
import { jointSheet, noPdfHere } from './handlers/sheet.ts';
import { sizeJoint } from './handlers/sizing/size-joint.ts';
import { sizesOf } from './handlers/sizing/sizes.ts';
import { springs } from './handlers/springs.ts';
import { tolerancesOf } from './handlers/tolerances.ts';
import { variant } from './handlers/variant.ts';
import { emptyDesk, foundBy, type JobDesk, progressOf, stopAt } from './jobs/desk.ts';
import {
  type JobContext,
  type Share,
  type TellFound,
  type TellProgress,
  unwatched,
} from './jobs/progress.ts';

export interface AskOptions {
  readonly carrier: About['carrier'];
  /** What the app opens with; the demonstration project when left out. */
  readonly initial?: () => Reply<Opened>;
  /** Whether this user starts for the first time; remembered by who tells it. Always when left out. */
  readonly firstStart?: () => boolean;
  /** Where checks of measured parts are kept; nowhere when left out. */
  readonly journal?: BenchJournal;
  /** Where rows of coupon results are kept that no project file has yet. */
  readonly rowJournal?: RowJournal;
  /** Project files on this machine; none when left out. */
  readonly files?: ProjectFiles;
}

/** What a carrier knows besides the request; nothing when it just asks. */
export interface AskContext {
  /** Told how far a long request is. */
  readonly progress?: TellProgress | undefined;
  /** Told what a long request has found, as it finds it. */
  readonly found?: TellFound | undefined;
  /** The share of a long request that is wanted; all of it when left out. */
  readonly share?: Share | undefined;
  /** Where the caller follows and stops its own jobs. */
  readonly desk?: JobDesk | undefined;
  /** Who asks, where the carrier knows. */
  readonly client?: string | undefined;
}

export type Ask = (name: unknown, input: unknown, context?: AskContext) => Promise<Reply<unknown>>;

/** What the handler of a request gets besides its input. */
type Besides<N extends RequestName> = N extends LongRequestName
  ? [context: JobContext]
  : N extends JobRequestName
    ? [desk: JobDesk]
    : N extends FileRequestName
      ? [context: FileContext]
      : [];

type Answered<N extends RequestName> =
  | Reply<Answers[N]>
  | (N extends FileRequestName ? Promise<Reply<Answers[N]>> : never);

type Handlers = {
  readonly [N in RequestName]: (
    input: z.infer<(typeof requests)[N]>,
    ...besides: Besides<N>
  ) => Answered<N>;
};

/** Runs a handler on one joint of a checked project. */
function withJoint<T>(
  document: unknown,
  jointId: string,
  run: (project: Project, resolved: ResolvedJoint) => Reply<T>,
): Reply<T> {
  const project = readProject(document);
  if (!project.ok) return project;
  const index = project.value.joints.findIndex(({ id }) => id === jointId);
  if (index < 0) {
    const known = project.value.joints.map(({ id }) => id);
    const list = known.length > 12 ? `${known.slice(0, 12).join(', ')}, …` : known.join(', ');
    return refuse(
      'not-found',
      'joints',
      `There is no joint "${jointId}" in this project. It has: ${list || 'none'}.`,
    );
  }
  return guarded(index, () => run(project.value, resolveJoint(project.value, index)));
}

/** Of Node's own list; Electron adds itself to it. */
export const runsOn = (
  versions: Readonly<Record<string, string | undefined>>,
): Pick<About, 'node' | 'electron'> => {
  const { node = '', electron: version, chrome: chromium = '' } = versions;
  return { node, electron: version === undefined ? null : { version, chromium } };
};

function makeHandlers(options: AskOptions): Handlers {
  return {
    'app.about': () =>
      ok({
        version: packageJson.version,
        modelVersion: MODEL_VERSION,
        carrier: options.carrier,
        ...runsOn(process.versions),
      }),
    'app.first-start': () => ok({ first: options.firstStart?.() ?? true }),
    'project.initial': () => (options.initial ?? openDemo)(),
    'project.demo': () => openDemo(),
    'project.read': ({ text, origin }) => projectOfText(origin, text),
    'project.check': ({ document }, context) => {
      const project = readProject(document);
      return project.ok ? ok(check(project.value, context)) : project;
    },
    'project.corners': ({ document, jointId }, context) => {
      // Of one joint alone: what is wrong with its place is said as for any other request.
      if (jointId !== undefined) {
        return withJoint(document, jointId, (project) =>
          ok(corners(project, { jointId }, context)),
        );
      }
      const project = readProject(document);
      return project.ok ? ok(corners(project.value, {}, context)) : project;
    },
    'project.schema': () => ok(z.toJSONSchema(projectShape) as Record<string, unknown>),
    'joint.analyse': ({ document, jointId, focus }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        analyse(project, resolved, focus, context),
      ),
    'joint.stress': ({ document, jointId, focus }) =>
      withJoint(document, jointId, (project, resolved) => {
        const rows = () => governingModes(resolved, project.settings);
        const stress = stressOf(project, resolved, focus, rows);
        if (!stress.ok || stress.value) return stress as Reply<Answers['joint.stress']>;
        return refuse(
          'bad-input',
          `joints.${resolved.index}.loads`,
          `The joint "${resolved.joint.name}" has no load case: give it one.`,
        );
      }),
    'joint.explain': ({ document, jointId, ...question }) =>
      withJoint(document, jointId, (project, resolved) => explain(project, resolved, question)),
    'laminate.describe': ({ document, adherendId, wall, flat = false }) => {
      const project = readProject(document);
      return project.ok ? describeLaminate(project.value, adherendId, wall, flat) : project;
    },
    'joint.size': ({ document, jointId, job: _job, ...question }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        sizeJoint(project, resolved, question, context),
      ),
    'joint.sizes': ({ document, jointId, each }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        sizesOf(project, resolved, { each }, context),
      ),
    'joint.sweep': ({ document, jointId, from, to, points }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        sweep(project, resolved, { from, to, points }, context),
      ),
    'job.progress': ({ job }, desk) => progressOf(desk, job),
    'job.found': ({ job, from }, desk) => foundBy(desk, job, from),
    'job.stop': ({ job }, desk) => stopAt(desk, job),
    'joint.sheet': ({ document, jointId, job: _job, ...wanted }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        jointSheet(project, resolved, wanted, context),
      ),
    'sheet.pdf': noPdfHere,
    'joint.springs': ({ document, jointId, caseId }) =>
      withJoint(document, jointId, (project, resolved) => springs(project, resolved, caseId)),
    'joint.gap': ({ document, jointId, measured }) =>
      withJoint(document, jointId, (project, resolved) => {
        const answer = gapOf(project, resolved, measured);
        return answer.ok ? ok(answer.value.report) : answer;
      }),
    'joint.gap-verdict': ({ document, jointId, measured }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        gapVerdict(project, resolved, measured, context),
      ),
    'joint.gap-limits': ({ document, jointId }, context) =>
      withJoint(document, jointId, (project, resolved) => gapLimits(project, resolved, context)),
    ...benchRequests(options.journal),
    ...rowRequests(options.rowJournal),
    ...fileHandlers(options.files),
    'joint.variant': ({ document, jointId, lap, equal }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        variant(project, resolved, { lap, equal }, context),
      ),
    'joint.tolerances': ({ document, jointId }) =>
      withJoint(document, jointId, (project, resolved) => ok(tolerancesOf(project, resolved))),
    'joint.matters': ({ document, jointId }, context) =>
      withJoint(document, jointId, (project, resolved) => matters(project, resolved, context)),
    'joint.scatter': ({ document, jointId, samples, seed, method }, context) =>
      withJoint(document, jointId, (project, resolved) =>
        scatter(project, resolved, { samples, seed, method }, context),
      ),
    'project.coupons': ({ document, setId }, context) => {
      const project = readProject(document);
      return project.ok ? couponsReport(project.value, setId, context) : project;
    },
    'project.ledger': ({ document }, context) => {
      const project = readProject(document);
      return project.ok ? ok(ledgerReport(project.value, context)) : project;
    },
    'project.compare': ({ document, columns, caseId }, context) => {
      const project = readProject(document);
      return project.ok ? compare(project.value, { columns, caseId }, context) : project;
    },
  };
}

type Handler = (value: unknown, second: unknown) => Reply<unknown> | Promise<Reply<unknown>>;

function besides(name: RequestName, context: AskContext): JobContext | JobDesk | FileContext {
  if (isLongRequest(name)) {
    const { progress = unwatched.progress, found, share } = context;
    return { progress, found, share };
  }
  return isFileRequest(name) ? { client: context.client } : (context.desk ?? emptyDesk);
}

export function createAsk(options: AskOptions): Ask {
  const handlers = makeHandlers(options);
  return async (name, input, context = {}) => {
    // Whatever a page asks, it is there.
    if (context.client !== undefined) options.files?.presence.heard(context.client);
    if (!isRequestName(name)) return refuse('bad-request', '', 'There is no such request.');
    const parsed = requests[name].safeParse(input);
    if (!parsed.success) {
      const [issue] = parsed.error.issues;
      const place = issue?.path.join('.') ?? '';
      return refuse('bad-request', place, `${name}: ${place || 'the request'} is malformed.`);
    }
    try {
      return await (handlers[name] as Handler)(parsed.data, besides(name, context));
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return refuse('internal', '', `Something in Lapwright itself went wrong: ${said}`);
    } finally {
      forgetSurroundings();
    }
  };
}
