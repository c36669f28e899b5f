/** What stands side by side, and the part of the project that a comparison needs. */
import type { Joint, Project } from '../../shared/project.ts';
import type { CompareReport } from '../../shared/reports-compare.ts';
import type { Path } from './project.ts';

export interface Column {
  readonly kind: 'joint' | 'variant';
  readonly id: string;
}

/** The core takes two to four. */
export const MOST_COLUMNS = 4;

export const sameColumn = (a: Column, b: Column): boolean => a.kind === b.kind && a.id === b.id;

export const columnKey = ({ kind, id }: Column): string => `${kind} ${id}`;

/** `A` for the first column: how drawings and notes call it. */
export const letterOf = (index: number): string => String.fromCharCode(65 + index);

/** Where the column's joint stands in the project, and the joint; null when it is not there any more. */
export function found(
  project: Project,
  { kind, id }: Column,
): { readonly path: Path; readonly joint: Joint } | null {
  if (kind === 'joint') {
    const index = project.joints.findIndex((joint) => joint.id === id);
    const joint = project.joints[index];
    return joint ? { path: ['joints', index], joint } : null;
  }
  const index = project.variants?.findIndex(({ joint }) => joint.id === id) ?? -1;
  const variant = project.variants?.[index];
  return variant ? { path: ['variants', index, 'joint'], joint: variant.joint } : null;
}

export const columnName = (project: Project, column: Column): string =>
  found(project, column)?.joint.name ?? column.id;

/** What stands beside a joint until something else is chosen: its variants, as many as there is room for. */
export const variantsOf = (project: Project, jointId: string): Column[] =>
  (project.variants ?? [])
    .filter(({ of }) => of === jointId)
    .slice(0, MOST_COLUMNS - 1)
    .map(({ joint }) => ({ kind: 'variant', id: joint.id }));

/** Load cases that every column carries. */
export function sharedCases(
  project: Project,
  columns: readonly Column[],
): readonly { readonly id: string; readonly name: string }[] {
  const joints = columns.flatMap((column) => found(project, column)?.joint ?? []);
  return project.loadCases.filter(({ id }) =>
    joints.every(({ loads }) => loads.some((load) => load.case === id)),
  );
}

export interface Excerpt {
  readonly document: Project;
  /** A place in the excerpt as a place in the whole project. */
  readonly inWhole: (field: string) => string;
}

/**
 * The project with these columns alone, so that a mistake in another joint does not stop the comparison.
 * The joint that a variant is of comes along: without it the variant would be refused.
 */
export function excerptOf(project: Project, columns: readonly Column[]): Excerpt {
  const has = (kind: Column['kind'], id: string): boolean =>
    columns.some((column) => sameColumn(column, { kind, id }));
  const all = (project.variants ?? []).map((variant, place) => ({ variant, place }));
  const variants = all.filter(({ variant }) => has('variant', variant.joint.id));
  const joints = project.joints
    .map((joint, place) => ({ joint, place }))
    .filter(
      ({ joint: { id } }) => has('joint', id) || variants.some(({ variant }) => variant.of === id),
    );
  const places = { joints, variants };
  return {
    document: {
      ...project,
      joints: joints.map(({ joint }) => joint),
      variants: variants.map(({ variant }) => variant),
    },
    inWhole: (field) =>
      field.replace(/^(joints|variants)\.(\d+)(?=\.|$)/, (text, list: string, index: string) => {
        const place = places[list as keyof typeof places][Number(index)]?.place;
        return place === undefined ? text : `${list}.${place}`;
      }),
  };
}

/** Refusals of single columns, told as places in the whole project. */
export const reportInWhole = (
  report: CompareReport,
  inWhole: (field: string) => string,
): CompareReport => ({
  ...report,
  columns: report.columns.map((column) =>
    column.refused
      ? { ...column, refused: { ...column.refused, field: inWhole(column.refused.field) } }
      : column,
  ),
});
