/** Who uses which strength: the gaps of each joint's bonds, and the environments that it is judged in. */
import { assemble, gapStates } from '../../../model/joint/assembly.ts';
import type { Condition, Joint, LoadCase, Project } from '../../../shared/project.ts';
import { ok } from '../../../shared/reply.ts';
import type { LedgerReport, LedgerUse } from '../../../shared/reports-ledger.ts';
import { surroundingsOf } from '../../../shared/surroundings.ts';
import { guarded } from '../guarded.ts';
import { resolveJoint } from '../resolve.ts';

export interface JointUse {
  readonly joint: Joint;
  /** Of its bonds in every gap state, each once. */
  readonly gaps: readonly number[];
  readonly cases: readonly { readonly loadCase: LoadCase; readonly condition: Condition | null }[];
}

/** Gaps are sums of decimals: what differs by rounding alone is one gap. */
export const sameGap = (gap: number): number => Number(gap.toPrecision(12));

/** Those that the joint carries in itself or in one of its frame sizes. */
function casesOf(project: Project, joint: Joint): JointUse['cases'] {
  const sized = (joint.sizes ?? []).flatMap(({ loads = [] }) => loads);
  const ids = new Set([...joint.loads, ...sized].map((load) => load.case));
  return project.loadCases
    .filter(({ id }) => ids.has(id))
    .flatMap((loadCase) =>
      surroundingsOf(project, loadCase).map((condition) => ({ loadCase, condition })),
    );
}

/** @param told at each joint */
export function jointUses(
  project: Project,
  told: (joints: number, name: string) => void,
): { readonly uses: readonly JointUse[]; readonly refused: LedgerReport['refused'] } {
  const uses: JointUse[] = [];
  const refused: LedgerReport['refused'][number][] = [];
  for (const [index, joint] of project.joints.entries()) {
    const reply = guarded(index, () => {
      const { input } = resolveJoint(project, index);
      return ok(
        gapStates(input).flatMap((state) =>
          assemble(input, state).bonds.map(({ gap }) => sameGap(gap)),
        ),
      );
    });
    if (reply.ok) {
      uses.push({ joint, gaps: [...new Set(reply.value)], cases: casesOf(project, joint) });
    } else {
      refused.push({ jointId: joint.id, name: joint.name, error: reply.error });
    }
    told(index + 1, joint.name);
  }
  return { uses, refused };
}

type Place = Pick<LoadCase, 'temperature' | 'moisture'>;
export const isAt = (one: Place, { temperature, moisture }: Place): boolean =>
  one.temperature === temperature && one.moisture === moisture;

/** The joints that are judged there, with the cases that bring them there. */
export function usesAt(uses: readonly JointUse[], place: Place): readonly LedgerUse[] {
  return uses.flatMap(({ joint, cases }): LedgerUse[] => {
    const there = cases.filter(({ loadCase, condition }) => isAt(condition ?? loadCase, place));
    if (there.length === 0) return [];
    return [
      {
        jointId: joint.id,
        name: joint.name,
        cases: there.map(({ loadCase, condition }) => ({
          caseId: loadCase.id,
          caseName: loadCase.name,
          conditionId: condition?.id ?? null,
          conditionName: condition?.name ?? null,
        })),
      },
    ];
  });
}
