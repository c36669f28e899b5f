/** Elastic - perfectly plastic adhesive, one bond. */
import { cyclicShare } from '../../../src/model/margins/cyclic.ts';
import { solvePlastic } from '../../../src/model/plastic/one-bond.ts';
import { cyclicReference } from '../../support/cyclic-reference.ts';
import { bond, channel, member } from '../../support/laps.ts';
import { type Case, group, lazy, printed, type Topic, value } from '../case.ts';
import { sweep } from './plastic-sweep.ts';

const bothEnds = lazy(() => {
  const law = bond(876, 0.2, 1, { yieldStrain: 0.05, plasticStrain: 0.5 });
  const lap = channel(500, member(70_000 * 1.6), [member(114_000 * 1.2)]);
  return solvePlastic(lap, law, 30);
});

const checkValue: Case = {
  id: 'both-ends-plastic',
  title: 'Both ends plastic, an elastic trough between',
  source:
    "the project's specification (six digits), and the root of the same equation by scipy (the digits that follow)",
  tag: 'independent',
  inputs: [
    'adhesive G = 876 MPa, h = 0.2 mm, γe = 0.05',
    'tube side 70 000 × 1.6 N/mm, sleeve side 114 000 × 1.2 N/mm; overlap 30 mm; 500 N/mm',
  ],
  checks: (
    [
      ['plastic zone at the root', 'mm', '1.39634', 1.3963436865, () => bothEnds().plasticAtRoot],
      ['plastic zone at the mouth', 'mm', '2.53422', 2.5342256111, () => bothEnds().plasticAtMouth],
      ['strain at the root', '', '0.0720511', 0.07205104709817, () => bothEnds().slipAtRoot / 0.2],
      [
        'strain at the mouth',
        '',
        '0.0951479',
        0.09514793505626,
        () => bothEnds().slipAtMouth / 0.2,
      ],
    ] as const
  ).flatMap(([name, unit, text, exact, computed]) => [
    value({
      name: `${name}, as specified`,
      unit,
      expected: Number(text),
      printed: text,
      computed,
      tolerance: { relative: 3e-6 },
      why: 'the specified figures are up to six units off in their last digit',
    }),
    value({
      name: `${name}, further digits`,
      unit,
      expected: exact,
      computed,
      tolerance: { relative: 1e-10 },
      why: 'both solve the same equation to the digits of a double',
    }),
  ]),
};

const cyclicLine: Case = {
  id: 'cyclic-line',
  title: 'Line of cycles, 1.71·n^−0.12',
  source:
    'J. Soc. Materials Science Japan 34 (386), 1985: epoxy-polyamide single laps in fatigue; the coefficients stand in the abstract, the values at whole powers of ten are computed from them',
  tag: 'abstract',
  inputs: ['τ_max/τ_static = 1.71·n^−0.12, not more than 1; n = 1e3 to 1e7, and 80'],
  checks: [
    ...['0.746', '0.566', '0.430', '0.326', '0.247'].map((text, i) =>
      printed(`share at 1e${3 + i} cycles`, '', text, () => cyclicShare(1.71, 0.12, 10 ** (3 + i))),
    ),
    value({
      name: 'share at 80 cycles',
      unit: '',
      expected: 1,
      computed: () => cyclicShare(1.71, 0.12, 80),
      tolerance: { absolute: 0 },
      why: 'the fitted line is above 1 below 87 cycles and is cut there',
    }),
  ],
};

const cycles = lazy(cyclicReference);

const cyclicDamage: Case = {
  id: 'cyclic-damage',
  title: 'Cyclic cases of given load ratios, alone and together',
  source:
    "reference/cyclic.py: collocation; Goodman's line over 4001 static strengths, the lowest counts; Miner's sum by scipy's brentq",
  tag: 'independent',
  inputs: [
    'five joints, two or three cyclic cases of R = −1, 0.1 and 0.4 each, hot, warm and cold, S-N line 0.95·n^−0.06 at R = 0.1',
  ],
  checks: [
    group({
      name: 'factor at which cyclic shear is reached, each case and gap',
      compare: () => cycles().alone,
      tolerance: 4e-5,
      scale: 'of the value',
      why: 'tapered walls are solved in cells; uniform ones agree to 2e-6',
    }),
    group({
      name: 'factor at which the damage of all cases is 1',
      compare: () => cycles().together,
      tolerance: 4e-5,
      scale: 'of the value',
      why: 'tapered walls are solved in cells, as above',
    }),
  ],
};

export const plastic: Topic = {
  title: 'Elastic-plastic adhesive, one bond',
  intro:
    'Sections 6 and 7 of the method. The exact solution of one bond, and the general one (a chain of cells) that two bonds, two directions and tapers need, are both held against the same figures.',
  cases: [checkValue, sweep, cyclicLine, cyclicDamage],
};
