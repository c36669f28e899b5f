/** The record of measured parts as comma-separated values: one row for each check, one for each reading. */
import { verdictWords } from './bench-words.ts';
import { writeCsv } from './csv.ts';
import type { GapCheck, Project } from './project.ts';

const nameOf = (project: Project, id: string): string =>
  project.joints.find((joint) => joint.id === id)?.name ?? '';

const head = (check: GapCheck, project: Project): readonly string[] => [
  check.id,
  check.joint,
  nameOf(project, check.joint),
  check.tubeSerial,
  check.sleeveSerial,
  check.by,
  check.started,
  check.recorded ?? '',
];
const headNames = [
  'check',
  'joint',
  'joint_name',
  'tube_serial',
  'sleeve_serial',
  'by',
  'started',
  'recorded',
];

const figure = (value: number | null | undefined): number | null =>
  value == null ? null : Number(value.toPrecision(9));

/** Joints have two bonds at most. */
const bondColumns = (n: number): readonly string[] =>
  [
    'bond',
    'min_mm',
    'min_u_mm',
    'mean_mm',
    'mean_u_mm',
    'max_mm',
    'max_u_mm',
    'from_mm',
    'to_mm',
  ].map((name) => `${name.startsWith('bond') ? name : `gap_${name}`}_${n}`);

export function checksCsv(project: Project): string {
  const rows = (project.gapChecks ?? []).map((check) => {
    const { result } = check;
    const bonds = [0, 1].flatMap((i) => {
      const bond = result?.bonds[i];
      return [
        bond?.bond ?? '',
        ...[bond?.min, bond?.mean, bond?.max].flatMap((one) => [
          figure(one?.value),
          figure(one?.uncertainty),
        ]),
        figure(bond?.from),
        figure(bond?.to),
      ];
    });
    return [
      ...head(check, project),
      result ? verdictWords[result.verdict] : 'measuring',
      result?.reason ?? '',
      figure(result?.margin),
      figure(result?.targetMargin),
      ...bonds,
      result?.modelVersion ?? '',
      check.done.map(({ step, at }) => `${step} (${at})`).join('; '),
      check.cure
        .map(({ at, temperature, note }) => `${at}: ${temperature} °C${note && `, ${note}`}`)
        .join('; '),
      check.note ?? '',
    ];
  });
  return writeCsv([
    [
      ...headNames,
      'verdict',
      'reason',
      'margin',
      'target_margin',
      ...bondColumns(1),
      ...bondColumns(2),
      'model_version',
      'steps_done',
      'cure_log',
      'note',
    ],
    ...rows,
  ]);
}

export function readingsCsv(project: Project): string {
  const rows = (project.gapChecks ?? []).flatMap((check) =>
    check.surfaces.flatMap(
      ({ surface, instrument, stations, clockings, diameters, confirmed = [] }) =>
        stations.flatMap((station, i) =>
          clockings.map((clocking, j) => [
            ...head(check, project),
            surface,
            instrument.name,
            instrument.error,
            instrument.repeatability,
            station,
            clocking,
            diameters[i]?.[j] ?? null,
            confirmed.some(([a, b]) => a === i && b === j) ? 'yes' : '',
          ]),
        ),
    ),
  );
  return writeCsv([
    [
      ...headNames,
      'surface',
      'instrument',
      'instrument_error_mm',
      'repeatability_mm',
      'station_mm',
      'clocking_deg',
      'diameter_mm',
      'confirmed',
    ],
    ...rows,
  ]);
}
