/** The factory of the parser, which the package exports but declares nowhere. */
import 'mathjs/number';

declare module 'mathjs/number' {
  /** @param dependencies what its classes and helpers are to be, by name */
  export function createParse(
    dependencies: Readonly<Record<string, unknown>>,
  ): (text: string) => import('./expression-tree.ts').TreeNode;
}
