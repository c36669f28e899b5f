/** Runs one command through the same handlers that the app asks. */
import { resolve } from 'node:path';
import type { Ask } from '../main/ask.ts';
import { readProjectFile } from '../main/files/read-project-file.ts';
import type { RequestInput } from '../shared/contract.ts';
import type { Project } from '../shared/project.ts';
import type { RequestError } from '../shared/reply.ts';
import { type Answer, askFor, given, type Result, type Run } from './asking.ts';
import { BELOW_TARGET, DONE, REFUSED } from './exit-codes.ts';
import { printable } from './figures.ts';
import { OWN } from './options.ts';
import { lineOf, named, refusal, typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { checkText } from './report-check.ts';
import { explainText } from './report-explain.ts';
import { stressText } from './report-stress.ts';
import { sweepText } from './report-sweep.ts';
import { compare, springs } from './run-compare.ts';
import { corners } from './run-corners.ts';
import { basis, correlate } from './run-coupons.ts';
import { gap } from './run-gap.ts';
import { ledger } from './run-ledger.ts';
import { matters, scatter } from './run-scatter.ts';
import { size, sizes } from './run-size.ts';

export interface Outcome {
  readonly code: number;
  readonly out: string;
  /** One line for each thing that was refused. */
  readonly complaints: readonly string[];
}

async function check(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const reply = await askFor(ask, 'project.check', { document: project });
  if (!reply.ok) return refusal(reply.error, run.file);
  const { joints, counts } = reply.value;
  const refused = joints.flatMap((joint) => (joint.refused ? [joint.refused] : []));
  const below = counts.fails + counts.low > 0;
  return {
    value: reply.value,
    text: () => checkText(printable(reply.value), project, paper),
    code: refused.length > 0 ? REFUSED : below ? BELOW_TARGET : DONE,
    refused,
  };
}

/** The condition that was named, as the request has it. */
function conditionOf(options: Run['options'], project: Project): { conditionId?: string | null } {
  const id = options.get('condition') as string | undefined;
  if (id === undefined) return {};
  const isNamed = project.conditions?.some((one) => one.id === id) ?? false;
  return { conditionId: id === OWN && !isNamed ? null : id };
}

async function stress(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const caseId = String(run.options.get('case'));
  const names = {
    case: 'caseId',
    gap: 'gapState',
    theta: 'theta',
    factor: 'loadFactor',
    stations: 'stations',
    map: 'map',
  };
  const focus = { ...given(run.options, names), ...conditionOf(run.options, project) };
  const reply = await askFor(ask, 'joint.stress', { document: project, jointId, focus });
  if (!reply.ok) {
    return typedRefusal(reply.error, { project, jointId, caseId, file: run.file });
  }
  const curve = run.options.has('stations');
  const plain = printable(project);
  const joint = plain.joints.find(({ id }) => id === jointId)!;
  const loadCase = plain.loadCases.find(({ id }) => id === caseId)!;
  return {
    value: reply.value,
    text: () => stressText(printable(reply.value), joint, loadCase, curve, paper),
  };
}

/** The figure that is asked for, or the lowest margin of the joint (in the case, where one is named). */
async function explain(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const caseId = run.options.get('case') as string | undefined;
  const refused = (error: RequestError) =>
    typedRefusal(error, { project, jointId, caseId, file: run.file });
  const focus = {
    ...given(run.options, { case: 'caseId', gap: 'gapState' }),
    ...conditionOf(run.options, project),
  };
  let about = given(run.options, { mode: 'subject', part: 'part', place: 'place' });
  if (!run.options.has('mode')) {
    const analysed = await askFor(ask, 'joint.analyse', { document: project, jointId, focus });
    if (!analysed.ok) return refused(analysed.error);
    const lowest = analysed.value.margins.find(
      (margin) =>
        (caseId === undefined || margin.caseId === caseId) &&
        (focus.conditionId === undefined || margin.conditionId === focus.conditionId) &&
        (about.part === undefined || margin.part === about.part) &&
        (about.place === undefined || margin.place === about.place),
    );
    if (!lowest) {
      const message =
        'No margin of this joint is lowest there: name one with --mode, or leave case, part and place out.';
      return refusal({ code: 'not-found', field: '', message }, run.file);
    }
    about = { subject: lowest.mode, part: lowest.part, place: lowest.place };
  }
  const input = { document: project, jointId, focus, ...about };
  const reply = await askFor(ask, 'joint.explain', input as RequestInput<'joint.explain'>);
  if (!reply.ok) return refused(reply.error);
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  return {
    value: reply.value,
    text: () => explainText(printable(reply.value), joint, paper),
  };
}

/** Rows of the table that a person reads; a curve for a program has the handler's own number. */
const ROWS = 15;

async function sweep(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = String(run.options.get('joint'));
  const range = given(run.options, { from: 'from', to: 'to', points: 'points' });
  const rows = run.options.has('json') ? {} : { points: ROWS };
  const input = { document: project, jointId, ...rows, ...range };
  const reply = await askFor(ask, 'joint.sweep', input);
  if (!reply.ok) {
    const { error } = reply;
    // The only request that a sweep can get wrong by itself is where it ends.
    return error.code === 'bad-request' && error.field === ''
      ? named('--to', error, run.file)
      : typedRefusal(error, { project, jointId, file: run.file });
  }
  const joint = printable(project.joints.find(({ id }) => id === jointId)!);
  return {
    value: reply.value,
    text: () => sweepText(printable(reply.value), joint, paper),
  };
}

const pretty = (value: unknown): Answer => ({
  value,
  text: () => JSON.stringify(value, null, 2),
});

async function answer(ask: Ask, run: Run, cwd: string, paper: Paper): Promise<Result> {
  const { name } = run.command;
  if (name === 'schema') {
    const reply = await askFor(ask, 'project.schema', {});
    return reply.ok ? pretty(reply.value) : refusal(reply.error, name);
  }
  if (name === 'demo') {
    const reply = await askFor(ask, 'project.demo', {});
    return reply.ok ? pretty(reply.value.document) : refusal(reply.error, name);
  }
  const opened = readProjectFile(resolve(cwd, run.file));
  // This message names the file and the place already.
  if (!opened.ok) return { error: opened.error, line: opened.error.message };
  const project = opened.value.document;
  if (name === 'corners') return corners(ask, project, run, paper);
  if (name === 'basis') return basis(ask, project, run, paper);
  if (name === 'correlate') return correlate(ask, project, run, paper);
  if (name === 'ledger') return ledger(ask, project, run, paper);
  if (name === 'stress') return stress(ask, project, run, paper);
  if (name === 'explain') return explain(ask, project, run, paper);
  if (name === 'matters') return matters(ask, project, run, paper);
  if (name === 'scatter') return scatter(ask, project, run, paper);
  if (name === 'sweep') return sweep(ask, project, run, paper);
  if (name === 'size') return size(ask, project, run, paper);
  if (name === 'sizes') return sizes(ask, project, run, paper);
  if (name === 'springs') return springs(ask, project, run, paper);
  if (name === 'gap') return gap(ask, project, run, cwd, paper);
  if (name === 'compare') return compare(ask, project, run, paper);
  return check(ask, project, run, paper);
}

export async function runCommand(ask: Ask, run: Run, cwd: string, paper: Paper): Promise<Outcome> {
  const result = await answer(ask, run, cwd, paper);
  const json = run.options.has('json');
  if ('error' in result) {
    const { error, line } = result;
    return json
      ? { code: REFUSED, out: JSON.stringify({ error }), complaints: [] }
      : { code: REFUSED, out: '', complaints: [line] };
  }
  const { value, text, code = DONE, refused = [] } = result;
  return json
    ? { code, out: JSON.stringify(value), complaints: [] }
    : { code, out: text(), complaints: refused.map((error) => lineOf(error, run.file)) };
}
