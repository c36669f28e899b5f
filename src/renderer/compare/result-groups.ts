/**
 * The results of several columns as rows of a table. All figures are the report's own; here they are only
 * put beside each other and written.
 */
import type { Measure } from '../../shared/display-units.ts';
import { figureOf, plainText, symbolOf } from '../../shared/measures.ts';
import type { Joint } from '../../shared/project.ts';
import type { Margin } from '../../shared/reports.ts';
import type { CompareColumn } from '../../shared/reports-compare.ts';
import type { PartMass } from '../../shared/reports-springs.ts';
import {
  caseOf,
  clocking,
  environment,
  figure,
  gapWords,
  placeText,
  signed,
  stateWords,
} from '../../shared/words.ts';
import { named } from './part-names.ts';
import type { Cell, Result, ResultGroup, ResultRow } from './result-row.ts';

const largest = (values: readonly number[]): number =>
  values.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);

const plain = (value: number, measure: Measure): Cell => ({
  text: figureOf(measure, value),
  value,
});
const perhaps = (value: number | null | undefined, measure: Measure): Cell | null =>
  value === null || value === undefined ? null : plain(value, measure);

const percentCell = (value: number): Cell => ({ text: figure(value / 0.01), value });

const marginCell = (margin: Margin): Cell => ({
  text: signed(margin.margin),
  value: margin.margin,
  state: margin.state,
  word: stateWords[margin.state],
});

function marginWhere(margin: Margin): string {
  const parts = [placeText(margin), gapWords[margin.gapState], caseOf(margin)];
  return `${margin.label} · ${parts.join(' · ')}`;
}

export function resultGroups(results: readonly Result[]): ResultGroup[] {
  const row = (
    label: string,
    cell: (column: CompareColumn, joint: Joint) => Cell | null,
    rest: Omit<ResultRow, 'label' | 'cells'> = {},
  ): ResultRow => ({
    label,
    cells: results.map(({ joint, column }) =>
      column && column.refused === null ? cell(column, joint) : null,
    ),
    ...rest,
  });
  const columns = results.flatMap(({ column }) => column ?? []);
  const groups = [
    margins(results, row),
    strength(results, row),
    {
      title: 'Who carries what',
      note: 'axial force of the bonds, as drawn',
      rows: shares(results, row),
    },
    {
      title: 'Mass',
      note: massNote(columns),
      rows: [
        row('added by the joint', ({ mass }) => perhaps(mass?.added, 'mass'), {
          unit: symbolOf('mass'),
          better: 'low',
          strong: true,
        }),
        row('sleeve walls', ({ mass }) => perhaps(mass && sum(mass.walls), 'mass'), {
          unit: symbolOf('mass'),
          better: 'low',
        }),
        row('adhesive', ({ mass }) => perhaps(mass && sum(mass.bonds), 'mass'), {
          unit: symbolOf('mass'),
          better: 'low',
        }),
        row('tube in the overlap', ({ mass }) => perhaps(mass?.tube.mass, 'mass'), {
          unit: symbolOf('mass'),
        }),
      ],
    },
    { title: 'Stiffness', note: stiffnessNote(columns), rows: stiffness(row) },
    {
      title: 'Making',
      note: printNote(columns),
      rows: [
        row('height of print', ({ print }) => perhaps(print?.height, 'length'), {
          unit: symbolOf('length'),
          better: 'low',
        }),
        row('layers', ({ print }) => print && { text: `${print.layers}`, value: print.layers }, {
          better: 'low',
        }),
        row('adhesive volume', ({ mass }) => perhaps(mass?.adhesiveVolume, 'bondVolume'), {
          unit: symbolOf('bondVolume'),
          better: 'low',
        }),
      ],
    },
  ];
  return groups
    .map((group) => ({ ...group, rows: group.rows.filter(hasFigures) }))
    .filter(({ rows, note }) => rows.length > 0 || note !== '');
}

const hasFigures = ({ cells }: ResultRow): boolean => cells.some((cell) => cell !== null);

type MakeRow = (
  label: string,
  cell: (column: CompareColumn, joint: Joint) => Cell | null,
  rest?: Omit<ResultRow, 'label' | 'cells'>,
) => ResultRow;

/** Rows of every mode, in the order in which the columns have them: lowest of the first one first. */
function margins(results: readonly Result[], row: MakeRow): ResultGroup {
  const labels = new Set(
    results.flatMap(({ joint, column }) =>
      (column?.margins ?? []).map(({ label }) => named(joint, label)),
    ),
  );
  return {
    title: 'Margins',
    note: 'lowest over every case and gap',
    rows: [
      row(
        'lowest margin',
        ({ lowest }) => lowest && { ...marginCell(lowest), more: marginWhere(lowest) },
        { better: 'high', strong: true },
      ),
      ...[...labels].map((label) =>
        row(
          label,
          ({ margins: all }, joint) => {
            const margin = all.find((one) => named(joint, one.label) === label);
            return margin ? marginCell(margin) : null;
          },
          { better: 'high' },
        ),
      ),
    ],
  };
}

/** False where the curves are not at the case's loads but at the most that the bond carries. */
const atLoads = ({ stress }: CompareColumn): boolean => stress?.carried !== false;

/** A factor, or a stress, on other loads than the rest is neither better nor worse. */
function sameLoads(results: readonly Result[]): boolean {
  const caseId = results.flatMap(({ column }) => column?.stress?.caseId ?? [])[0];
  const loads = results.map(({ joint }) =>
    JSON.stringify(
      Object.entries(joint.loads.find((load) => load.case === caseId) ?? {}).toSorted(([a], [b]) =>
        a.localeCompare(b),
      ),
    ),
  );
  return loads.every((one) => one === loads[0]);
}

/** Peaks of several bonds under the largest of them. */
function peak(column: CompareColumn, of: 'peakShear' | 'peakPeel'): Cell | null {
  if (column.bonds.length === 0) return null;
  const value = largest(column.bonds.map((bond) => bond[of]));
  const each = column.bonds.map(
    (bond) => `${bond.part.replace(/ bond$/, '')} ${figureOf('stress', bond[of])}`,
  );
  const more = [
    ...(each.length > 1 ? each : []),
    ...(atLoads(column)
      ? []
      : [`at × ${figure(column.stress?.capacity ?? 0)}, the most it carries`]),
  ];
  return {
    text: figureOf('stress', value),
    value: Math.abs(value),
    signed: value,
    ...(more.length > 0 ? { more: more.join(' · ') } : {}),
  };
}

function strength(results: readonly Result[], row: MakeRow): ResultGroup {
  const same = sameLoads(results);
  const high = same ? ({ better: 'high' } as const) : {};
  const atAll = results.every(({ column }) => column === null || atLoads(column));
  const low = same && atAll ? ({ better: 'low' } as const) : {};
  return {
    title: 'Strength of the bond',
    note: `${same ? 'as a factor on the loads of the case' : 'as a factor on each one’s own loads, which differ: no ratio of strength'}, worst gap and clocking; stresses as drawn`,
    rows: [
      row(
        'bond fails in shear at',
        ({ carried }) => carried && { text: `× ${figure(carried.shear)}`, value: carried.shear },
        { ...high, bars: true, strong: true },
      ),
      row(
        'fails first at',
        ({ carried }) =>
          carried && {
            text: `× ${figure(carried.first.factor)}`,
            value: carried.first.factor,
            more: carried.first.label,
          },
        high,
      ),
      row('peak shear', (column) => peak(column, 'peakShear'), {
        unit: symbolOf('stress'),
        ...low,
      }),
      row('peak peel', (column) => peak(column, 'peakPeel'), { unit: symbolOf('stress'), ...low }),
      row(
        'largest shear strain',
        // A bond at its plastic limit has no strain of its own.
        (column) =>
          column.bonds.length === 0 || !atLoads(column)
            ? null
            : percentCell(largest(column.bonds.map(({ strain }) => strain))),
        { unit: '%', ...low },
      ),
      row(
        'bonded area',
        ({ bonds }) =>
          bonds.length === 0
            ? null
            : plain(
                bonds.reduce((all, { area }) => all + area, 0),
                'area',
              ),
        { unit: symbolOf('area'), better: 'high' },
      ),
    ],
  };
}

function shares(results: readonly Result[], row: MakeRow): ResultRow[] {
  const parts = new Set(
    results.flatMap(({ joint, column }) =>
      (column?.bonds ?? []).map(({ part }) => named(joint, part)),
    ),
  );
  return [...parts].map((part) =>
    row(
      part,
      ({ bonds }, joint) => {
        const bond = bonds.find((one) => named(joint, one.part) === part);
        if (!bond) return null;
        const share = `${Math.round(100 * bond.share)} %`;
        return { text: `${figureOf('force', bond.force)} · ${share}`, value: bond.force };
      },
      { unit: symbolOf('force') },
    ),
  );
}

const sum = (parts: readonly PartMass[]): number | null =>
  parts.reduce<number | null>(
    (all, { mass }) => (all === null || mass === null ? null : all + mass),
    0,
  );

function massNote(columns: readonly CompareColumn[]): string {
  const without = [...new Set(columns.flatMap(({ mass }) => mass?.without ?? []))];
  return without.length === 0
    ? ''
    : `not known without the density of ${without.map((name) => `“${name}”`).join(', ')}`;
}

function stiffness(row: MakeRow): ResultRow[] {
  return [
    ...(['axial', 'bending', 'torsion'] as const).map((kind) => {
      const measure = kind === 'axial' ? 'stiffness' : 'rotation';
      return row(
        kind,
        ({ stiffness: state }) =>
          perhaps(state?.springs.find((one) => one.kind === kind)?.stiffness, measure),
        { unit: symbolOf(measure), better: 'high' },
      );
    }),
    row('across', ({ stiffness: state }) => perhaps(state?.shear, 'stiffness'), {
      unit: symbolOf('stiffness'),
      better: 'high',
    }),
  ];
}

function stiffnessNote(columns: readonly CompareColumn[]): string {
  const state = columns.find((column) => column.stiffness !== null)?.stiffness;
  return state
    ? `of the joint, the tube ending at the mouth; ${environment(state.temperature, state.moisture)}`
    : '';
}

function printNote(columns: readonly CompareColumn[]): string {
  const print = columns.find((column) => column.print !== null)?.print;
  return print ? `printed upright, layers of ${plainText('small', print.layerThickness)}` : '';
}

/** What the curves and bond strengths are of, for the line above them. */
export function stateText(columns: readonly CompareColumn[], moisture: 'dry' | 'wet'): string {
  const stress = columns.find((column) => column.stress !== null)?.stress;
  if (!stress) return '';
  const at = environment(stress.temperature, moisture);
  return `${at} · ${gapWords[stress.gapState]} · θ ${clocking(stress.theta)}`;
}
