/** Tapered outer walls. */
import { combine } from '../../../src/model/shear-lag/elastic.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import { toProblem } from '../../support/fixtures.ts';
import { type Case, group, lazy, type Topic } from '../case.ts';
import { chainChecks, readChainFixture } from './chain-fixture.ts';

const source =
  'reference/taper.py: collocation with the yield fronts as unknowns, held against a second boundary-value solver';

const fixture = readChainFixture('taper');
const elastic = lazy(() =>
  fixture()
    .cases.filter(
      ({ inputs, expected }) => expected.regime === 'elastic' && inputs.channels === undefined,
    )
    .map(({ name, inputs, expected }) => {
      const problem = toProblem(inputs);
      const [channel] = problem.channels;
      const solution = solveElastic(channel!, problem.bonds, problem.length);
      return { name, problem, expected, load: channel!.load, state: combine(solution, 1) };
    }),
);

const elasticWalls: Case = {
  id: 'taper-elastic',
  title: 'Tapered walls, elastic, load and temperature solved apart',
  source,
  tag: 'independent',
  inputs: ['one bond and two, thinning and thickening, short and long; nine stations each'],
  checks: [
    group({
      name: 'shear',
      compare: () =>
        elastic().flatMap(({ name, problem, expected, state }) =>
          expected.bonds.flatMap((bond, j) => {
            const shear = bond.shear as readonly number[];
            const scale = Math.max(...shear.map(Math.abs));
            return shear.map((figure, i) => {
              const t = fixture().stations[i]!;
              return {
                what: `${name}, bond ${j + 1} at x/L = ${t}`,
                expected: figure,
                computed: state.shear(j, t * problem.length),
                scale,
              };
            });
          }),
        ),
      tolerance: 1e-5,
      scale: 'of the peak',
      why: 'the cells are refined to this where nothing yields',
    }),
    group({
      name: 'force of the outer adherends',
      compare: () =>
        elastic().flatMap(({ name, problem, expected, load, state }) =>
          expected.bonds.flatMap((bond, j) => {
            const { root, mid } = bond.force as { readonly root: number; readonly mid: number };
            const at = (x: number): number => state.outerForce(j, x);
            const middle = problem.length / 2;
            return [
              { what: `${name}, ${j + 1}, root`, expected: root, computed: at(0), scale: load },
              {
                what: `${name}, ${j + 1}, middle`,
                expected: mid,
                computed: at(middle),
                scale: load,
              },
            ];
          }),
        ),
      tolerance: 1e-5,
      scale: 'of the load',
      why: 'the cells are refined to this where nothing yields',
    }),
  ],
};

const plasticWalls: Case = {
  id: 'taper-general',
  title: 'Tapered walls, elastic and elastic-plastic',
  source,
  tag: 'independent',
  inputs: ['one bond and two, one direction and two; nine stations each'],
  checks: chainChecks('taper'),
};

export const tapers: Topic = {
  title: 'Tapered walls',
  intro: 'A taper leaves no closed form; the chain of cells solves it, elastic or not.',
  cases: [elasticWalls, plasticWalls],
};
