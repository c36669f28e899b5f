import type { Said } from './said.ts';

/** Every request is answered by a value or by one error that a person can act on. */
export type ErrorCode =
  | 'bad-request'
  | 'bad-input'
  | 'not-found'
  | 'not-computable'
  /** Another content stands in the file than the one that was opened. */
  | 'changed'
  /** Something stands where a new file was to be written. */
  | 'exists'
  /** This user may not write there, or the disk is full. */
  | 'not-writable'
  /** Whoever asked stopped it: no error, but no answer either. */
  | 'stopped'
  /** Nobody answers this page: the program was ended, or another one runs than the one that the page is of. */
  | 'unreachable'
  | 'internal';

export interface RequestError extends Said {
  readonly code: ErrorCode;
  /** Dotted path of the input to change, from the top of the project, such as `joints.2.overlap`; empty when none. */
  readonly field: string;
  /** Of a file that cannot be read: path of the version before its last saving, where that can be opened. */
  readonly before?: string;
}

export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: RequestError };

export const ok = <T>(value: T): Reply<T> => ({ ok: true, value });
/** @param said one plain sentence: what is wrong and what to change */
export const refuse = (code: ErrorCode, field: string, said: string | Said): Reply<never> => ({
  ok: false,
  error: { code, field, ...(typeof said === 'string' ? { message: said } : said) },
});
