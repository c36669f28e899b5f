/** Measured gaps as tables of figures. */

import { surfaceWords } from '../../shared/bench-words.ts';
import type { GapCheck, MeasuredSurface } from '../../shared/project.ts';
import type { BondGap, BondRange, GapReport } from '../../shared/reports-gap.ts';
import { column, type Sheet } from '../../shared/sheet.ts';

const head = ['bond', 'held', 'what', column('gap', 'mm'), column('uncertainty', 'mm')];
const limitHead = [column('limit from', 'mm'), column('limit to', 'mm')];

export const gapSheet = ({ bonds, limits }: GapReport, of: string): Sheet => ({
  head: [...head, column('from the mouth', 'mm'), column('from the mark', '°'), ...limitHead],
  rows: bonds.flatMap((gap, i) =>
    (gap.bond === of ? (['centred', 'held'] as const) : []).flatMap((held) =>
      (['min', 'mean', 'max'] as const).map((what) => {
        const one = gap[held][what];
        return [
          gap.bond,
          held === 'held' ? 'as held' : 'centred',
          { min: 'thinnest', mean: 'mean', max: 'thickest' }[what],
          one.value,
          one.uncertainty,
          'x' in one ? one.x : null,
          'theta' in one ? one.theta : null,
          limits[i]?.from ?? null,
          limits[i]?.to ?? null,
        ];
      }),
    ),
  ),
});

export const recordedSheet = (bonds: NonNullable<GapCheck['result']>['bonds']): Sheet => ({
  head: [...head, ...limitHead],
  rows: bonds.flatMap((bond) =>
    (['min', 'mean', 'max'] as const).map((what) => [
      bond.bond,
      'as recorded',
      { min: 'thinnest', mean: 'mean', max: 'thickest' }[what],
      bond[what].value,
      bond[what].uncertainty,
      bond.from,
      bond.to,
    ]),
  ),
});

export const rangeSheet = ({ bond, curve }: BondRange, target: number): Sheet => ({
  head: ['bond', column('gap', 'mm'), 'lowest margin', 'set by', 'target'],
  rows: curve.map(({ gap, margin, mode }) => [bond, gap, margin, mode, target]),
});

/** A row for each place of the bond. */
export const aroundSheet = ({ bond, map }: BondGap): Sheet => ({
  head: [
    'bond',
    column('from the mouth', 'mm'),
    column('from the mark', '°'),
    column('gap as held', 'mm'),
    column('gap centred', 'mm'),
  ],
  rows: map.x.flatMap((x, i) =>
    map.theta.map((theta, j) => [
      bond,
      x,
      theta,
      map.held[i]?.[j] ?? null,
      map.centred[i]?.[j] ?? null,
    ]),
  ),
});

/** A row for each place that is to be read, whether it has been or not. */
export const readingsSheet = (one: MeasuredSurface): Sheet => ({
  head: [
    'surface',
    column('from the mouth', 'mm'),
    column('from the mark', '°'),
    column('diameter', 'mm'),
    'instrument',
    column('instrument error', 'mm'),
    column('instrument scatter', 'mm'),
  ],
  rows: one.stations.flatMap((x, i) =>
    one.clockings.map((theta, j) => [
      surfaceWords[one.surface],
      x,
      theta,
      one.diameters[i]?.[j] ?? null,
      one.instrument.name,
      one.instrument.error,
      one.instrument.repeatability,
    ]),
  ),
});
