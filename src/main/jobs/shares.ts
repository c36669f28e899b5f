/** Work that several threads share: item by item in turn, and back. */
import { ok, type Reply } from '../../shared/reply.ts';

/** One list from those of the shares: the first item of each, then the second of each. */
export function dealtBack<T>(shares: readonly (readonly T[])[]): T[] {
  const count = shares.reduce((sum, items) => sum + items.length, 0);
  return Array.from(
    { length: count },
    (_item, index) => shares[index % shares.length]![Math.floor(index / shares.length)]!,
  );
}

/**
 * The report on all joints from those of the shares, in the order of the project.
 * @param recount what the report says of all of them together
 */
export function mergeShares<J, R extends { readonly joints: readonly J[] }>(
  replies: readonly Reply<R>[],
  recount: (joints: readonly J[]) => Partial<R>,
): Reply<R> {
  const shares: R[] = [];
  for (const reply of replies) {
    // What is wrong with the project, every share says.
    if (!reply.ok) return reply;
    shares.push(reply.value);
  }
  const joints = dealtBack(shares.map((share) => share.joints));
  return ok({ ...shares[0]!, joints, ...recount(joints) });
}
