/** Edge moment of a flat single lap at both ends, by both methods. */
import { type Step, step } from '../card.ts';
import {
  alikeFactor,
  lever,
  moment,
  separateFactor,
  solidPair,
  unlikeFactor,
} from '../flat-lap/edge-moment.card.ts';
import { pairStiffness } from '../flat-lap/edge-moment.ts';
import type { Part } from '../joint/assembly.ts';
import { flatEdgeMoments } from '../layered/edge-loads.ts';
import { plateProperties, shellOf } from '../layered/shell.ts';
import type { Given } from './context.ts';

type End = 'root' | 'mouth';

/** @param factor on the loads of the case */
export function edgeMomentWorking({ state, settings }: Given, factor: number): Step[] {
  const { tube, outers, bonds, overlap } = state.assembly;
  const { gap, width } = bonds[0]!;
  const force = state.loadCase.loads.force * factor;
  const both = flatEdgeMoments(state.assembly, force);
  const root = adherendOf(outers[0]!, width);
  const mouth = adherendOf(tube, width);
  const D_12 = pairStiffness({ root, mouth });
  const P = force / width;
  const chosen = settings.edgeMoment ?? 'goland-reissner';
  const alike =
    root.membraneStiffness === mouth.membraneStiffness &&
    root.bendingStiffness === mouth.bendingStiffness;
  const factorsAt = (end: End): Step[] => {
    const [own, other] = end === 'root' ? [root, mouth] : [mouth, root];
    const { golandReissner, hartSmith } = both;
    const stiffer = Math.max(own.bendingStiffness, other.bendingStiffness);
    const share = own.membraneStiffness / (own.membraneStiffness + other.membraneStiffness);
    return [
      alike
        ? step(
            alikeFactor,
            { D_12, D: own.bendingStiffness, P, L: overlap },
            golandReissner[end].factor,
          )
        : step(
            unlikeFactor,
            {
              v_i: 2 * (1 - share),
              v_k: 2 * share,
              w: Math.sqrt(Math.max(P, 0) / D_12),
              r_i: Math.sqrt(D_12 / own.bendingStiffness),
              r_k: Math.sqrt(D_12 / other.bendingStiffness),
              L: overlap,
            },
            golandReissner[end].factor,
          ),
      step(
        separateFactor,
        {
          D_i: own.bendingStiffness,
          D_k: other.bendingStiffness,
          D_s: stiffer,
          P,
          L: overlap,
        },
        hartSmith[end].factor,
      ),
      momentStep(chosen, end, P, both),
    ];
  };
  return [
    step(lever, { t_1: mouth.thickness, t_2: root.thickness, h: gap }, both.lever),
    step(
      solidPair,
      {
        D_1: root.bendingStiffness,
        D_2: mouth.bendingStiffness,
        t_1: root.thickness,
        t_2: mouth.thickness,
        A_1: root.membraneStiffness,
        A_2: mouth.membraneStiffness,
      },
      D_12,
    ),
    ...factorsAt('root'),
    ...factorsAt('mouth'),
  ];
}

function momentStep(
  chosen: 'goland-reissner' | 'hart-smith',
  end: End,
  P: number,
  { golandReissner, hartSmith, lever: e }: ReturnType<typeof flatEdgeMoments>,
): Step {
  const own = (chosen === 'hart-smith' ? hartSmith : golandReissner)[end];
  const k = chosen === 'hart-smith' ? 'k_HS' : 'k_GR';
  return step(moment(chosen, end), { [k]: own.factor, P, e }, own.moment);
}

function adherendOf(part: Part, width: number) {
  const { thickness } = part.root;
  const size = { radius: width, thickness, flat: true };
  const { cxx, bending } = shellOf(plateProperties(part.material), size, 'both', 0);
  return { thickness, membraneStiffness: cxx, bendingStiffness: bending };
}
