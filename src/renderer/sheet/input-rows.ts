/** The inputs of a joint as lines of the sheet: from the same form that the Size page is made of. */

import { lapOf } from '../../shared/convert-lap.ts';
import type { Adherend, Adhesive, Joint, Ply, Project } from '../../shared/project.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { displayUnit, toDisplay, withUnit } from '../../shared/units.ts';
import { edgeMomentWords, environment, kindOf, lapWords, signed } from '../../shared/words.ts';
import { adherendFields } from '../size/adherend/adherend-fields.ts';
import { groupsOf, loadFields, type Row } from '../size/form-model.ts';
import { plyFields } from '../size/stack/ply-fields.ts';
import { valueAt } from '../state/path.ts';

export interface Line {
  readonly label: string;
  readonly value: string;
}

const written = (quantity: QuantityName, value: unknown): string =>
  typeof value === 'number' ? withUnit(quantity, value) : 'not set';

/** `Yield, MPa`: the head of a column of one quantity. */
export const headOf = (label: string, quantity: QuantityName): string => {
  const { symbol } = displayUnit(quantity);
  return symbol === '' ? label : `${label}, ${symbol}`;
};

/** Null for a material: it has a table of its own. */
function lineOf(row: Row, project: Project, joint: Joint): Line | null {
  const at = (path: Row extends { path: infer P } ? P : readonly (string | number)[]): unknown =>
    valueAt(project, path);
  switch (row.kind) {
    case 'lap':
      return { label: 'Lap', value: lapWords[lapOf(joint)] };
    case 'edge-moment':
      return {
        label: 'Edge moment',
        value: edgeMomentWords[project.settings.edgeMoment ?? 'goland-reissner'],
      };
    case 'number':
      return { label: row.name, value: written(row.quantity, at(row.path)) };
    case 'toleranced':
      return {
        label: row.label,
        value: `${toDisplay(row.nominal.quantity, at(row.nominal.path) as number)} ± ${written(row.tolerance.quantity, at(row.tolerance.path))}`,
      };
    case 'adherend':
    case 'adhesive':
      return null;
  }
}

/** Sizes of the joint, by the names that the form has for them. */
export function sizeLines(project: Project, joint: Joint): Line[] {
  const alone = { ...project, joints: [joint] };
  return groupsOf(joint.type, 0).flatMap(({ rows }) =>
    rows.flatMap((row) => lineOf(row, alone, joint) ?? []),
  );
}

type Figures = Readonly<Record<string, unknown>>;

/** What a wall is made of, figure by figure; of a laminate its stack and its ply. */
export function adherendLines(adherend: Adherend, ply: Ply | undefined, flat: boolean): Line[] {
  if (adherend.kind !== 'laminate') {
    const figures = adherend as unknown as Figures;
    const lines = adherendFields(adherend.kind, flat).map(({ key, label, quantity }) => ({
      label,
      value: written(quantity, figures[key]),
    }));
    if (adherend.kind === 'isotropic') return lines;
    const through: readonly (readonly [string, string, QuantityName])[] = [
      ['E3 through', 'throughModulus', 'modulus'],
      ['α3 through', 'throughExpansion', 'expansion'],
      ['Zt between plies', 'interlaminarTension', 'interlaminarStrength'],
      ['S13 between plies', 'interlaminarShear', 'interlaminarStrength'],
    ];
    return [
      ...lines,
      ...through.map(([label, key, quantity]) => ({
        label,
        value: written(quantity, figures[key]),
      })),
    ];
  }
  const figures = (ply ?? {}) as unknown as Figures;
  return [
    { label: 'Stack', value: adherend.stack },
    { label: 'Ply', value: ply?.name ?? adherend.ply },
    ...plyFields.map(({ key, label, quantity }) => ({
      label,
      value: written(quantity, figures[key]),
    })),
  ];
}

const set = (label: string, quantity: QuantityName, value: number | undefined): Line[] =>
  value === undefined ? [] : [{ label, value: withUnit(quantity, value) }];

export function adhesiveLines(adhesive: Adhesive): Line[] {
  const { fracture } = adhesive;
  return [
    ...set('Stress-free at', 'temperature', adhesive.stressFreeTemperature),
    ...set('Thermal expansion', 'expansion', adhesive.expansion),
    ...set('Density', 'density', adhesive.density),
    ...set('Fracture, opening', 'fractureEnergy', fracture?.modeI),
    ...set('Fracture, sliding', 'fractureEnergy', fracture?.modeII),
    ...set('Exponent of the mix', 'fractureExponent', fracture?.exponent),
  ];
}

export function knockdownLines({
  environment: env,
  ageing,
  scatter,
  gap,
}: NonNullable<Adhesive['knockdowns']>): Line[] {
  return [
    ...set('Environment', 'knockdown', env),
    ...set('Ageing', 'knockdown', ageing),
    ...set('Scatter', 'knockdown', scatter),
    ...gap.map(({ gap: at, factor }) => ({
      label: `Gap ${withUnit('gap', at)}`,
      value: toDisplay('knockdown', factor),
    })),
  ];
}

export function fatigueLines({
  coefficient,
  exponent,
  ratio,
}: NonNullable<Adhesive['fatigue']>): Line[] {
  return [
    ...set('Coefficient', 'fatigueCoefficient', coefficient),
    ...set('Exponent', 'fatigueExponent', exponent),
    {
      label: 'Load ratio',
      value: ratio === undefined ? 'not given' : toDisplay('loadRatio', ratio),
    },
  ];
}

/** One row for each load case that acts on the joint. */
export function loadTable(project: Project, joint: Joint): { head: string[]; rows: string[][] } {
  const fields = loadFields(joint.type, [], '');
  const head = [
    'Load case',
    'Kind',
    'Surroundings',
    ...fields.map(({ label, quantity }) => headOf(label, quantity)),
  ];
  const rows = joint.loads.map((load) => {
    const found = project.loadCases.find(({ id }) => id === load.case);
    const figures = load as unknown as Figures;
    return [
      found?.name ?? load.case,
      found ? kindOf(found) : '',
      found
        ? `${environment(found.temperature, found.moisture)}${found.everyCondition ? ', and each condition' : ''}`
        : '',
      ...fields.map(({ path, quantity }) =>
        toDisplay(quantity, Number(figures[String(path.at(-1))] ?? 0)),
      ),
    ];
  });
  return { head, rows };
}

/** What is asked of every joint. */
export function factorLines({ settings }: Project): Line[] {
  const { factors } = settings;
  return [
    { label: 'Target margin', value: signed(settings.targetMargin) },
    { label: 'Factor before yield', value: toDisplay('factor', factors.limit) },
    { label: 'Factor before failure', value: toDisplay('factor', factors.ultimate) },
    { label: 'Fitting factor', value: toDisplay('factor', factors.fitting) },
    { label: 'Shear of the walls', value: settings.adherendShear ? 'included' : 'left out' },
  ];
}
