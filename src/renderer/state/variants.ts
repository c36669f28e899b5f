/** Variants put into the project, and taken out of it: always through the project's one way to change. */
import { unwrap } from 'solid-js/store';
import { named } from '../../shared/lap-variant.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { unlike } from './free-names.ts';
import type { ProjectState } from './project.ts';

type Variant = NonNullable<Project['variants']>[number];

const copy = <T>(value: T): T => JSON.parse(JSON.stringify(unwrap(value))) as T;

/** The joint under an id and a name that nothing else in the project has. */
export function unlikeOthers(project: Project, joint: Joint): Joint {
  const others = [...project.joints, ...(project.variants ?? []).map((variant) => variant.joint)];
  return unlike(others, joint);
}

/** @returns the id under which it stands in the project */
export function addVariant(project: ProjectState, { of, joint }: Variant): string | null {
  const document = project.plain();
  if (!document) return null;
  const made = unlikeOthers(document, copy(joint));
  project.edit(['variants'], [...(document.variants ?? []), { of, joint: made }]);
  return made.id;
}

/** The joint as it is, to be changed by hand. A variant's copy varies what the variant does. */
export function addCopy(project: ProjectState, joint: Joint): string | null {
  const document = project.plain();
  if (!document) return null;
  const of = document.variants?.find((one) => one.joint.id === joint.id)?.of ?? joint.id;
  const plain = copy(joint);
  return addVariant(project, {
    of,
    joint: named(plain, `${plain.id.slice(0, 55)}-by-hand`, `${plain.name}, changed by hand`),
  });
}

export function deleteVariant(project: ProjectState, id: string): void {
  const left = project.plain()?.variants?.filter(({ joint }) => joint.id !== id) ?? [];
  // An empty list would stay in a file that never had one.
  project.edit(['variants'], left.length === 0 ? undefined : left);
}
