/** The surroundings that a load case is judged in. */
import type { Condition, LoadCase, Project } from './project.ts';

/**
 * Its own (null), and where it is judged in every condition those of the project's that differ from
 * its own and from each other.
 */
export function surroundingsOf(
  { conditions = [] }: Pick<Project, 'conditions'>,
  loadCase: LoadCase,
): (Condition | null)[] {
  if (!loadCase.everyCondition) return [null];
  const seen: Pick<Condition, 'temperature' | 'moisture'>[] = [loadCase];
  const others: Condition[] = [];
  for (const condition of conditions) {
    const { temperature, moisture } = condition;
    if (seen.some((one) => one.temperature === temperature && one.moisture === moisture)) continue;
    seen.push(condition);
    others.push(condition);
  }
  return [null, ...others];
}
