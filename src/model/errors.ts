import type { Said } from './said.ts';

/**
 * The model gives a finite number or throws this: which input to change, and how.
 * `input` is a short name such as `overlap`; the caller turns it into a place in its document.
 */
export class ModelError extends Error {
  readonly input: string;
  /** The message, with the figures in it. */
  readonly said: Said;

  constructor(input: string, said: string | Said) {
    const whole = typeof said === 'string' ? { message: said } : said;
    super(whole.message);
    this.name = 'ModelError';
    this.input = input;
    this.said = whole;
  }
}
