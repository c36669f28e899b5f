/** The layered shells against the same equations solved by other means: reference/layered-shells.json. */
import {
  type Case,
  type Check,
  type Comparison,
  type GroupCheck,
  group,
  same,
  type Topic,
} from '../case.ts';
import { computed, type Field, fixture, type Lists, type Solved } from './layered-solved.ts';

const largest = (lists: Lists): number => Math.max(...lists.flat().map(Math.abs));

/** Every figure of one field over the cases; of its largest in the case. */
function compare(cases: readonly Solved[], field: Field): readonly Comparison[] {
  return cases.flatMap((one) => {
    // A flat joint's strain across is the same everywhere: the program keeps no force for it.
    if (field === 'hoop' && one.inputs.width !== undefined) return [];
    const expected = one.expected[field];
    const scale = largest(expected);
    const found = computed(one).fields[field];
    return expected.flatMap((list, j) =>
      list.map((figure, k) => ({
        what: `${one.name}, x = ${one.expected.stations[k]} mm`,
        expected: figure,
        computed: found[j]![k]!,
        scale,
      })),
    );
  });
}

const names: Readonly<Record<Field, string>> = {
  shear: 'shear of the bonds',
  peel: 'peel of the bonds',
  force: 'force of the walls',
  moment: 'moment of the walls',
  hoop: 'hoop force of the walls',
};

type Tolerances = Readonly<Record<Field, number>>;
const even = (tolerance: number): Tolerances => ({
  shear: tolerance,
  peel: tolerance,
  force: tolerance,
  moment: tolerance,
  hoop: tolerance,
});

const ARITHMETIC =
  'the same equations; rounding of the digits that are written, and of the doublings in a long thin lap';

function checks(cases: readonly Solved[], tolerances: Tolerances, why = ARITHMETIC): GroupCheck[] {
  const flat = cases.every(({ inputs }) => inputs.width !== undefined);
  return (['shear', 'peel', 'force', 'moment', 'hoop'] as const)
    .filter((field) => !(flat && field === 'hoop'))
    .map((field) =>
      group({
        name: names[field],
        compare: () => compare(cases, field),
        tolerance: tolerances[field],
        scale: "of the case's largest",
        why,
      }),
    );
}

const isTapered = ({ inputs }: Solved): boolean =>
  inputs.walls.some(({ atRoot, atMouth }) => atRoot !== atMouth);
const isCapped = ({ name }: Solved): boolean => name.startsWith('capped');
const isRandom = ({ name }: Solved): boolean => name.startsWith('random');
const isFlat = ({ inputs }: Solved): boolean => inputs.width !== undefined;

const all = fixture().cases;
const source =
  "reference/layered-shells.json: section 10 of the method by Galerkin's method in one dimension, in extended precision, and the same equations derived anew and solved by solve_bvp";

const one = (
  id: string,
  title: string,
  cases: readonly Solved[],
  made: readonly Check[],
  remarks: readonly string[] = [],
): Case => ({
  id,
  title,
  source,
  tag: 'independent',
  inputs: [cases.map(({ name }) => name).join('; ')],
  checks: made,
  remarks,
});

const sleeves = all.filter((c) => !isTapered(c) && !isCapped(c) && !isRandom(c) && !isFlat(c));
const flats = all.filter((c) => !isTapered(c) && !isCapped(c) && !isRandom(c) && isFlat(c));
const randoms = all.filter((c) => isRandom(c) && !isTapered(c));
const tapers = all.filter((c) => isTapered(c) && !isRandom(c));
const randomTapers = all.filter((c) => isTapered(c) && isRandom(c));
const capped = all.filter(isCapped);

/** Where each bond begins or ends to flow. */
const frontsOf = (c: Solved): { readonly x: number; readonly bond: number }[] => {
  const zones = computed(c).capped?.zones ?? [];
  return zones
    .slice(1)
    .flatMap((zone, i) =>
      zone.flow.flatMap((sign, bond) =>
        sign === zones[i]!.flow[bond] ? [] : [{ x: zones[i]!.to, bond }],
      ),
    );
};

const fronts: readonly Check[] = [
  group({
    name: 'fronts of yielding',
    compare: () =>
      capped.flatMap((c) => {
        const found = frontsOf(c);
        return c.expected.fronts!.map(([x, bond], k) => ({
          what: `${c.name}, front ${k + 1}`,
          expected: x,
          computed: found[k]?.bond === bond ? found[k]!.x : Number.NaN,
          scale: c.inputs.overlap,
        }));
      }),
    tolerance: 1e-6,
    scale: 'of the overlap',
    why: 'fronts settle to a millionth of the overlap',
  }),
  same({
    name: 'number of fronts',
    compare: () =>
      capped.map((c) => ({
        what: c.name,
        expected: String(c.expected.fronts!.length),
        computed: String(frontsOf(c).length),
      })),
  }),
];

const FOURTH_ORDER =
  'the program solves a taper in short pieces, each exact to fourth order; set just above what is found';
const flowing = capped.filter((c) => !isTapered(c));

export const layeredReference: Topic = {
  title: 'Layered shells',
  intro:
    'The equations of section 10 of the method, solved by means that share nothing with the program. They prove the arithmetic; what the equations are worth stands in the topics of finite elements.',
  cases: [
    one(
      'layered-sleeves',
      'Sleeves, loaded, cooled and warmed',
      sleeves,
      checks(sleeves, even(1e-9)),
    ),
    one('layered-flats', 'Flat layered laps', flats, checks(flats, even(1e-8))),
    one('layered-random', 'Random layered joints', randoms, checks(randoms, even(1e-7))),
    one(
      'layered-tapers',
      'Tapers',
      tapers,
      checks(
        tapers,
        { shear: 2e-6, peel: 5e-5, force: 1e-6, moment: 1e-5, hoop: 1e-5 },
        FOURTH_ORDER,
      ),
    ),
    one(
      'layered-random-tapers',
      'Random tapers',
      randomTapers,
      checks(
        randomTapers,
        { shear: 5e-4, peel: 5e-3, force: 5e-5, moment: 2.5e-4, hoop: 2e-4 },
        FOURTH_ORDER,
      ),
      [
        'Random joints are no usual ones: walls of a third of a millimetre over overlaps of hundreds of them are among them.',
      ],
    ),
    one(
      'layered-capped',
      'Shear capped at yield',
      capped,
      [...checks(flowing, even(1e-9)), ...fronts],
      ['The tapered one of them is held as the tapers are, its fronts here.'],
    ),
  ],
};
