/** What a joint weighs and how many layers it takes to print. */
import { assemble } from '../../model/joint/assembly.ts';
import {
  jointMass,
  MOST_LAYERS,
  printOf,
  TALLEST_PRINT,
  USUAL_LAYER,
} from '../../model/mass/joint-mass.ts';
import { millimetres, say } from '../../model/said.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { adherendReferences } from '../../shared/project-rules.ts';
import type { Flag } from '../../shared/reports.ts';
import type { MassReport, PrintReport } from '../../shared/reports-springs.ts';
import type { ResolvedJoint } from './resolve.ts';

/** kg/m³; that of a laminate is its ply's. */
function densityOf(project: Project, adherendId: string): number | undefined {
  const adherend = project.adherends.find(({ id }) => id === adherendId)!;
  if (adherend.kind !== 'laminate') return adherend.density;
  return project.plies!.find(({ id }) => id === adherend.ply)!.density;
}

/** Materials of a joint that have no density, by name. */
function unknown(project: Project, joint: Joint): string[] {
  const ids = new Set(adherendReferences(joint).map(([, id]) => id));
  const parts = project.adherends.filter(
    ({ id }) => ids.has(id) && densityOf(project, id) === undefined,
  );
  const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive)!;
  return [...parts, ...(adhesive.density === undefined ? [adhesive] : [])].map(({ name }) => name);
}

export function massOf(project: Project, { joint, input }: ResolvedJoint): MassReport {
  // The tube first, then the outer walls in the order of the assembly.
  const [tube, ...outers] = adherendReferences(joint).map(([, id]) => densityOf(project, id));
  const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive)!.density;
  const mass = jointMass(assemble(input, 'nominal'), { tube, outers, adhesive });
  return {
    ...mass,
    adhesiveVolume: mass.bonds.reduce((sum, { volume }) => sum + volume, 0),
    without: unknown(project, joint),
  };
}

export interface PrintOf {
  readonly print: PrintReport;
  readonly flags: readonly Flag[];
}

export function printingOf({ settings }: Project, { joint }: ResolvedJoint): PrintOf {
  const { layerThickness, base } = settings.printing ?? { layerThickness: USUAL_LAYER, base: 0 };
  const { height, layers, tall } = printOf(joint.overlap, layerThickness, base);
  const flag = {
    code: 'tall-print',
    ...say`The sleeve is ${millimetres(height, 4)} tall and takes ${layers} layers; a print is usually not above ${MOST_LAYERS} layers or ${millimetres(TALLEST_PRINT)} (common practice, no source).`,
  };
  return { print: { layerThickness, height, layers }, flags: tall ? [flag] : [] };
}
