/** What the commands share: asking the handlers, and turning a refusal into a line for a person. */
import type { Ask } from '../main/ask.ts';
import type { Answers, RequestInput, RequestName } from '../shared/contract.ts';
import type { Project } from '../shared/project.ts';
import type { Reply, RequestError } from '../shared/reply.ts';
import type { Asked } from './arguments.ts';
import { didYouMean } from './nearest.ts';

/** What a command gives back: its value for `--json`, its text for a person. */
export interface Answer {
  readonly value: unknown;
  readonly text: () => string;
  readonly code?: number;
  readonly refused?: readonly RequestError[];
}

export type Run = Extract<Asked, { kind: 'run' }>;
export interface Refusal {
  readonly error: RequestError;
  /** The same for a person: file, place, what is wrong. */
  readonly line: string;
}
export type Result = Answer | Refusal;

export const lineOf = ({ field, message }: RequestError, file: string): string =>
  [file, field, message].filter((part) => part !== '').join(': ');

export const refusal = (error: RequestError, file: string, hint = ''): Refusal => ({
  error,
  line: lineOf(error, file) + hint,
});

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

/** Which joint or load case a refused word was meant to be. */
export function meant(
  error: RequestError,
  project: Project,
  jointId: string,
  caseId?: string,
): string {
  if (error.code !== 'not-found') return '';
  const joint = project.joints.find(({ id }) => id === jointId);
  if (!joint) return didYouMean(jointId, project.joints);
  const carried = new Set(joint.loads.map((load) => load.case));
  return didYouMean(
    caseId ?? '',
    project.loadCases.filter(({ id }) => carried.has(id)),
  );
}
