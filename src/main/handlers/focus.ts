/** Which of a joint's cases a question is about: the load case, and the surroundings it is judged in. */
import { type Question, type StateName, statesOf } from '../../model/margins/over-states.ts';
import type { Focus } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';

type Wanted = Pick<Focus, 'caseId' | 'conditionId'>;

export const conditionIdOf = ({ condition }: Pick<ResolvedCase, 'condition'>): string | null =>
  condition?.id ?? null;

/** True where the case and the surroundings are those asked for; what was left out fits any. */
export const isWanted = (
  { loadCase, condition }: Pick<ResolvedCase, 'loadCase' | 'condition'>,
  { caseId, conditionId }: Wanted,
): boolean =>
  (caseId === undefined || loadCase.id === caseId) &&
  (conditionId === undefined || conditionIdOf({ condition }) === conditionId);

/** The states of a question in the gap state that a focus names; all of them when it names none. */
export const statesInFocus = (
  question: Question,
  { gapState }: Pick<Focus, 'gapState'>,
): StateName[] =>
  statesOf(question).filter((state) => gapState === undefined || state.gapState === gapState);

const list = (ids: readonly string[]): string => [...new Set(ids)].join(', ') || 'none';

/**
 * The cases that a focus leaves. A condition like surroundings that the case is judged in already is those.
 * @returns a refusal that names what there is, when nothing is left
 */
export function casesInFocus(
  project: Project,
  { cases, joint, index }: ResolvedJoint,
  wanted: Wanted,
): Reply<readonly ResolvedCase[]> {
  const field = `joints.${index}.loads`;
  const { caseId, conditionId } = wanted;
  const ofCase = cases.filter(({ loadCase }) => caseId === undefined || loadCase.id === caseId);
  if (ofCase.length === 0) {
    const known = list(cases.map(({ loadCase }) => loadCase.id));
    return refuse(
      'not-found',
      field,
      `The joint "${joint.name}" carries no load case "${caseId}". It has: ${known}.`,
    );
  }
  const there = ofCase.filter((one) => isWanted(one, wanted));
  if (there.length > 0) return ok(there);
  const condition = project.conditions?.find(({ id }) => id === conditionId);
  const alike = ofCase.filter(
    ({ input }) =>
      input.temperature === condition?.temperature && input.moisture === condition.moisture,
  );
  if (alike.length > 0) return ok(alike);
  const judged = list(ofCase.flatMap(({ condition: one }) => (one ? [one.id] : [])));
  return refuse(
    'not-found',
    condition ? field : 'conditions',
    condition
      ? `The joint "${joint.name}" is not judged in the condition "${conditionId}" there: it is so only in load cases with "everyCondition". It is judged in: ${judged}.`
      : `There is no condition "${conditionId}" in this project. It has: ${list((project.conditions ?? []).map(({ id }) => id))}.`,
  );
}
