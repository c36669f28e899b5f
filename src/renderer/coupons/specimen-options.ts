/** Specimens of the project to choose from, the standard first. */
import type { Specimen } from '../../shared/project-coupons.ts';
import type { Option } from '../size/Choice.tsx';

export const specimenOptions = (specimens: readonly Specimen[]): readonly Option[] =>
  specimens.map(({ id, name, standard }) => ({
    value: id,
    text: standard === '' ? name : `${standard}, ${name}`,
  }));
