/** The command `ledger`: what strength margins use, and what it rests on. */
import type { Ask } from '../main/ask.ts';
import { ledgerCsv } from '../shared/ledger-csv.ts';
import type { Project } from '../shared/project.ts';
import { askFor, type Result, type Run } from './asking.ts';
import { printable } from './figures.ts';
import { refusal } from './refusals.ts';
import type { Paper } from './report.ts';
import { ledgerText } from './report-ledger.ts';

export async function ledger(ask: Ask, project: Project, run: Run, paper: Paper): Promise<Result> {
  const reply = await askFor(ask, 'project.ledger', { document: project });
  if (!reply.ok) return refusal(reply.error, run.file);
  const { value } = reply;
  return {
    value,
    text: () =>
      run.options.has('csv') ? ledgerCsv(value).trimEnd() : ledgerText(printable(value), paper),
  };
}
