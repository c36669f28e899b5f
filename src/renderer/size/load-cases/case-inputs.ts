/** The inputs of a load case as data, and its choices. */
import type { LoadCase } from '../../../shared/project.ts';
import type { Path } from '../../state/project.ts';
import type { NumberInput } from '../form-model.ts';

type FigureOf<T> = T extends unknown
  ? { [K in keyof T]-?: NonNullable<T[K]> extends number ? K : never }[keyof T]
  : never;
export type CaseFigure = FigureOf<LoadCase>;

export const kinds: readonly { readonly value: LoadCase['kind']; readonly text: string }[] = [
  { value: 'limit', text: 'limit' },
  { value: 'ultimate', text: 'ultimate' },
  { value: 'cyclic', text: 'cyclic' },
];

/** What each kind says of the loads in it. */
export const kindHelp: Readonly<Record<LoadCase['kind'], string>> = {
  limit: 'The largest loads expected in service; the factors are asked on top.',
  ultimate: 'Loads that contain their factor already; only the fitting factor is asked.',
  cyclic: 'The largest loads of a cycle that returns so many times.',
};

/** Its figures; those of cycles only a cyclic case has. */
export const caseLabels: Readonly<Record<CaseFigure, string>> = {
  temperature: 'Temperature',
  cycles: 'Cycles',
  ratio: 'Load ratio R',
};

/** @param of the case, as in `Gust`: names are unique in the form */
export function caseInput(key: CaseFigure, path: Path, of: string): NumberInput {
  const input = { path: [...path, key], name: `${caseLabels[key]} of ${of}` };
  switch (key) {
    case 'temperature':
      return { ...input, quantity: 'temperature', help: 'Of the joint in this case.' };
    case 'cycles':
      return { ...input, quantity: 'cycles' };
    case 'ratio':
      return {
        ...input,
        quantity: 'loadRatio',
        help: 'Lowest over highest load of a cycle; not set, it is taken to be that of the S-N line.',
        optional: true,
      };
  }
}
