/** The commands `matters` and `scatter`. */
import type { Ask } from '../main/ask.ts';
import type { Project } from '../shared/project.ts';
import { askFor, given, type Result, type Run } from './asking.ts';
import { printable } from './figures.ts';
import { typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { mattersText, scatterText } from './report-scatter.ts';

export async function matters(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const reply = await askFor(ask, 'joint.matters', { document: project, jointId });
  if (!reply.ok) return typedRefusal(reply.error, { project, jointId, file: run.file });
  const { value } = reply;
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  return { value, text: () => mattersText(printable(value), joint, paper) };
}

export async function scatter(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const options = given(run.options, { samples: 'samples', seed: 'seed', method: 'method' });
  const reply = await askFor(ask, 'joint.scatter', { document: project, jointId, ...options });
  if (!reply.ok) return typedRefusal(reply.error, { project, jointId, file: run.file });
  const { value } = reply;
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  return { value, text: () => scatterText(printable(value), joint, paper) };
}
