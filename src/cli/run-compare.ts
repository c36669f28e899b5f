/** The commands `springs` and `compare`. */
import type { Ask } from '../main/ask.ts';
import type { RequestInput } from '../shared/contract.ts';
import type { Project } from '../shared/project.ts';
import { springsCsv } from '../shared/springs-text.ts';
import { askFor, given, type Result, type Run } from './asking.ts';
import { printable } from './figures.ts';
import { didYouMean } from './nearest.ts';
import { named, refusal, typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { compareText } from './report-compare.ts';
import { springsText } from './report-springs.ts';

export async function springs(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const caseId = run.options.get('case') as string | undefined;
  const wish = given(run.options, { case: 'caseId' });
  const reply = await askFor(ask, 'joint.springs', { document: project, jointId, ...wish });
  if (!reply.ok) {
    return typedRefusal(reply.error, { project, jointId, caseId, file: run.file });
  }
  const { value } = reply;
  return {
    value,
    text: () =>
      run.options.has('csv') ? springsCsv(value).trimEnd() : springsText(printable(value), paper),
  };
}

type Columns = RequestInput<'project.compare'>['columns'];

/** The joint, those named, and the joint itself with another lap where that is asked for. */
export async function compare(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const caseId = run.options.get('case') as string | undefined;
  const others = (run.options.get('with') ?? []) as readonly string[];
  const variants = project.variants ?? [];
  const isVariant = (id: string): boolean => variants.some(({ joint }) => joint.id === id);
  const columns: Columns = [jointId, ...others].map((id) =>
    isVariant(id) ? { variant: id } : { joint: id },
  );
  const refused = (error: Parameters<typeof refusal>[0]) => {
    const all = [...project.joints, ...variants.map(({ joint }) => joint)];
    const wrong = [jointId, ...others].find((id) => all.every((joint) => joint.id !== id));
    if (error.code !== 'not-found' || wrong === undefined) {
      return typedRefusal(error, { project, jointId, caseId, file: run.file });
    }
    const option = wrong === jointId ? '--joint' : '--with';
    return named(option, error, run.file, didYouMean(wrong, all));
  };
  let document: Project = project;
  if (run.options.has('lap') || run.options.has('equal')) {
    const wish = given(run.options, { lap: 'lap', equal: 'equal' });
    if (wish.lap === undefined) {
      const message = '--equal needs --lap: which lap is to be made equal.';
      return refusal({ code: 'bad-request', field: '', message }, run.file);
    }
    const input = { document: project, jointId, equal: 'overlap', ...wish };
    const made = await askFor(ask, 'joint.variant', input as RequestInput<'joint.variant'>);
    if (!made.ok) return refused(made.error);
    const { joint } = made.value;
    document = {
      ...project,
      variants: [...variants.filter((one) => one.joint.id !== joint.id), { of: jointId, joint }],
    };
    columns.push({ variant: joint.id });
  }
  if (columns.length < 2 || columns.length > 4) {
    const message = 'two to four joints can be compared: name them by --with and --lap.';
    return refusal({ code: 'bad-request', field: '', message }, run.file);
  }
  const wish = given(run.options, { case: 'caseId' });
  const reply = await askFor(ask, 'project.compare', { document, columns, ...wish });
  if (!reply.ok) return refused(reply.error);
  return { value: reply.value, text: () => compareText(printable(reply.value), paper) };
}
