/** What a stress report carries beside the curves: ledgers, edge moments, the map around the bond. */
import { stressMap } from '../../model/curves/stress-map.ts';
import { flatEdgeMoments, isFlatSingle } from '../../model/layered/edge-loads.ts';
import type { JointState } from '../../model/margins/state.ts';
import type { Settings } from '../../shared/project.ts';
import type { EdgeMomentReport, Ledger, StressMap } from '../../shared/reports.ts';
import { degrees } from './margins.ts';

export const ledgersOf = ({ assembly, ledgers }: JointState, fitting: number): Ledger[] =>
  ledgers.map((ledger, j) => {
    const { name, gap } = assembly.bonds[j]!;
    return {
      part: name,
      gap,
      rows: [
        { name: 'environment', factor: ledger.environment },
        { name: 'gap', factor: ledger.gap },
        { name: 'ageing', factor: ledger.ageing },
        { name: 'scatter', factor: ledger.scatter },
        { name: 'fitting', factor: 1 / fitting },
      ],
      strength: ledger.left,
      left: ledger.left / fitting,
    };
  });

export function edgeMomentOf(
  { assembly, loadCase }: JointState,
  settings: Settings,
  loadFactor: number,
): EdgeMomentReport | null {
  if (!isFlatSingle(assembly)) return null;
  const both = flatEdgeMoments(assembly, loadCase.loads.force * loadFactor);
  const ends = ({ root, mouth }: typeof both.hartSmith) => ({
    root: root.factor,
    mouth: mouth.factor,
  });
  return {
    chosen: settings.edgeMoment ?? 'goland-reissner',
    golandReissner: ends(both.golandReissner),
    hartSmith: ends(both.hartSmith),
  };
}

export function mapOf(state: JointState, loadFactor: number, clockings: number): StressMap {
  const { x, theta, bonds } = stressMap(state, loadFactor, clockings);
  return { x, theta: theta.map(degrees), bonds };
}
