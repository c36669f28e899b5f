/** One column of a comparison: everything that is set side by side, of one joint. */
import { assemble } from '../../model/joint/assembly.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { overStates } from '../../model/margins/over-states.ts';
import type { ModeResult } from '../../model/margins/result.ts';
import { refineStrength } from '../../model/margins/strength-clocking.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { ok, type Reply, type RequestError } from '../../shared/reply.ts';
import type { StressReport } from '../../shared/reports.ts';
import type { BondShare, Carried, CompareColumn } from '../../shared/reports-compare.ts';
import { jointFlags } from './flags.ts';
import { guarded } from './guarded.ts';
import { stressOf } from './joint.ts';
import { describeJoint, modeLabel } from './labels.ts';
import { degrees, type Governing, governingModes, questionOf, toMargin } from './margins.ts';
import { massOf, printingOf } from './mass.ts';
import { type ResolvedCase, type ResolvedJoint, resolveAlone } from './resolve.ts';
import { springsAt } from './springs.ts';

/** A joint to set beside others, and where it stands in the project. */
export interface Place {
  readonly kind: 'joint' | 'variant';
  readonly joint: Joint;
  readonly where: string;
}

/** How bond or plies end in one case. */
const bondFailures: ReadonlySet<Mode> = new Set<Mode>([
  'adhesive-strain',
  'adhesive-peel',
  'interlaminar',
  'fracture',
]);

export interface Strength {
  readonly carried: Carried;
  /** Clocking at which the bond is weakest in shear, degrees. */
  readonly theta: number;
}

/** The worst of the joint's gaps; null where no load acts in the case. */
function strengthIn(
  { settings }: Project,
  resolved: ResolvedJoint,
  compared: ResolvedCase,
): Strength | null {
  const question = questionOf({ ...resolved, cases: [compared] }, settings);
  const found = [...overStates(question, { only: bondFailures })].flatMap(({ state, modes }) =>
    modes
      .filter(({ mode }) => bondFailures.has(mode))
      .map((result) => refineStrength(state, result)),
  );
  const lowest = (results: readonly ModeResult[]): ModeResult | undefined =>
    results.toSorted((a, b) => a.reached - b.reached)[0];
  const shear = lowest(found.filter(({ mode }) => mode === 'adhesive-strain'));
  // Where the bond fails in shear before, peel and plies are no failure of their own.
  const first = lowest(found.filter(({ shearFirst }) => !shearFirst));
  if (!shear || !first) return null;
  return {
    carried: {
      shear: shear.reached,
      first: { factor: first.reached, label: modeLabel(first.mode, first.part) },
    },
    theta: degrees(shear.theta),
  };
}

function sharesOf(resolved: ResolvedJoint, stress: StressReport): BondShare[] {
  const { bonds, overlap } = assemble(resolved.input, 'nominal');
  const all = stress.bonds.reduce((sum, { force }) => sum + force, 0);
  return stress.bonds.map(({ part, force, peak, layered, strain }, j) => ({
    part,
    force,
    share: all === 0 ? 0 : force / all,
    area: bonds[j]!.width * overlap,
    peakShear: peak.value,
    peakPeel: layered.peak.value,
    strain,
  }));
}

const nothing = {
  margins: [],
  lowest: null,
  stress: null,
  bonds: [],
  carried: null,
  mass: null,
  print: null,
  stiffness: null,
  flags: [],
} as const;

/** What the columns are compared in: one case at one clocking, degrees. */
export interface Common {
  readonly caseId: string;
  readonly theta: number;
}

/** A column that can be computed, and how: its margins are there. */
export interface Column {
  readonly place: Place;
  readonly resolved: ResolvedJoint;
  readonly rows: readonly Governing[];
}

/** Strength of a column's bond in a case; null where it has none there. */
export function strengthOf(
  project: Project,
  { place, resolved }: Column,
  caseId: string,
): Strength | null {
  const found = resolved.cases.find(({ loadCase }) => loadCase.id === caseId);
  if (!found) return null;
  const reply = guardedAt(place, () => ok(strengthIn(project, resolved, found)));
  return reply.ok ? reply.value : null;
}

/** The rows of one column, or why there are none. */
export function open(project: Project, place: Place): Column | RequestError {
  const reply = guardedAt(place, () => {
    const resolved = resolveAlone(project, place.joint);
    return ok({ place, resolved, rows: governingModes(resolved, project.settings) });
  });
  return reply.ok ? reply.value : reply.error;
}

/** The model's complaint, at the place that the joint really has. */
export function guardedAt<T>({ where }: Place, compute: () => Reply<T>): Reply<T> {
  const reply = guarded(0, compute);
  if (reply.ok) return reply;
  const field = reply.error.field.replace(/^joints\.0/, where);
  return { ok: false, error: { ...reply.error, field } };
}

const headOf = ({ kind, joint }: Place) => ({
  id: joint.id,
  kind,
  name: joint.name,
  description: describeJoint(joint),
  overlap: joint.overlap,
});

export const refusedColumn = (place: Place, refused: RequestError): CompareColumn => ({
  ...headOf(place),
  ...nothing,
  refused,
});

export function columnOf(
  project: Project,
  { place, resolved, rows }: Column,
  common: Common | null,
  strength: Strength | null,
): CompareColumn {
  const reply = guardedAt(place, () => {
    const { settings } = project;
    const margins = rows.map((row) => toMargin(row, resolved, settings.targetMargin, ''));
    const { print, flags } = printingOf(project, resolved);
    const found = resolved.cases.find(({ loadCase }) => loadCase.id === common?.caseId);
    const focus = { ...common, gapState: 'nominal' as const };
    const stress = found ? stressOf(project, resolved, focus, () => rows) : ok(null);
    if (!stress.ok) return stress;
    const at = found?.loadCase ?? resolved.adhesive.states[0]!;
    const { temperature, moisture } = at;
    const { springs, shear } = springsAt(project, resolved, { temperature, moisture });
    const names = found ? [found.loadCase.name] : [];
    return ok({
      ...headOf(place),
      refused: null,
      margins,
      lowest: margins[0] ?? null,
      stress: stress.value,
      bonds: stress.value ? sharesOf(resolved, stress.value) : [],
      carried: strength?.carried ?? null,
      mass: massOf(project, resolved),
      print,
      stiffness: { temperature, moisture, names, springs, shear },
      flags: [...jointFlags(resolved), ...flags],
    } satisfies CompareColumn);
  });
  return reply.ok ? reply.value : refusedColumn(place, reply.error);
}
