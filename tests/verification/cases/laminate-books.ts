/** Stacks of angle plies, and a stack that is cooled: examples of a textbook. */
import { plyStates } from '../../../src/model/laminate/first-ply.ts';
import { turnBy } from '../../../src/model/laminate/plane.ts';
import { type Ply, reducedStiffness, turnStiffness } from '../../../src/model/laminate/ply.ts';
import { makeStack, respond, stiffnessOf } from '../../../src/model/laminate/stack.ts';
import { elasticPly } from '../../support/plies.ts';
import { type Case, lazy, printed, value } from '../case.ts';
import { figures } from './laminate-figures.ts';

const mallick = 'P. K. Mallick, Fiber-Reinforced Composites, 3rd ed., 2008';
const notebooks =
  "figures from public course notebooks that work the book's examples; the book's own were not seen";
const fibres = 0.6;
const t300 = (thickness: number, expansions: Partial<Ply> = {}): Ply =>
  elasticPly({
    axialModulus: (fibres * 220 + (1 - fibres) * 3.6) * 1e9,
    transverseModulus: 1e9 / (fibres / 220 + (1 - fibres) / 3.6),
    shearModulus: 1e9 / (fibres / 91.7 + (1 - fibres) / 1.33),
    poisson: fibres * 0.2 + (1 - fibres) * 0.35,
    thickness,
    ...expansions,
  });
const t300Inputs =
  'ply by the rule of mixtures, fibres 60 %: Ef = 220, Em = 3.6, Gf = 91.7, Gm = 1.33 GPa, νf = 0.2, νm = 0.35';
const thick = t300(0.006);
const stiffnessSI = (angles: readonly number[]) =>
  lazy(() => stiffnessOf(makeStack(thick, angles)));
const angleTwo = stiffnessSI([45, -45]);
const angleFour = stiffnessSI([45, -45, -45, 45]);
const angleThree = stiffnessSI([45, 0, -45]);

export const angleStacks: Case = {
  id: 'laminate-angle-plies',
  title: 'Stiffness of angle-ply stacks',
  source: `${mallick}, examples 3.6 and 3.7; ${notebooks}`,
  tag: 'second-hand',
  inputs: [t300Inputs, 'plies of 6 mm'],
  checks: [
    ...figures(
      'GPa',
      () => {
        const q = turnStiffness(reducedStiffness(thick), turnBy(45));
        return Object.fromEntries(Object.entries(q).map(([key, x]) => [key, x / 1e9]));
      },
      { c11: '40.1163', c12: '33.6079', c16: '31.3032', c66: '34.5680' },
      (key) => `${key.replace('c', 'Q̄')}, 45°`,
    ),
    ...figures(
      'N/m',
      () => ({ ...angleTwo().a }),
      { c11: '4.81395708e8', c12: '4.03294849e8', c66: '4.14815492e8' },
      (key) => `${key.replace('c', 'A')}, [45/-45]`,
    ),
    printed('|B16|, [45/-45]', 'N', '1126915.46', () => Math.abs(angleTwo().b.c16)),
    printed('D11, [45/-45]', 'N·m', '5776.7485', () => angleTwo().d.c11),
    printed('A11, [45/-45]s', 'N/m', '9.62791416e8', () => angleFour().a.c11),
    printed('D11, [45/-45]s', 'N·m', '46213.988', () => angleFour().d.c11),
    printed('D16, [45/-45]s', 'N·m', '27045.971', () => angleFour().d.c16),
    ...figures(
      'N/m',
      () => ({ ...angleThree().a }),
      { c11: '1.28561458e9', c22: '5.34337606e8', c66: '4.34340706e8' },
      (key) => `${key.replace('c', 'A')}, [45/0/-45]`,
    ),
  ],
};

const pulled = lazy(() => {
  const stack = makeStack(thick, [45, -45]);
  const answer = respond(stiffnessOf(stack), { force: [100_000, 0, 0] });
  const faces = plyStates(stack, { ...answer, deltaT: 0 });
  const middle = [0, 1, 2].map((i) => (faces[0]!.stress[i]! + faces[1]!.stress[i]!) / 2);
  return { answer, middle };
});
export const twist: Case = {
  id: 'laminate-twist',
  title: 'An unsymmetric stack twists under tension',
  source: `${mallick}, example 3.13; ${notebooks}`,
  tag: 'second-hand',
  inputs: [t300Inputs, '[45/-45], plies of 6 mm, Nx = 100 kN/m'],
  checks: [
    printed('εx', '', '7.7373e-4', () => pulled().answer.strain[0]),
    printed('εy', '', '-5.0667e-4', () => pulled().answer.strain[1]),
    printed('|κxy|', '1/m', '0.0604593', () => Math.abs(pulled().answer.curvature[2])),
    printed('σ1 in the middle of a ply', 'MPa', '6.2566', () => pulled().middle[0]! / 1e6),
    printed('σ2 in the middle of a ply', 'MPa', '2.0767', () => pulled().middle[1]! / 1e6),
    printed(
      '|τ12| in the middle of a ply',
      'MPa',
      '4.1667',
      () => Math.abs(pulled().middle[2]!) / 1e6,
    ),
  ],
};

const cooled = lazy(() => {
  const ply = t300(0.001, {
    axialModulus: 133.4e9,
    transverseModulus: 8.784e9,
    axialExpansion: -0.5e-6,
    transverseExpansion: 12e-6,
  });
  return respond(stiffnessOf(makeStack(ply, [0, 90])), { deltaT: -100 });
});
export const bimetal: Case = {
  id: 'laminate-cooling',
  title: 'An unsymmetric stack bends on cooling',
  source: `${mallick}, example 3.15; ${notebooks}`,
  tag: 'second-hand',
  inputs: [
    'ply: E1 = 133.4, E2 = 8.784 GPa, ν12 = 0.26 (the figures of the examples before, rounded)',
    'α1 = −0.5e-6, α2 = 12e-6 1/K; [0/90], plies of 1 mm, ΔT = −100 K',
  ],
  remarks: [
    'With E1 = 133.44 and E2 = 8.78438 GPa, unrounded, the curvature is 0.511672: the printed figure belongs to the rounded moduli.',
  ],
  checks: [
    printed('|κx|', '1/m', '0.511739', () => Math.abs(cooled().curvature[0])),
    printed('|κy|', '1/m', '0.511739', () => Math.abs(cooled().curvature[1])),
    value({
      name: 'κx + κy',
      unit: '1/m',
      expected: 0,
      computed: () => cooled().curvature[0] + cooled().curvature[1],
      tolerance: { absolute: 1e-12 },
      why: 'the two are printed as opposites; rounding alone',
    }),
  ],
};
