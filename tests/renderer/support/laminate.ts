/** A project of plies, and what the core would say of them: figures that are easy to recognise. */
import { typicalPly } from '../../../src/renderer/size/stack/new-laminate.ts';
import type { Laminate, Ply, Project } from '../../../src/shared/project.ts';
import type { LaminateReport } from '../../../src/shared/reports.ts';
import { readStack } from '../../../src/shared/stack-notation.ts';
import { makeProject } from './project.ts';

export const ply: Ply = { ...typicalPly, id: 'ud', name: 'Carbon ply' };

export const laminate: Laminate = {
  id: 'plies',
  name: 'Tube of plies',
  kind: 'laminate',
  ply: 'ud',
  stack: '[0/±45/90]s',
  source: { kind: 'tested', text: 'drawing' },
};

/** Boom tip and Boom root are made of it; the plates stay as they are. */
export function makeLaminateProject(stack = laminate.stack): Project {
  const project = makeProject();
  return {
    ...project,
    plies: [structuredClone(ply)],
    adherends: [...project.adherends, { ...laminate, stack }],
    joints: project.joints.map((joint) =>
      'tube' in joint ? { ...joint, tube: { ...joint.tube, adherend: 'plies' } } : joint,
    ),
  };
}

/** The axial modulus follows the share of axial plies, so that a test sees which stack it is about. */
export function makeLaminateReport(
  project: Project,
  adherendId: string,
  wall: number | undefined,
  flat = false,
): LaminateReport {
  const found = project.adherends.find(({ id }) => id === adherendId);
  if (found?.kind !== 'laminate') throw new Error(`${adherendId} is no laminate`);
  const reading = readStack(found.stack);
  if (!reading.ok) throw new Error(reading.message);
  const { angles } = reading;
  const own = angles.length * 0.2;
  const made = wall ?? own;
  const symmetric = angles.every((angle, i) => angle === angles.at(-1 - i));
  const off = (angle: number): number => angles.filter((one) => one === angle).length;
  const balanced = angles.every(
    (angle) => Math.abs(angle) % 90 === 0 || off(angle) === off(-angle),
  );
  const axial = angles.filter((angle) => angle === 0).length / angles.length;
  return {
    adherendId,
    stack: reading.canonical,
    plies: angles.map((angle) => ({ angle, thickness: made / angles.length })),
    plyThickness: own,
    wall: made,
    symmetric,
    balanced,
    notes: [
      ...(symmetric ? [] : [`The stack is not symmetric${flat ? ' from its lower face' : ''}.`]),
      ...(balanced ? [] : ['The stack is not balanced.']),
      ...(made === own ? [] : [`Plies scaled from ${own.toFixed(1)} to ${made.toFixed(1)} mm.`]),
    ].map((message) => ({ message })),
    a: [
      [151_000, 32_000, 0],
      [32_000, 74_500, 0],
      [0, 0, 41_250],
    ],
    b: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, -1e-13],
    ],
    d: [
      [45_600, 8200, 1200],
      [8200, 12_300, 900],
      [1200, 900, 10_100],
    ],
    plane: {
      axialModulus: 20_000 + 100_000 * axial,
      hoopModulus: 33_400,
      shearModulus: 19_900,
      poisson: 0.312,
      axialExpansion: 1.25e-6,
      hoopExpansion: 4.5e-6,
    },
    curvatureHeld: !symmetric,
    free: symmetric ? {} : { axialModulus: 10_000 + 50_000 * axial, poisson: 0.154 },
    bending: { axialModulus: 81_200, hoopModulus: 21_300 },
    through: {
      modulus: 9000,
      shearModulus: 4100,
      expansion: 30e-6,
      interlaminarTension: 45,
      interlaminarShear: 75,
    },
  };
}
