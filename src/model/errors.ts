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
