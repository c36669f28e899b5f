/** The core as its tests ask it: through the door, with what was answered or an error that says why not. */
import { type Ask, type AskContext, createAsk } from '../../src/main/ask.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { Opened } from '../../src/shared/reports.ts';

export const ask: Ask = createAsk({ carrier: 'terminal' });

export async function value<T>(name: string, input: unknown, context: AskContext = {}): Promise<T> {
  const reply = (await ask(name, input, context)) as Reply<T>;
  if (!reply.ok) throw new Error(`${name}: ${reply.error.field} ${reply.error.message}`);
  return reply.value;
}

/** A copy of the demonstration project, to be changed at will. */
export const curlew = async (): Promise<Project> =>
  structuredClone((await value<Opened>('project.demo', {})).document);
