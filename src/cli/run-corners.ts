/** The command `corners`. */
import type { Ask } from '../main/ask.ts';
import type { Project } from '../shared/project.ts';
import { askFor, type Result, type Run } from './asking.ts';
import { BELOW_TARGET, DONE, REFUSED } from './exit-codes.ts';
import { printable } from './figures.ts';
import { didYouMean } from './nearest.ts';
import { named, typedRefusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { cornersText } from './report-corners.ts';

export async function corners(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const jointId = run.options.get('joint') as string | undefined;
  const by = (run.options.get('sort') as string | undefined) ?? 'margin';
  const cases = project.loadCases.map(({ id }) => ({ id }));
  const orders = [{ id: 'joint' }, { id: 'margin' }, ...cases];
  if (!orders.some(({ id }) => id === by)) {
    const message = `"${by}" is not joint, margin or the id of a load case.`;
    const error = { code: 'bad-request' as const, field: '', message };
    return named('--sort', error, run.file, didYouMean(by, orders));
  }
  const reply = await askFor(ask, 'project.corners', {
    document: project,
    ...(jointId === undefined ? {} : { jointId }),
  });
  if (!reply.ok) {
    return typedRefusal(reply.error, { project, jointId: jointId ?? '', file: run.file });
  }
  const { joints, counts } = reply.value;
  const refused = joints.flatMap((joint) => (joint.refused ? [joint.refused] : []));
  return {
    value: reply.value,
    text: () => cornersText(printable(reply.value), by, paper),
    code: refused.length > 0 ? REFUSED : counts.fails + counts.low > 0 ? BELOW_TARGET : DONE,
    refused,
  };
}
