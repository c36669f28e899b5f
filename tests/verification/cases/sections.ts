/** Sections of tubes and sleeves. */
import { annulus } from '../../../src/model/joint/section.ts';
import { readFixture } from '../../support/fixtures.ts';
import { type Case, group, type Topic } from '../case.ts';

type Property = 'area' | 'secondMoment' | 'polarMoment' | 'meanRadius';
interface Fixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: { readonly insideRadius: number; readonly outsideRadius: number };
    readonly expected: Readonly<Record<Property, number>>;
  }[];
}

const names: Readonly<Record<Property, string>> = {
  area: 'area',
  secondMoment: 'second moment of area',
  polarMoment: 'polar moment',
  meanRadius: 'mean radius',
};

const annuli: Case = {
  id: 'annuli',
  title: 'Annulus: area, second moments, mean radius',
  source: 'reference/annulus.py: adaptive quadrature (its own estimate of the error: 1e-14)',
  tag: 'independent',
  inputs: ['thin walls, thick walls and a full bar'],
  checks: Object.entries(names).map(([property, name]) =>
    group({
      name,
      compare: () =>
        (readFixture('sections.json') as Fixture).cases.map((one) => ({
          what: one.name,
          expected: one.expected[property as Property],
          computed: annulus(one.inputs.insideRadius, one.inputs.outsideRadius)[
            property as Property
          ],
        })),
      tolerance: 1e-9,
      scale: 'of the value',
      why: 'ten digits are printed',
    }),
  ),
};

export const sections: Topic = {
  title: 'Sections',
  intro: 'Section 1 of the method.',
  cases: [annuli],
};
