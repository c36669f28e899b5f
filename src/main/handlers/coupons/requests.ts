/** The requests about rows of results that are in no project file: what the journal keeps. */
import type { KeptRow } from '../../../shared/kept-rows.ts';
import { type Reply, refuse } from '../../../shared/reply.ts';
import type { RowJournal } from '../../files/row-journal.ts';

const none = (): Reply<never> =>
  refuse('bad-request', '', 'Nothing is kept here: the terminal reads results from the project.');

interface OfSet {
  readonly project: string;
  readonly setId: string;
}

/** @param journal left out where there is none, as in the terminal */
export const rowRequests = (journal?: RowJournal) => ({
  'rows.keep': ({ project, setId, rows }: OfSet & { readonly rows: readonly KeptRow[] }) =>
    journal ? journal.keep(project, setId, rows) : none(),
  'rows.kept': ({ project }: Pick<OfSet, 'project'>) => (journal ? journal.kept(project) : none()),
  'rows.drop': ({ project, setId }: OfSet) => (journal ? journal.drop(project, setId) : none()),
});
