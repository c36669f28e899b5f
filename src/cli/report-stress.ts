/** The answer of `stress`: bonds, walls and the trough under one load. */

import { lapOf } from '../shared/convert-lap.ts';
import type { Joint, LoadCase } from '../shared/project.ts';
import type { BondStress, StressReport } from '../shared/reports.ts';
import { toDisplay } from '../shared/units.ts';
import {
  caseText,
  clocking,
  edgeMomentText,
  environment,
  gapWords,
  lapWords,
  lengthText,
} from '../shared/words.ts';
import { beside, significant } from './figures.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const right = (title: string): Column => ({ title, align: 'right' });
const cell = (text: string): Cell => ({ text });
const number = (value: number): Cell => ({ text: significant(value) });

const bondColumns: readonly Column[] = [
  { title: 'Bond' },
  right('Gap mm'),
  right('Peak MPa'),
  right('at mm'),
  right('Yield MPa'),
  { title: 'Yielded from–to mm', least: 11 },
  right('Strain'),
  right('allowed'),
  right('Force N'),
];

const zones = ({ plastic }: BondStress): string =>
  plastic.length === 0
    ? 'none'
    : plastic.map(({ from, to }) => `${from.toFixed(1)}–${to.toFixed(1)}`).join(', ');

/** The largest axial force anywhere in the walls: next to it the others are judged. */
const largestForce = ({ adherends }: StressReport): number =>
  Math.max(0, ...adherends.flatMap(({ force }) => force.map(Math.abs)));

const bondRow = (bond: BondStress, scale: number): Cell[] => [
  cell(bond.part),
  number(bond.gap),
  number(bond.peak.value),
  cell(bond.peak.x.toFixed(1)),
  number(bond.shearYield),
  cell(zones(bond)),
  number(bond.strain),
  number(bond.strainAllowed),
  cell(beside(bond.force, scale)),
];

const peelColumns: readonly Column[] = [
  { title: 'Peel' },
  right('Peak MPa'),
  right('at mm'),
  right('Elastic MPa'),
  right('Strength MPa'),
  { title: 'Shear', least: 8 },
];

/** The peak that counts, the elastic one beside it, and whether the shear is capped for it. */
const peelRow = ({ part, layered }: BondStress): Cell[] => [
  cell(part),
  number(layered.peak.value),
  cell(layered.peak.x.toFixed(1)),
  number(layered.capped ? Math.max(...layered.peel) : layered.peak.value),
  cell(layered.strength === null ? 'not known' : significant(layered.strength)),
  cell(layered.capped ? 'capped at yield' : 'elastic'),
];

const wallColumns: readonly Column[] = [
  { title: 'Wall' },
  right('Root MPa'),
  right('Mouth MPa'),
  right('Root N'),
  right('Mouth N'),
];

function wallRows({ adherends }: StressReport, scale: number): Cell[][] {
  const largest = Math.max(
    0,
    ...adherends.flatMap((wall) => [Math.abs(wall.stressAtRoot), Math.abs(wall.stressAtMouth)]),
  );
  return adherends.map(({ part, force, stressAtRoot, stressAtMouth }) => [
    cell(part),
    cell(beside(stressAtRoot, largest)),
    cell(beside(stressAtMouth, largest)),
    cell(beside(force[0] ?? 0, scale)),
    cell(beside(force.at(-1) ?? 0, scale)),
  ]);
}

/** The model solves one clocking as if its line load went all the way round. */
const aroundNote =
  'Forces are those of the line load at this clocking, taken all the way round: bending included, they are more than the axial force of the case.';

function curveTable({ x, bonds }: StressReport, width: number): string {
  const titles = [
    right('x mm'),
    ...bonds.flatMap(({ part, layered }) => [
      right(`${part} MPa`),
      right('peel MPa'),
      ...(layered.capped ? [right('peel, capped')] : []),
    ]),
  ];
  const rows = x.map((place, i) => [
    cell(place.toFixed(2)),
    ...bonds.flatMap(({ shear, layered: { peel, capped } }) => [
      number(shear[i] ?? 0),
      number(peel[i] ?? 0),
      ...(capped ? [number(capped.peel[i] ?? 0)] : []),
    ]),
  ]);
  return table(titles, rows, width);
}

function troughLine({ trough }: StressReport, bonds: number): string {
  const where = bonds > 1 ? 'the bonds' : 'the bond';
  return `Between the ends: elastic over ${lengthText(trough.elasticLength)}, at or below a tenth of yield over ${lengthText(trough.restLength)}; the lowest shear along ${where} is ${significant(trough.ratio)} of yield.`;
}

function verdict({ carried, capacity }: StressReport): string {
  if (!carried) return 'The bond does not carry these loads.';
  if (capacity === 0) return 'No load acts in this case: what is here is thermal stress.';
  return `The bond carries these loads; its adhesive reaches its ultimate strain at ${significant(capacity)} times the loads of the case.`;
}

export function stressText(
  report: StressReport,
  joint: Joint,
  loadCase: LoadCase,
  curve: boolean,
  paper: Paper,
): string {
  const { width } = paper;
  const scale = largestForce(report);
  const flat = joint.type === 'flat-single' || joint.type === 'flat-double';
  const state = [
    `${caseText(loadCase.name, report.conditionName)} (${loadCase.kind})`,
    environment(report.temperature, report.moisture),
    gapWords[report.gapState],
    ...(flat ? [] : [`clocking ${clocking(report.theta)}`]),
    `loads × ${toDisplay('factor', report.loadFactor)}`,
  ];
  return parts(
    [
      paragraph(
        `${joint.name}: ${lapWords[lapOf(joint)]}, overlap ${lengthText(joint.overlap)}.`,
        width,
      ),
      paragraph(`${state.join(', ')}.`, width),
      paragraph(verdict(report), width),
    ].join('\n'),
    table(
      bondColumns,
      report.bonds.map((bond) => bondRow(bond, scale)),
      width,
    ),
    table(peelColumns, report.bonds.map(peelRow), width),
    report.edgeMoment
      ? paragraph(`Edge moment factor: ${edgeMomentText(report.edgeMoment)}.`, width)
      : '',
    table(wallColumns, wallRows(report, scale), width),
    flat ? '' : paragraph(aroundNote, width),
    paragraph(troughLine(report, report.bonds.length), width),
    curve ? curveTable(report, width) : '',
    flagLines(report.flags, width),
    caution(width),
  );
}
