/**
 * Measured diameters as text: our own file of comma-separated values, one line for each reading:
 *
 *   surface,station_mm,clocking_deg,diameter_mm,instrument,confirmed
 *
 * The last two may be left out; `diameter_in` instead of `diameter_mm` says that it is in inches.
 */
import { readCsv, writeCsv } from './csv.ts';
import { measuringPlan, usualInstrument } from './measuring-plan.ts';
import { decimalsOf } from './pasted-block.ts';
import type { Instrument, Joint, MeasuredSurface, SurfaceName } from './project.ts';
import { readQuantity } from './quantity-entry.ts';
import { tidy } from './vary-joint.ts';

export interface LineError {
  /** From 1. */
  readonly line: number;
  readonly message: string;
}

export type MeasuredRead =
  | { readonly ok: true; readonly surfaces: readonly MeasuredSurface[] }
  | { readonly ok: false; readonly errors: readonly LineError[] };

const columns = [
  'surface',
  'station_mm',
  'clocking_deg',
  'diameter_mm',
  'diameter_in',
  'instrument',
  'confirmed',
] as const;
type Column = (typeof columns)[number];

/** `Diameter (mm)`, `diameter mm` and `diameter_mm` are the same. */
const columnNamed = (head: string): Column | undefined => {
  const plain = head
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '');
  return columns.find((column) => column === plain);
};

interface Reading {
  readonly line: number;
  readonly station: number;
  readonly clocking: number;
  readonly diameter: number | null;
  readonly confirmed: boolean;
}

/** Most stations and clockings that a surface has in a project. */
const MOST = { stations: 20, clockings: 36 };
const MOST_ERRORS = 20;
const confirmedWords = new Set(['yes', 'y', 'true', '1', 'x']);

const rising = (list: readonly number[]): readonly number[] =>
  [...new Set(list)].sort((a, b) => a - b);

function surfaceOf(
  surface: SurfaceName,
  readings: readonly Reading[],
  instrument: Instrument,
): MeasuredSurface {
  const stations = rising(readings.map(({ station }) => station));
  const clockings = rising(readings.map(({ clocking }) => clocking));
  const at = (station: number, clocking: number): Reading | undefined =>
    readings.find((one) => one.station === station && one.clocking === clocking);
  const { name, error, repeatability } = instrument;
  const confirmed = readings.flatMap((one): [number, number][] =>
    one.confirmed ? [[stations.indexOf(one.station), clockings.indexOf(one.clocking)]] : [],
  );
  return {
    surface,
    instrument: { name, error, repeatability },
    stations: [...stations],
    clockings: [...clockings],
    diameters: stations.map((station) =>
      clockings.map((clocking) => at(station, clocking)?.diameter ?? null),
    ),
    ...(confirmed.length > 0 ? { confirmed } : {}),
  };
}

/**
 * @param instruments of the project; the first one reads what names none
 */
export function readMeasuredCsv(
  text: string,
  joint: Joint,
  instruments: readonly Instrument[],
): MeasuredRead {
  const plan = measuringPlan(joint);
  const fail = (line: number, message: string): MeasuredRead => ({
    ok: false,
    errors: [{ line, message }],
  });
  if (!plan) return fail(1, 'a flat joint has no diameters to measure');
  const csv = readCsv(text);
  if (!csv.ok) return fail(csv.line, csv.message);
  const [head, ...lines] = csv.rows;
  if (!head) return fail(1, 'the file is empty');
  const order = head.cells.map(columnNamed);
  const unknown = head.cells.findIndex((cell, i) => cell !== '' && order[i] === undefined);
  if (unknown >= 0) {
    return fail(
      head.line,
      `there is no column “${head.cells[unknown]}”: the columns are ${columns.join(', ')}`,
    );
  }
  const twice = order.find((column, i) => column !== undefined && order.indexOf(column) < i);
  if (twice) return fail(head.line, `the column ${twice} stands twice`);
  const inInches = order.includes('diameter_in');
  if (inInches && order.includes('diameter_mm')) {
    return fail(head.line, 'give diameters in mm or in inches, not in both');
  }
  const diameterColumn = inInches ? 'diameter_in' : 'diameter_mm';
  for (const needed of ['surface', 'station_mm', 'clocking_deg', diameterColumn] as const) {
    if (!order.includes(needed)) return fail(head.line, `the column ${needed} is missing`);
  }

  const numeric = ['station_mm', 'clocking_deg', diameterColumn] as const;
  const plain = decimalsOf(
    lines.flatMap(({ cells }) => numeric.map((column) => cells[order.indexOf(column)] ?? '')),
  );
  const errors: LineError[] = [];
  const bySurface = new Map<SurfaceName, Reading[]>();
  const instrumentOf = new Map<SurfaceName, Instrument>();
  const known = plan.surfaces.map(({ surface }) => surface);
  for (const { line, cells } of lines) {
    const cell = (column: Column): string => cells[order.indexOf(column)] ?? '';
    const complain = (message: string): void => void errors.push({ line, message });
    if (errors.length >= MOST_ERRORS) break;
    // A decimal comma that is not quoted parts its number in two.
    if (cells.length > order.length && cells.slice(order.length).some((one) => one !== '')) {
      complain(
        `${cells.length} cells under ${order.length} columns: is a decimal comma among them?`,
      );
      continue;
    }
    const surface = known.find(
      (one) => one === cell('surface').toLowerCase().replace(/[ ,]+/g, '-'),
    );
    if (!surface) {
      complain(
        `there is no surface “${cell('surface')}” in this joint: it has ${known.join(', ')}`,
      );
      continue;
    }
    const numbers = (['station_mm', 'clocking_deg'] as const).map((column) => {
      const entry = readQuantity(
        plain(cell(column)),
        column === 'station_mm' ? 'station' : 'clocking',
      );
      if (!entry.ok) complain(`${column}: ${entry.message}`);
      return entry.ok ? entry.value : null;
    });
    const [station, clocking] = numbers;
    const typed = cell(diameterColumn);
    const entry = typed === '' ? null : readQuantity(plain(typed), 'diameter');
    if (entry && !entry.ok) complain(`${diameterColumn}: ${entry.message}`);
    const named = order.includes('instrument') ? cell('instrument') : '';
    if (named !== '') {
      const instrument = instruments.find(
        ({ id, name }) => id === named || name.toLowerCase() === named.toLowerCase(),
      );
      const before = instrumentOf.get(surface);
      if (!instrument) {
        const list = instruments.map(({ name }) => name).join(', ');
        complain(`there is no instrument “${named}” in the project: it has ${list}`);
      } else if (before && before !== instrument) {
        complain(`${surface} is read with ${before.name} already: one instrument for each surface`);
      } else instrumentOf.set(surface, instrument);
    }
    if (station != null && station > joint.overlap) {
      complain(
        `station_mm: ${station} mm is not within the joint: it is ${joint.overlap} mm long from the mouth`,
      );
      continue;
    }
    if (station == null || clocking == null || (entry && !entry.ok)) continue;
    const readings = bySurface.get(surface) ?? [];
    const same = readings.find((one) => one.station === station && one.clocking === clocking);
    if (same) {
      complain(`${surface} at ${station} mm and ${clocking}° stands in line ${same.line} already`);
      continue;
    }
    const value = entry?.ok ? entry.value : null;
    readings.push({
      line,
      station,
      clocking,
      diameter: value === null ? null : inInches ? tidy(value * 25.4) : value,
      confirmed: confirmedWords.has(cell('confirmed').toLowerCase()),
    });
    bySurface.set(surface, readings);
  }
  for (const [surface, readings] of bySurface) {
    const { line } = readings.at(-1)!;
    const stations = new Set(readings.map(({ station }) => station)).size;
    const clockings = new Set(readings.map(({ clocking }) => clocking)).size;
    if (stations > MOST.stations || clockings > MOST.clockings) {
      const message = `${surface} has ${stations} stations and ${clockings} clockings; the most are ${MOST.stations} and ${MOST.clockings}`;
      errors.push({ line, message });
    }
  }
  if (errors.length > 0) return { ok: false, errors };
  if (bySurface.size === 0) return fail(head.line, 'there is no reading in it');
  const usual = instruments[0] ?? usualInstrument;
  return {
    ok: true,
    surfaces: known.flatMap((surface) => {
      const readings = bySurface.get(surface);
      return readings ? [surfaceOf(surface, readings, instrumentOf.get(surface) ?? usual)] : [];
    }),
  };
}

const CSV_HEAD = [
  'surface',
  'station_mm',
  'clocking_deg',
  'diameter_mm',
  'instrument',
  'confirmed',
] as const;

/** The same file back. */
export const writeMeasuredCsv = (surfaces: readonly MeasuredSurface[]): string =>
  writeCsv([
    CSV_HEAD,
    ...surfaces.flatMap(({ surface, instrument, stations, clockings, diameters, confirmed = [] }) =>
      stations.flatMap((station, i) =>
        clockings.map((clocking, j) => [
          surface,
          station,
          clocking,
          diameters[i]?.[j] ?? null,
          instrument.name,
          confirmed.some(([a, b]) => a === i && b === j) ? 'yes' : '',
        ]),
      ),
    ),
  ]);

/** Every surface of the joint by its plan, nothing read yet; none for a flat joint. */
export function emptySurfaces(
  joint: Joint,
  instruments: readonly Instrument[],
): readonly MeasuredSurface[] {
  const plan = measuringPlan(joint);
  const { name, error, repeatability } = instruments[0] ?? usualInstrument;
  return (plan?.surfaces ?? []).map(({ surface }) => ({
    surface,
    instrument: { name, error, repeatability },
    stations: [...plan!.stations],
    clockings: [...plan!.clockings],
    diameters: plan!.stations.map(() => plan!.clockings.map(() => null)),
  }));
}

/** A file to fill in. */
export const measuringTemplate = (joint: Joint, instruments: readonly Instrument[]): string =>
  writeMeasuredCsv(emptySurfaces(joint, instruments));
