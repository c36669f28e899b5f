/** What a stack of plies makes of a wall, asked of the core. */
import type { Bridge } from '../../shared/contract.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { LaminateReport } from '../../shared/reports.ts';
import type { ProjectState } from './project.ts';

export type Describe = (
  adherendId: string,
  wall: number | undefined,
  flat: boolean,
) => Promise<Reply<LaminateReport>>;

export function makeDescribe(bridge: Bridge, project: ProjectState): Describe {
  return async (adherendId, wall, flat) => {
    const whole = project.plain();
    if (!whole) return refuse('internal', '', 'No project is open.');
    // Without the joints: a mistake in one of them says nothing about a laminate.
    const { variants: _variants, ...rest } = whole;
    const document = { ...rest, joints: [] };
    return bridge.ask('laminate.describe', {
      document,
      adherendId,
      flat,
      ...(wall === undefined ? {} : { wall }),
    });
  };
}
