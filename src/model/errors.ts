/**
 * The model gives a finite number or throws this: which input to change, and how.
 * `input` is a short name such as `overlap`; the caller turns it into a place in its document.
 */
export class ModelError extends Error {
  readonly input: string;

  constructor(input: string, message: string) {
    super(message);
    this.name = 'ModelError';
    this.input = input;
  }
}

/** Throws unless `value` is finite and above zero. */
export function requirePositive(input: string, value: number): number {
  if (Number.isFinite(value) && value > 0) return value;
  throw new ModelError(input, `${input} must be a finite number above zero, not ${value}.`);
}

/** Throws unless `value` is finite. */
export function requireFinite(input: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw new ModelError(input, `${input} must be a finite number, not ${value}.`);
}
