/** Classical lamination theory: published examples, and three-dimensional elasticity. */
import type { Topic } from '../case.ts';
import { angleStacks, bimetal, twist } from './laminate-books.ts';
import { hygrothermal, quasiConstants, quasiIsotropic } from './laminate-course.ts';
import { coupling, lamina, mixed, tension } from './laminate-plies.ts';
import { solidPlies } from './laminate-solids.ts';

export const laminates: Topic = {
  title: 'Laminates',
  intro:
    'Classical lamination theory. The equations hold in any consistent units, so each example stands in those of its source.',
  cases: [
    lamina,
    coupling,
    mixed,
    tension,
    angleStacks,
    twist,
    bimetal,
    quasiIsotropic,
    hygrothermal,
    quasiConstants,
    solidPlies,
  ],
};
