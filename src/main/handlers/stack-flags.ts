/** What a reader must know about the walls of a joint that are stacks of plies. */
import type { Assembly } from '../../model/joint/assembly.ts';
import type { LaminateMaterial } from '../../model/joint/types.ts';
import { freeDifferences } from '../../model/laminate/free-constants.ts';
import { stiffnessOf } from '../../model/laminate/stack.ts';
import { STRIP_FACES, TUBE_FACES, traitsOf } from '../../model/laminate/symmetry.ts';
import { millimetres, type Said, say, smallMillimetres } from '../../model/said.ts';
import { CURVATURE_HELD, heldAgainstFree } from '../../shared/laminate-words.ts';
import type { Flag } from '../../shared/reports.ts';

/** Farther from its plies' own thickness than this, a wall is not what was laid up. */
const SCALED = 0.01;
/** Farther than this, the stack or the wall is likely a mistake (common practice, no source). */
const FAR = 0.1;

export function stackFlags({ tube, outers, flat }: Assembly): Flag[] {
  return [tube, ...outers].flatMap(({ name, material }): Flag[] =>
    material.kind === 'laminate'
      ? [...coupledFlags(name, material, flat), ...scaledFlags(name, material)]
      : [],
  );
}

function coupledFlags(name: string, material: LaminateMaterial, flat: boolean): Flag[] {
  const { symmetric, reasons } = traitsOf(material.stack, flat ? STRIP_FACES : TUBE_FACES);
  return reasons.map((reason) => {
    const unbalanced = reason.startsWith('Not balanced');
    const held = unbalanced || symmetric ? '' : say` ${heldText(material, flat)}`;
    return {
      code: unbalanced ? 'stack-unbalanced' : 'stack-unsymmetric',
      ...say`The ${name}'s stack: ${reason} It bends or twists as it stretches, which the joint's model leaves out.${held}`,
    };
  });
}

function heldText(material: LaminateMaterial, flat: boolean): Said {
  const both = heldAgainstFree(material, freeDifferences(stiffnessOf(material.stack)), flat);
  return both.message === '' ? say`${CURVATURE_HELD}.` : say`${CURVATURE_HELD}: ${both}.`;
}

function scaledFlags(name: string, { stack, scale }: LaminateMaterial): Flag[] {
  if (Math.abs(scale - 1) <= SCALED) return [];
  const { plies } = stack;
  const wall = plies.reduce((sum, { thickness }) => sum + thickness, 0);
  const count = plies.length === 1 ? 'one ply' : `${plies.length} plies`;
  const own = plies[0]!.ply.thickness;
  const far =
    Math.abs(1 / scale - 1) > FAR || Math.abs(scale - 1) > FAR
      ? ' That is far from what is laid up: change the stack, the ply or the wall.'
      : '';
  return [
    {
      code: 'stack-scaled',
      ...say`The ${name}: ${count} of ${smallMillimetres(own, 4)} make${plies.length === 1 ? 's' : ''} ${millimetres(wall / scale, 4)}, its wall is ${millimetres(wall, 4)}: they are scaled to it.${far}`,
    },
  ];
}
