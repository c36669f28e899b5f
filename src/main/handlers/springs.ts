/** The joint as springs for the user's frame model, at every temperature and moisture of its cases. */
import { degreesCelsius, say } from '../../model/said.ts';
import { jointSprings } from '../../model/stiffness/springs.ts';
import type { Moisture, Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Flag } from '../../shared/reports.ts';
import type { SpringState, SpringsReport } from '../../shared/reports-springs.ts';
import { describeJoint } from './labels.ts';
import { massOf, printingOf } from './mass.ts';
import type { ResolvedJoint } from './resolve.ts';

interface Environment {
  readonly temperature: number;
  readonly moisture: Moisture;
  readonly names: string[];
}

/** Every temperature and moisture that the joint meets, once, with what is at it. */
function environments(
  { loadCases, conditions = [] }: Project,
  { joint, adhesive }: ResolvedJoint,
  caseId: string | undefined,
): Environment[] {
  const found: Environment[] = [];
  const add = (name: string | null, temperature: number, moisture: Moisture): void => {
    const same = found.find((one) => one.temperature === temperature && one.moisture === moisture);
    const names = name === null ? [] : [name];
    if (!same) found.push({ temperature, moisture, names });
    else if (name !== null && !same.names.includes(name)) same.names.push(name);
  };
  const carried = joint.loads.filter((load) => caseId === undefined || load.case === caseId);
  const cases = carried.map((load) => loadCases.find(({ id }) => id === load.case)!);
  for (const { name, temperature, moisture } of cases) add(name, temperature, moisture);
  if (cases.some(({ everyCondition }) => everyCondition)) {
    for (const { name, temperature, moisture } of conditions) add(name, temperature, moisture);
  }
  // Without a case the adhesive's own rows say what there is to know.
  if (cases.length === 0) {
    for (const { temperature, moisture } of adhesive.states) add(null, temperature, moisture);
  }
  return found.sort(
    (a, b) => a.moisture.localeCompare(b.moisture) || a.temperature - b.temperature,
  );
}

/**
 * The springs at one temperature and moisture.
 * @throws ModelError when the adhesive has no such properties or the joint cannot be assembled
 */
export const springsAt = (
  { settings }: Project,
  { input, adhesive }: ResolvedJoint,
  at: { readonly temperature: number; readonly moisture: Moisture },
) => jointSprings(input, adhesive, at, settings.adherendShear);

export function springs(
  project: Project,
  resolved: ResolvedJoint,
  caseId: string | undefined,
): Reply<SpringsReport> {
  const { joint, index, typical } = resolved;
  if (caseId !== undefined && !joint.loads.some((load) => load.case === caseId)) {
    return refuse(
      'not-found',
      `joints.${index}.loads`,
      `The joint "${joint.name}" carries no load case "${caseId}". It has: ${joint.loads.map((load) => load.case).join(', ') || 'none'}.`,
    );
  }
  const flags: Flag[] = [];
  const states = environments(project, resolved, caseId).map((at): SpringState => {
    const { springs: found, shear, outsideTable } = springsAt(project, resolved, at);
    if (outsideTable) {
      flags.push({
        code: 'outside-table',
        ...say`${degreesCelsius(at.temperature)} ${at.moisture} lies beyond the adhesive's ${at.moisture} properties; the nearest row is used, not an extrapolation.`,
      });
    }
    return { ...at, springs: found, shear };
  });
  if (joint.type === 'flat-single') {
    flags.push({
      code: 'lap-turns',
      message:
        'A flat single lap also turns under its load and gives by that as well: it is left out of its pull.',
    });
  }
  const { print, flags: tall } = printingOf(project, resolved);
  return ok({
    jointId: joint.id,
    name: joint.name,
    description: describeJoint(joint),
    flat: joint.type === 'flat-single' || joint.type === 'flat-double',
    overlap: joint.overlap,
    states,
    mass: massOf(project, resolved),
    print,
    typical: typical.size > 0,
    flags: [...flags, ...tall],
  });
}
