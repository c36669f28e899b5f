/** Variants put into the project, and taken out of it: always through the project's one way to change. */
import { unwrap } from 'solid-js/store';
import { named } from '../../shared/lap-variant.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { ProjectState } from './project.ts';

type Variant = NonNullable<Project['variants']>[number];

const copy = <T>(value: T): T => JSON.parse(JSON.stringify(unwrap(value))) as T;

/** Longest id and name that the project file takes. */
const ID = 64;
const NAME = 120;

/** `text`, or `text` with the first number behind it that makes it another than all that are there. */
function free(
  text: string,
  taken: ReadonlySet<string>,
  most: number,
  write: (n: number) => string,
): string {
  let end = '';
  for (let n = 2; taken.has(text.slice(0, most - end.length) + end); n += 1) end = write(n);
  return text.slice(0, most - end.length) + end;
}

/** The joint under an id and a name that nothing else in the project has. */
export function unlikeOthers(project: Project, joint: Joint): Joint {
  const others = [...project.joints, ...(project.variants ?? []).map((variant) => variant.joint)];
  const taken = (of: 'id' | 'name'): ReadonlySet<string> => new Set(others.map((one) => one[of]));
  const id = free(joint.id, taken('id'), ID, (n) => `-${n}`);
  const name = free(joint.name, taken('name'), NAME, (n) => ` (${n})`);
  return { ...joint, id, name };
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
