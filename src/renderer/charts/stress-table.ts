/** The curves along the bond as figures: shear and peel of each bond side by side. */
import type { StressReport } from '../../shared/reports.ts';
import { figure } from '../../shared/words.ts';
import { tableStations } from './bond-picture.ts';
import { countedPeel } from './peel-data.ts';

export function stressTable(stress: StressReport): { head: string[]; rows: string[][] } {
  const columns = stress.bonds.flatMap((bond) => {
    const name = stress.bonds.length === 1 ? '' : `${bond.part} `;
    const { capped, peel } = bond.layered;
    return [
      { title: `${name}shear, MPa`, values: bond.shear },
      { title: `${name}peel, MPa`, values: countedPeel(bond) },
      ...(capped ? [{ title: `${name}peel if elastic, MPa`, values: peel }] : []),
    ];
  });
  return {
    head: ['x, mm', ...columns.map(({ title }) => title)],
    rows: tableStations(stress.x).map((i) => [
      (stress.x[i] ?? 0).toFixed(2),
      ...columns.map(({ values }) => figure(values[i] ?? 0)),
    ]),
  };
}
