import type { Project } from '../../shared/project.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { Working } from '../../shared/reports.ts';
import type { ResolvedJoint } from './resolve.ts';

export function explain(_p: Project, _r: ResolvedJoint, _q: unknown): Reply<Working> {
  return refuse('bad-request', '', 'not yet');
}
