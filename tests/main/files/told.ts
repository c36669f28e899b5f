import type { Reply } from '../../../src/shared/reply.ts';

/** The value of a reply that is no refusal. */
export function told<T>(reply: Reply<T>): T {
  if (!reply.ok) throw new Error(`${reply.error.code}: ${reply.error.message}`);
  return reply.value;
}
