/** `size` and `sizes`: the size that reaches the target, and one joint in its frame sizes. */
import type { Ask } from '../main/ask.ts';
import type { Project } from '../shared/project.ts';
import { askFor, given, type Result, type Run } from './asking.ts';
import { BELOW_TARGET, DONE, REFUSED } from './exit-codes.ts';
import { printable } from './figures.ts';
import { named, typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { sizesText, sizeText } from './report-size.ts';

export async function size(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const question = given(run.options, {
    vary: 'vary',
    target: 'target',
    step: 'step',
    from: 'from',
    to: 'to',
  });
  const input = { document: project, jointId, vary: 'overlap' as const, ...question };
  const reply = await askFor(ask, 'joint.size', input);
  if (!reply.ok) {
    const { error } = reply;
    // What is wrong with the question itself is named by its option.
    return error.code === 'bad-request' && error.field in asked
      ? named(`--${error.field}`, { ...error, field: '' }, run.file)
      : typedRefusal(error, { project, jointId, file: run.file });
  }
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  return {
    value: reply.value,
    text: () => sizeText(printable(reply.value), joint, paper),
    code: reply.value.found ? DONE : BELOW_TARGET,
  };
}

const asked: Readonly<Record<string, true>> = { from: true, to: true, step: true };

export async function sizes(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const input = { document: project, jointId, each: run.options.has('each') };
  const reply = await askFor(ask, 'joint.sizes', input);
  if (!reply.ok) return typedRefusal(reply.error, { project, jointId, file: run.file });
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  const refused = reply.value.sizes.flatMap((one) => (one.refused ? [one.refused] : []));
  const reached = reply.value.sizes.every(({ overlap }) => overlap !== null);
  const done = reached && (reply.value.each || reply.value.common !== null);
  return {
    value: reply.value,
    text: () => sizesText(printable(reply.value), joint, paper),
    code: refused.length > 0 ? REFUSED : done ? DONE : BELOW_TARGET,
    refused,
  };
}
