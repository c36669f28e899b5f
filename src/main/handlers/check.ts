/** The whole project: every joint with its lowest margin. */
import { MODEL_VERSION } from '../../model/version.ts';
import type { Project } from '../../shared/project.ts';
import { ok } from '../../shared/reply.ts';
import type { CheckReport, JointSummary, MarginState } from '../../shared/reports.ts';
import { jointFlags } from './flags.ts';
import { guarded } from './guarded.ts';
import { describeJoint } from './labels.ts';
import { governingModes, toMargin } from './margins.ts';
import { resolveJoint } from './resolve.ts';

function summarise(project: Project, index: number): JointSummary {
  const joint = project.joints[index]!;
  const common = {
    jointId: joint.id,
    name: joint.name,
    description: describeJoint(joint),
    overlap: joint.overlap,
  };
  const { settings } = project;
  const reply = guarded(index, () => {
    const resolved = resolveJoint(project, index);
    const [lowest] = governingModes(resolved, settings, true);
    return ok({
      lowest: lowest ? toMargin(lowest, resolved, settings.targetMargin, '') : null,
      flags: jointFlags(resolved),
    });
  });
  return reply.ok
    ? { ...common, ...reply.value, refused: null }
    : { ...common, lowest: null, flags: [], refused: reply.error };
}

export function check(project: Project): CheckReport {
  const joints = project.joints.map((_joint, index) => summarise(project, index));
  const counts: Record<MarginState, number> = { fails: 0, low: 0, holds: 0 };
  for (const { lowest } of joints) if (lowest) counts[lowest.state]++;
  return {
    project: project.name,
    targetMargin: project.settings.targetMargin,
    joints,
    counts,
    modelVersion: MODEL_VERSION,
  };
}
