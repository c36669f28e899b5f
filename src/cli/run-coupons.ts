/** `basis` and `correlate`: what the coupons of a project say. */
import type { Ask } from '../main/ask.ts';
import type { Project } from '../shared/project.ts';
import type { RequestError } from '../shared/reply.ts';
import type { CouponsReport } from '../shared/reports-coupons.ts';
import { askFor, type Result, type Run } from './asking.ts';
import { BELOW_TARGET, DONE } from './exit-codes.ts';
import { printable } from './figures.ts';
import { didYouMean } from './nearest.ts';
import { named, refusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { basisText, correlateText } from './report-coupons.ts';

async function couponsOf(
  ask: Ask,
  project: Project,
  run: Run,
  text: (report: CouponsReport) => string,
  code: (report: CouponsReport) => number,
): Promise<Result> {
  const setId = run.options.get('set') as string | undefined;
  const input = { document: project, ...(setId === undefined ? {} : { setId }) };
  const reply = await askFor(ask, 'project.coupons', input);
  if (!reply.ok) return refused(reply.error, project, setId, run.file);
  return {
    value: reply.value,
    text: () => text(printable(reply.value)),
    code: code(reply.value),
  };
}

const refused = (
  error: RequestError,
  { coupons }: Project,
  setId: string | undefined,
  file: string,
) =>
  error.code === 'not-found'
    ? named('--set', error, file, didYouMean(setId ?? '', coupons?.sets ?? []))
    : refusal(error, file);

export const basis = (ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> =>
  couponsOf(
    ask,
    project,
    run,
    (report) => basisText(report, paper),
    ({ sets }) =>
      sets.some(({ statistics, lines }) => lines.length > 0 && !statistics?.chosen.B)
        ? BELOW_TARGET
        : DONE,
  );

export const correlate = (ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> =>
  couponsOf(
    ask,
    project,
    run,
    (report) => correlateText(report, paper),
    () => DONE,
  );
