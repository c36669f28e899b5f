/** Printed figures of matrices. */
import { printed, type ValueCheck } from '../case.ts';

/** Several printed figures of one matrix or vector. */
export const figures = (
  unit: string,
  computed: () => Readonly<Record<string, number>>,
  texts: Readonly<Record<string, string>>,
  name: (key: string) => string = (key) => key,
): ValueCheck[] =>
  Object.entries(texts).map(([key, text]) =>
    printed(name(key), unit, text, () => computed()[key]!),
  );

export const named =
  (letter: string) =>
  (key: string): string =>
    key.replace('c', letter);
