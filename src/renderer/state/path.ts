/** Places in the document: keys and indices from its root. */
export type Path = readonly (string | number)[];

export const pathText = (path: Path): string => path.join('.');

/** The value at a path, undefined when there is none. */
export function valueAt(root: unknown, path: Path): unknown {
  let here: unknown = root;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string | number, unknown>)[key];
  }
  return here;
}

/** A figure, a word or nothing: told by its value alone. */
export const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null;
