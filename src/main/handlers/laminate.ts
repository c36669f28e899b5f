/** The request about one laminate: its stack, stiffness and properties at a wall thickness. */

import { ModelError } from '../../model/errors.ts';
import {
  flexuralConstants,
  inPlaneConstants,
  throughConstants,
} from '../../model/laminate/constants.ts';
import { freeDifferences } from '../../model/laminate/free-constants.ts';
import { rowsOf } from '../../model/laminate/plane.ts';
import { makeStack, stiffnessOf, thicknessOf } from '../../model/laminate/stack.ts';
import { STRIP_FACES, TUBE_FACES, traitsOf } from '../../model/laminate/symmetry.ts';
import { millimetres, type Said, say, smallMillimetres } from '../../model/said.ts';
import { CURVATURE_HELD } from '../../shared/laminate-words.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { LaminatePlane, LaminateReport } from '../../shared/reports.ts';
import { readStack } from '../../shared/stack-notation.ts';

const heldNote = (free: Partial<LaminatePlane>): string =>
  Object.keys(free).length > 0
    ? `${CURVATURE_HELD}; beside them those of the wall free to bend and twist, where they differ by more than 1 %.`
    : `${CURVATURE_HELD}; those of the wall free to bend and twist differ by no more than 1 %.`;

export function describeLaminate(
  project: Project,
  adherendId: string,
  wall: number | undefined,
  flat: boolean,
): Reply<LaminateReport> {
  const index = project.adherends.findIndex(({ id }) => id === adherendId);
  const adherend = project.adherends[index];
  if (adherend?.kind !== 'laminate') {
    return refuse(
      'not-found',
      'adherends',
      `There is no laminate with the id "${adherendId}" in this project.`,
    );
  }
  const ply = project.plies!.find(({ id }) => id === adherend.ply)!;
  const reading = readStack(adherend.stack);
  if (!reading.ok) return refuse('bad-input', `adherends.${index}.stack`, reading.message);
  const own = ply.thickness * reading.angles.length;
  try {
    const stack = makeStack(ply, reading.angles, wall ?? own);
    const stiffness = stiffnessOf(stack);
    const plane = inPlaneConstants(stiffness);
    const bending = flexuralConstants(stiffness);
    const through = throughConstants(stack);
    const traits = traitsOf(stack, flat ? STRIP_FACES : TUBE_FACES);
    const free = freeDifferences(stiffness);
    const thickness = thicknessOf(stack);
    const notes: Said[] = traits.reasons.map((message) => ({ message }));
    if (plane.curvatureHeld) notes.push({ message: heldNote(free) });
    if (Math.abs(thickness / own - 1) > 0.001) {
      notes.push(
        say`Scaled: ${reading.angles.length} plies of ${smallMillimetres(ply.thickness)} make ${millimetres(own, 4)}, the wall is ${millimetres(thickness, 4)}.`,
      );
    }
    return ok({
      adherendId,
      stack: reading.canonical,
      plies: stack.plies.map(({ angle, thickness: t }) => ({ angle, thickness: t })),
      plyThickness: own,
      wall: thickness,
      symmetric: traits.symmetric,
      balanced: traits.balanced,
      notes,
      a: rowsOf(stiffness.a),
      b: rowsOf(stiffness.b),
      d: rowsOf(stiffness.d),
      plane: {
        axialModulus: plane.axialModulus,
        hoopModulus: plane.hoopModulus,
        shearModulus: plane.shearModulus,
        poisson: plane.poisson,
        axialExpansion: plane.axialExpansion,
        hoopExpansion: plane.hoopExpansion,
      },
      curvatureHeld: plane.curvatureHeld,
      free,
      bending: { axialModulus: bending.axialModulus, hoopModulus: bending.hoopModulus },
      through: {
        modulus: through.modulus,
        shearModulus: through.axialShearModulus,
        expansion: through.expansion,
        interlaminarTension: through.interlaminarTension,
        interlaminarShear: through.interlaminarShear,
      },
    });
  } catch (error) {
    if (!(error instanceof ModelError)) throw error;
    const plyIndex = project.plies!.indexOf(ply);
    return refuse('bad-input', `plies.${plyIndex}`, error.said);
  }
}
