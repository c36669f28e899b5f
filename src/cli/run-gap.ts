/** `gap`: measured parts, the gaps between which they may be bonded, the file to fill in. */
import { resolve } from 'node:path';
import type { Ask } from '../main/ask.ts';
import { readTextFile } from '../main/files/read-project-file.ts';
import { measuringTemplate, readMeasuredCsv } from '../shared/measured-text.ts';
import { instrumentsOf, measuringPlan } from '../shared/measuring-plan.ts';
import type { MeasuredSurface, Project } from '../shared/project.ts';
import { ok, type Reply, refuse } from '../shared/reply.ts';
import { askFor, type Result, type Run } from './asking.ts';
import { BELOW_TARGET, DONE } from './exit-codes.ts';
import { printable } from './figures.ts';
import { named, typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { gapText, limitsText } from './report-gap.ts';

/** Bytes; 720 readings of four surfaces take less. */
const MOST = 1024 * 1024;

type Found = Project['joints'][number];

function measuredOf(
  project: Project,
  joint: Found,
  path: string,
  cwd: string,
): Reply<readonly MeasuredSurface[]> {
  const text = readTextFile(resolve(cwd, path), MOST, 'measured parts');
  if (!text.ok) return text;
  const read = readMeasuredCsv(text.value, joint, instrumentsOf(project));
  if (read.ok) return ok(read.surfaces);
  const lines = read.errors.map(({ line, message }) => `${path}: line ${line}: ${message}`);
  return refuse('bad-input', 'measured', lines.join('; '));
}

export async function gap(
  ask: Ask,
  project: Project,
  run: Run,
  cwd: string,
  paper: Paper,
): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const typed = { project, jointId, file: run.file };
  const joint = project.joints.find(({ id }) => id === jointId);
  if (run.options.has('limits')) {
    const reply = await askFor(ask, 'joint.gap-limits', { document: project, jointId });
    if (!reply.ok) return typedRefusal(reply.error, typed);
    return {
      value: reply.value,
      text: () => limitsText(printable(reply.value), printable(joint!), paper),
    };
  }
  if (joint && measuringPlan(joint) && run.options.has('template')) {
    const text = measuringTemplate(joint, instrumentsOf(project));
    return { value: { csv: text }, text: () => text.trimEnd() };
  }
  let measured: readonly MeasuredSurface[] = [];
  if (joint && measuringPlan(joint)) {
    const path = run.options.get('measured');
    if (path === undefined) {
      const message = 'it is needed, unless --limits or --template is asked for.';
      return named('--measured', { code: 'bad-request', field: '', message }, '');
    }
    const read = measuredOf(project, joint, String(path), cwd);
    // The message names file and line already.
    if (!read.ok) return { error: read.error, line: read.error.message };
    measured = read.value;
  }
  const input = { document: project, jointId, measured: [...measured] };
  const reply = await askFor(ask, 'joint.gap-verdict', input);
  if (!reply.ok) return typedRefusal(reply.error, typed);
  return {
    value: reply.value,
    text: () => gapText(printable(reply.value), printable(joint!), paper),
    code: reply.value.state === 'accept' ? DONE : BELOW_TARGET,
  };
}
