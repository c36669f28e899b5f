/** The requests of the bench that need no model: what the journal keeps. */
import type { GapCheck } from '../../../shared/project.ts';
import { type Reply, refuse } from '../../../shared/reply.ts';
import type { BenchJournal } from '../../files/bench-journal.ts';

const none = (): Reply<never> =>
  refuse('bad-request', '', 'Nothing is kept here: the terminal reads measurements from a file.');

/** @param journal left out where there is none, as in the terminal */
export const benchRequests = (journal?: BenchJournal) => ({
  'bench.keep': ({ project, check }: { project: string; check: GapCheck }) =>
    journal ? journal.keep(project, check) : none(),
  'bench.kept': ({ project }: { project: string }) => (journal ? journal.kept(project) : none()),
  'bench.drop': ({ project, checkId }: { project: string; checkId: string }) =>
    journal ? journal.drop(project, checkId) : none(),
});
