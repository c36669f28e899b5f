/** Every curve that is drawn of a bond, at every station that was computed. */
import type { StressReport, SweepReport } from '../../shared/reports.ts';
import { column, type Sheet } from '../../shared/sheet.ts';
import type { Compared, ComparePlot, Quantity } from '../charts/compare-data.ts';
import { type Field, valueAt } from '../charts/map-data.ts';
import { countedPeel } from '../charts/peel-data.ts';

const bondName = ({ bonds }: StressReport, part: string): string =>
  bonds.length === 1 ? '' : `${part} `;

interface Column {
  readonly title: string;
  readonly values: readonly number[];
}

const alongSheet = (stress: StressReport, columns: readonly Column[]): Sheet => ({
  head: [column('from the root', 'mm'), ...columns.map(({ title }) => title)],
  rows: stress.x.map((x, i) => [x, ...columns.map(({ values }) => values[i] ?? null)]),
});

/** A level that is drawn straight across stands in every row: so do the curves and it share one axis. */
const level = (stress: StressReport, title: string, value: number | null): Column[] =>
  value === null ? [] : [{ title, values: stress.x.map(() => value) }];

export const shearSheet = (stress: StressReport, layered: boolean): Sheet =>
  alongSheet(
    stress,
    stress.bonds.flatMap((bond) => {
      const name = bondName(stress, bond.part);
      return [
        { title: column(`${name}shear stress`, 'MPa'), values: bond.shear },
        { title: column(`${name}shear along the axis`, 'MPa'), values: bond.axialShear },
        { title: column(`${name}shear around the axis`, 'MPa'), values: bond.hoopShear },
        ...(layered
          ? [
              {
                title: column(`${name}shear stress by layered shells`, 'MPa'),
                values: bond.layered.shear,
              },
            ]
          : []),
        ...level(stress, column(`${name}yield in shear`, 'MPa'), bond.shearYield),
      ];
    }),
  );

export const peelSheet = (stress: StressReport): Sheet =>
  alongSheet(
    stress,
    stress.bonds.flatMap((bond) => {
      const name = bondName(stress, bond.part);
      const { capped, peel, strength } = bond.layered;
      return [
        { title: column(`${name}peel stress`, 'MPa'), values: countedPeel(bond) },
        ...(capped
          ? [{ title: column(`${name}peel stress if elastic`, 'MPa'), values: peel }]
          : []),
        ...level(stress, column(`${name}peel strength`, 'MPa'), strength),
      ];
    }),
  );

/** A row for each place of the map: any program can turn that into a grid. */
export const mapSheet = (field: Field, part: string, quantity: Quantity): Sheet => ({
  head: [
    'bond',
    column('from the root', 'mm'),
    column('clocking', '°'),
    column(`elastic ${quantity} stress`, 'MPa'),
  ],
  rows: field.theta.flatMap((theta, j) =>
    field.x.map((x, i) => [part, x, theta, valueAt(field, { i, j })]),
  ),
});

export const sweepSheet = ({ points }: SweepReport, target: number): Sheet => ({
  head: [
    column('overlap', 'mm'),
    'bond strength over load asked',
    'lowest of all modes but trough over load asked',
    'set by',
    'target',
  ],
  rows: points.map(({ overlap, bond, all, mode }) => [overlap, bond, all, mode, 1 + target]),
});

/** Overlaps differ, and with them the stations: so the curves stand under one another. */
export const compareSheet = (
  { curves, levels, span, from }: ComparePlot,
  quantity: Quantity,
  all: readonly Pick<Compared, 'letter' | 'name'>[],
): Sheet => {
  const jointOf = (curve: string): string =>
    all.find(({ letter }) => letter === curve.split(' ')[0])?.name ?? '';
  return {
    head: ['curve', 'joint', column(`from the ${from}`, 'mm'), column(`${quantity} stress`, 'MPa')],
    rows: [
      ...curves.flatMap(({ name, x, values }) =>
        x.map((at, i) => [name, jointOf(name), Math.abs(at), values[i] ?? null]),
      ),
      ...levels.flatMap(({ value, text }) =>
        [span.low, span.high].map((at) => [text, null, Math.abs(at), value]),
      ),
    ],
  };
};
