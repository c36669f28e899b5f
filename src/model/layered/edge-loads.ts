/** Loads at the ends of a flat single lap, from its eccentric load path, for the layered lap. */
import { type EdgeMoments, edgeMoments } from '../flat-lap/edge-moment.ts';
import type { Assembly, Part } from '../joint/assembly.ts';
import type { EdgeLoads } from './of-joint.ts';
import { plateProperties, shellOf } from './shell.ts';

export type EdgeMethod = 'goland-reissner' | 'hart-smith';

export const isFlatSingle = (assembly: Assembly): boolean =>
  assembly.flat && assembly.bonds.length === 1;

/** Both methods' moments for a load on the whole width, N. */
export function flatEdgeMoments(assembly: Assembly, load: number): EdgeMoments {
  const { tube, outers, bonds, overlap } = assembly;
  const { width, gap } = bonds[0]!;
  const adherend = (part: Part, thickness: number) => {
    const size = { radius: width, thickness, flat: true };
    const shell = shellOf(plateProperties(part.material), size, 'both', 0);
    return { thickness, membraneStiffness: shell.cxx, bendingStiffness: shell.bending };
  };
  return edgeMoments({
    load: load / width,
    overlap,
    gap,
    root: adherend(outers[0]!, outers[0]!.root.thickness),
    mouth: adherend(tube, tube.root.thickness),
  });
}

/** Per unit of load, at that load: the factor falls as the load straightens its own path. */
export function flatEdgeLoads(assembly: Assembly, load: number, method: EdgeMethod): EdgeLoads {
  const both = flatEdgeMoments(assembly, load);
  const { root, mouth } = method === 'hart-smith' ? both.hartSmith : both.golandReissner;
  const half = both.lever / 2;
  return {
    moment: mouth.factor * half,
    shear: ((2 - root.factor - mouth.factor) * half) / assembly.overlap,
  };
}
