/** Two to four joints or variants side by side, in one load case, with what differs and why. */
import { differences } from '../../shared/joint-fields.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { CompareReport } from '../../shared/reports-compare.ts';
import { type JobContext, unwatched } from '../jobs/progress.ts';
import {
  type Column,
  columnOf,
  open,
  type Place,
  refusedColumn,
  type Strength,
  strengthOf,
} from './compare-column.ts';
import { sentencesOf } from './compare-words.ts';

export interface Wish {
  readonly columns: readonly ({ readonly joint: string } | { readonly variant: string })[];
  readonly caseId?: string | undefined;
}

/** Where a column's joint stands in the project. */
function placeOf(project: Project, column: Wish['columns'][number]): Reply<Place> {
  const isJoint = 'joint' in column;
  const id = isJoint ? column.joint : column.variant;
  const list = isJoint ? project.joints : (project.variants ?? []).map(({ joint }) => joint);
  const index = list.findIndex((joint) => joint.id === id);
  if (index < 0) {
    const what = isJoint ? 'joint' : 'variant';
    return refuse(
      'not-found',
      isJoint ? 'joints' : 'variants',
      `There is no ${what} "${id}" in this project. It has: ${list.map((joint) => joint.id).join(', ') || 'none'}.`,
    );
  }
  const where = isJoint ? `joints.${index}` : `variants.${index}.joint`;
  return ok({ kind: isJoint ? 'joint' : 'variant', joint: list[index]!, where });
}

const isColumn = (one: ReturnType<typeof open>): one is Column => 'rows' in one;

/**
 * The case that all are compared in: the one asked for, else that of the lowest bond margin of the first
 * column that every column carries.
 */
function commonCase(columns: readonly Column[], caseId: string | undefined): string | null {
  if (caseId !== undefined) return caseId;
  const carried = (id: string): boolean =>
    columns.every(({ resolved }) => resolved.cases.some(({ loadCase }) => loadCase.id === id));
  const [first] = columns;
  if (!first) return null;
  const inOrder = [
    ...first.rows.map(({ loadCase }) => loadCase.id),
    ...first.resolved.cases.map(({ loadCase }) => loadCase.id),
  ];
  return inOrder.find(carried) ?? null;
}

export function compare(
  project: Project,
  { columns: wished, caseId }: Wish,
  seen: JobContext = unwatched,
): Reply<CompareReport> {
  const places: Place[] = [];
  for (const column of wished) {
    const place = placeOf(project, column);
    if (!place.ok) return place;
    if (places.some(({ joint }) => joint.id === place.value.joint.id)) {
      return refuse(
        'bad-request',
        'columns',
        `"${place.value.joint.id}" stands twice: set it beside another.`,
      );
    }
    places.push(place.value);
  }
  if (caseId !== undefined) {
    for (const { joint, where } of places) {
      if (joint.loads.some((load) => load.case === caseId)) continue;
      return refuse(
        'not-found',
        `${where}.loads`,
        `"${joint.name}" carries no load case "${caseId}". It has: ${joint.loads.map((load) => load.case).join(', ') || 'none'}.`,
      );
    }
  }
  const total = 2 * places.length;
  const opened = places.map((place, i) => {
    seen.progress(i, total, place.joint.name);
    return open(project, place);
  });
  const good = opened.filter(isColumn);
  const id = commonCase(good, caseId);
  const strengths = new Map<Column, Strength | null>();
  for (const [i, one] of good.entries()) {
    seen.progress(places.length + i, total, one.place.joint.name);
    strengths.set(one, id === null ? null : strengthOf(project, one, id));
  }
  // All are drawn at the clocking at which the first bond is weakest.
  const theta = (good[0] && strengths.get(good[0])?.theta) ?? 0;
  const common = id === null ? null : { caseId: id, theta };
  const columns = opened.map((one, i) =>
    isColumn(one)
      ? columnOf(project, one, common, strengths.get(one) ?? null)
      : refusedColumn(places[i]!, one),
  );
  const found = differences(
    project,
    places.map(({ joint }) => joint),
  );
  const ofCase = found.filter(({ field }) => field.startsWith(`loads.${id}.`));
  return ok({
    caseId: id,
    caseName: project.loadCases.find((one) => one.id === id)?.name ?? '',
    columns,
    differences: found,
    sentences: sentencesOf(columns, (i) => ofCase.every(({ values }) => values[i] === values[0])),
  });
}
