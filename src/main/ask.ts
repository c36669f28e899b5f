/**
 * The one door to the model. Whatever carries a request (Electron IPC, the loopback route, the
 * command line), it ends here: name and input are checked, the handler runs, the reply is data.
 */
import { z } from 'zod';
import packageJson from '../../package.json' with { type: 'json' };
import { MODEL_VERSION } from '../model/version.ts';
import { type Answers, isRequestName, type RequestName, requests } from '../shared/contract.ts';
import { type Project, projectShape } from '../shared/project.ts';
import { readProject, readProjectText } from '../shared/read-project.ts';
import { ok, type Reply, refuse } from '../shared/reply.ts';
import type { About, Opened } from '../shared/reports.ts';
import { openDemo } from './demo/demo.ts';
import { check } from './handlers/check.ts';
import { explain } from './handlers/explain.ts';
import { guarded } from './handlers/guarded.ts';
import { analyse, stressOf, sweep } from './handlers/joint.ts';
import { describeLaminate } from './handlers/laminate.ts';
import { governingModes } from './handlers/margins.ts';
import { type ResolvedJoint, resolveJoint } from './handlers/resolve.ts';

export interface AskOptions {
  readonly carrier: About['carrier'];
  /** What the app opens with; the demonstration project when left out. */
  readonly initial?: () => Reply<Opened>;
}

export type Ask = (name: unknown, input: unknown) => Promise<Reply<unknown>>;

type Handlers = {
  readonly [N in RequestName]: (input: z.infer<(typeof requests)[N]>) => Reply<Answers[N]>;
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

function makeHandlers(options: AskOptions): Handlers {
  return {
    'app.about': () =>
      ok({
        version: packageJson.version,
        modelVersion: MODEL_VERSION,
        carrier: options.carrier,
      }),
    'project.initial': () => (options.initial ?? openDemo)(),
    'project.demo': () => openDemo(),
    'project.read': ({ text, origin }) => {
      const project = readProjectText(text);
      return project.ok ? ok({ document: project.value, origin }) : project;
    },
    'project.check': ({ document }) => {
      const project = readProject(document);
      return project.ok ? ok(check(project.value)) : project;
    },
    'project.schema': () => ok(z.toJSONSchema(projectShape) as Record<string, unknown>),
    'joint.analyse': ({ document, jointId, focus }) =>
      withJoint(document, jointId, (project, resolved) => analyse(project, resolved, focus)),
    'joint.stress': ({ document, jointId, focus }) =>
      withJoint(document, jointId, (project, resolved) => {
        const rows = governingModes(resolved, project.settings);
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
    'joint.sweep': ({ document, jointId, from, to, points }) =>
      withJoint(document, jointId, (project, resolved) =>
        sweep(project, resolved, { from, to, points }),
      ),
  };
}

export function createAsk(options: AskOptions): Ask {
  const handlers = makeHandlers(options);
  return async (name, input) => {
    if (!isRequestName(name)) return refuse('bad-request', '', 'There is no such request.');
    const parsed = requests[name].safeParse(input);
    if (!parsed.success) {
      const [issue] = parsed.error.issues;
      const place = issue?.path.join('.') ?? '';
      return refuse('bad-request', place, `${name}: ${place || 'the request'} is malformed.`);
    }
    try {
      return (handlers[name] as (value: unknown) => Reply<unknown>)(parsed.data);
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return refuse('internal', '', `Something in Lapwright itself went wrong: ${said}`);
    }
  };
}
