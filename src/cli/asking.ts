/** What the commands share: asking the handlers, and what a command gives back. */
import type { Ask } from '../main/ask.ts';
import type { Answers, RequestInput, RequestName } from '../shared/contract.ts';
import type { Reply, RequestError } from '../shared/reply.ts';
import type { Asked } from './arguments.ts';
import type { Refusal } from './refusals.ts';

/** What a command gives back: its value for `--json`, its text for a person. */
export interface Answer {
  readonly value: unknown;
  readonly text: () => string;
  readonly code?: number;
  readonly refused?: readonly RequestError[];
}

export type Run = Extract<Asked, { kind: 'run' }>;
export type Result = Answer | Refusal;

export const askFor = <N extends RequestName>(ask: Ask, name: N, input: RequestInput<N>) =>
  ask(name, input) as Promise<Reply<Answers[N]>>;

/** The options that were given, under the names the request has for them. */
export const given = (
  options: Run['options'],
  names: Readonly<Record<string, string>>,
): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(names).flatMap(([option, field]) =>
      options.has(option) ? [[field, options.get(option)]] : [],
    ),
  );
