/** The curves along the bond as figures: shear and peel of each bond side by side. */

import { figureOf, fixedOf, symbolOf } from '../../shared/measures.ts';
import type { StressReport } from '../../shared/reports.ts';
import { tableStations } from './bond-picture.ts';
import { countedPeel } from './peel-data.ts';

export function stressTable(stress: StressReport): { head: string[]; rows: string[][] } {
  const columns = stress.bonds.flatMap((bond) => {
    const name = stress.bonds.length === 1 ? '' : `${bond.part} `;
    const { capped, peel } = bond.layered;
    return [
      { title: `${name}shear, ${symbolOf('stress')}`, values: bond.shear },
      { title: `${name}peel, ${symbolOf('stress')}`, values: countedPeel(bond) },
      ...(capped ? [{ title: `${name}peel if elastic, ${symbolOf('stress')}`, values: peel }] : []),
    ];
  });
  return {
    head: [`x, ${symbolOf('length')}`, ...columns.map(({ title }) => title)],
    rows: tableStations(stress.x).map((i) => [
      fixedOf('length', stress.x[i] ?? 0, 2),
      ...columns.map(({ values }) => figureOf('stress', values[i] ?? 0)),
    ]),
  };
}
