/** What was refused, in the words of whoever typed the command: options, not fields of a request. */
import type { Project } from '../shared/project.ts';
import type { RequestError } from '../shared/reply.ts';
import { didYouMean } from './nearest.ts';

export interface Refusal {
  readonly error: RequestError;
  /** The same for a person: file, place or option, what is wrong. */
  readonly line: string;
}

export const lineOf = ({ field, message }: RequestError, file: string): string =>
  [file, field, message].filter((part) => part !== '').join(': ');

export const refusal = (error: RequestError, file: string, hint = ''): Refusal => ({
  error,
  line: lineOf(error, file) + hint,
});

/** The refusal with the option that it is about in place of the field. */
export const named = (option: string, error: RequestError, file: string, hint = ''): Refusal => ({
  error,
  line: lineOf({ ...error, field: option }, file) + hint,
});

export interface Typed {
  readonly project: Project;
  readonly jointId: string;
  readonly caseId?: string | undefined;
  readonly file: string;
}

/** Fields of a request that an option gives. */
const optionOf: Readonly<Record<string, string>> = {
  subject: '--mode',
  part: '--part',
  place: '--place',
  conditions: '--condition',
};

/**
 * A word that is not found names its option, with the nearest word that is there; any other refusal
 * names a place in the project. The error itself stays as the handler gave it, for `--json`.
 */
export function typedRefusal(error: RequestError, typed: Typed): Refusal {
  const { project, jointId, caseId, file } = typed;
  if (error.code !== 'not-found') return refusal(error, file);
  const joint = project.joints.find(({ id }) => id === jointId);
  if (!joint) {
    return named('--joint', error, file, didYouMean(jointId, project.joints));
  }
  if (caseId !== undefined && /^joints\.\d+\.loads$/.test(error.field)) {
    const carried = new Set(joint.loads.map((load) => load.case));
    const cases = project.loadCases.filter(({ id }) => carried.has(id));
    return named('--case', error, file, didYouMean(caseId, cases));
  }
  return named(optionOf[error.field] ?? error.field, error, file);
}
