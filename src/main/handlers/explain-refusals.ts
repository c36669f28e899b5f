/** Why a mode has no margin here, in plain words. */
import { assemble } from '../../model/joint/assembly.ts';
import { interlaminarStrengths } from '../../model/margins/peel-modes.ts';
import type { Mode } from '../../shared/reports.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';

const modes: Readonly<Record<Mode, true>> = {
  'adhesive-yield': true,
  'adhesive-strain': true,
  'adhesive-peel': true,
  'peel-shear': true,
  interlaminar: true,
  'first-ply': true,
  fracture: true,
  'durability-trough': true,
  'cyclic-shear': true,
  'cyclic-damage': true,
  'metal-yield': true,
  'metal-ultimate': true,
  'laminate-strength': true,
};

export const isMode = (subject: string): subject is Mode => Object.hasOwn(modes, subject);

/** Modes that limit the service of a joint: an ultimate case does not ask for them. */
const service: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-yield',
  'peel-shear',
  'durability-trough',
  'cyclic-shear',
  'cyclic-damage',
  'metal-yield',
]);

/** @param asked the cases that the question is about */
export function whyNot(
  mode: Mode,
  resolved: ResolvedJoint,
  asked: readonly ResolvedCase[],
): string {
  return (
    lacking(mode, resolved) ??
    notAsked(mode, asked) ??
    (asked.every(({ input }) => Object.values(input.loads).every((load) => load === 0))
      ? 'No load acts on the joint there: without load there is no margin.'
      : 'No factor on these loads reaches this mode: they do not act on it.')
  );
}

/** What the project does not give. */
function lacking(mode: Mode, { adhesive, input }: ResolvedJoint): string | null {
  const { tube, outers } = assemble(input, 'nominal');
  const walls = [tube, ...outers].map(({ material }) => material);
  const kinds = new Set(walls.map(({ kind }) => kind));
  switch (mode) {
    case 'adhesive-peel':
    case 'peel-shear':
      return adhesive.states.some(({ peelStrength }) => peelStrength === undefined)
        ? 'Peel is not judged: the adhesive has no peel strength at every temperature and moisture. Give it one from coupons.'
        : null;
    case 'fracture':
      return adhesive.fracture
        ? null
        : 'Fracture is not judged: the adhesive has no fracture energies. Give it those of your coupons.';
    case 'cyclic-shear':
    case 'cyclic-damage':
      return adhesive.fatigue
        ? null
        : 'Cycles are not judged: the adhesive has no S-N line. Give it one from coupons.';
    case 'interlaminar':
      if (walls.every(({ kind }) => kind === 'isotropic')) {
        return 'No wall of this joint is a laminate: it has no plies to part.';
      }
      return walls.some((material) => interlaminarStrengths(material) !== null)
        ? null
        : 'Failure between plies is not judged: the laminate has no strengths across and between its plies.';
    case 'first-ply':
      return kinds.has('laminate')
        ? null
        : 'No wall of this joint is given as a stack of plies: there is no first ply to judge.';
    case 'metal-yield':
    case 'metal-ultimate':
      return kinds.has('isotropic') ? null : 'No wall of this joint is a metal.';
    case 'laminate-strength':
      return kinds.has('orthotropic')
        ? null
        : 'No wall of this joint is a laminate given as one material; a stack of plies is judged by its first ply.';
    default:
      return null;
  }
}

function notAsked(mode: Mode, cases: ResolvedJoint['cases']): string | null {
  const kinds = new Set(cases.map(({ loadCase }) => loadCase.kind));
  if (mode === 'cyclic-shear' && !kinds.has('cyclic')) {
    return 'Cyclic shear is asked of cyclic cases only, and there is none here.';
  }
  if (mode === 'cyclic-damage') {
    const occasions = new Set(cases.flatMap(({ input }) => input.occasion ?? []));
    return occasions.size < 2
      ? 'Cycles add up over two cyclic cases or more: ask for it without naming a case, of a joint that has them.'
      : null;
  }
  if (service.has(mode) && !kinds.has('limit') && !kinds.has('cyclic')) {
    return 'This mode limits the service of a joint: it is asked of limit and cyclic cases, not of an ultimate one.';
  }
  return null;
}
