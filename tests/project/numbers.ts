/** Every number of a project with the quantity it is, written down apart from the schema. */
import type { Adherend, Joint, Project } from '../../src/shared/project.ts';
import type { QuantityName } from '../../src/shared/quantities.ts';

export type Path = readonly (string | number)[];
export interface NumberAt {
  readonly path: Path;
  readonly quantity: QuantityName;
  /** True for what a project may leave out. */
  readonly optional?: true;
}

type Table = Readonly<Record<string, QuantityName>>;

export const adherendNumbers: Readonly<Record<Adherend['kind'], Table>> = {
  isotropic: {
    modulus: 'modulus',
    poisson: 'poisson',
    expansion: 'expansion',
    yieldStrength: 'strength',
    ultimateStrength: 'strength',
  },
  orthotropic: {
    axialModulus: 'modulus',
    hoopModulus: 'modulus',
    shearModulus: 'shearModulus',
    poisson: 'laminatePoisson',
    axialExpansion: 'expansion',
    hoopExpansion: 'expansion',
    throughShearModulus: 'shearModulus',
    tensileStrength: 'strength',
    compressiveStrength: 'strength',
    shearStrength: 'strength',
  },
  /** Its figures are those of its ply. */
  laminate: {},
};
/** May be left out of an orthotropic adherend. */
export const throughThicknessNumbers: Table = {
  throughModulus: 'modulus',
  throughExpansion: 'expansion',
  interlaminarTension: 'interlaminarStrength',
  interlaminarShear: 'interlaminarStrength',
};

export const plyNumbers: Table = {
  axialModulus: 'modulus',
  transverseModulus: 'modulus',
  shearModulus: 'shearModulus',
  poisson: 'poisson',
  transverseShearModulus: 'shearModulus',
  axialExpansion: 'expansion',
  transverseExpansion: 'expansion',
  thickness: 'plyThickness',
  tensileStrength: 'strength',
  compressiveStrength: 'strength',
  transverseTensileStrength: 'strength',
  transverseCompressiveStrength: 'strength',
  shearStrength: 'strength',
  interlaminarTension: 'interlaminarStrength',
  interlaminarShear: 'interlaminarStrength',
};

export const adhesiveStateNumbers: Table = {
  temperature: 'temperature',
  modulus: 'adhesiveModulus',
  shearModulus: 'adhesiveShearModulus',
  shearYield: 'shearYield',
  plasticStrain: 'plasticStrain',
};
/** May be left out of a state, and of an adhesive. */
export const optionalStateNumbers: Table = { peelStrength: 'peelStrength' };
export const optionalAdhesiveNumbers: Table = { expansion: 'expansion' };
export const fractureNumbers: Table = {
  modeI: 'fractureEnergy',
  modeII: 'fractureEnergy',
  exponent: 'fractureExponent',
};
export const knockdownNumbers: Table = {
  environment: 'knockdown',
  ageing: 'knockdown',
  scatter: 'knockdown',
};
export const gapKnockdownNumbers: Table = { gap: 'gap', factor: 'knockdown' };
export const fatigueNumbers: Table = {
  coefficient: 'fatigueCoefficient',
  exponent: 'fatigueExponent',
};
/** May be left out of a line of lives, and of a cyclic case. */
export const optionalRatioNumbers: Table = { ratio: 'loadRatio' };
/** May be left out of isotropic and orthotropic adherends, plies and adhesives. */
export const densityNumbers: Table = { density: 'density' };
export const printingNumbers: Table = {
  'printing.layerThickness': 'layerThickness',
  'printing.base': 'printBase',
};
export const stepNumbers: Table = {
  'steps.overlap': 'step',
  'steps.wall': 'step',
  'steps.gap': 'gapStep',
};
export const sleeveSizeNumbers: Table = {
  outsideDiameter: 'outsideDiameter',
  tubeWall: 'wall',
  wallFactor: 'wallFactor',
  loadFactor: 'loadFactor',
};
export const flatSizeNumbers: Table = {
  width: 'width',
  thickness: 'wall',
  wallFactor: 'wallFactor',
  loadFactor: 'loadFactor',
};
const spreads: Readonly<Record<string, QuantityName>> = {
  overlap: 'toleranceSize',
  gap: 'toleranceSize',
  offset: 'toleranceSize',
  'tube-diameter': 'toleranceSize',
  'tube-wall': 'toleranceSize',
  'sleeve-wall': 'toleranceSize',
  'service-temperature': 'toleranceTemperature',
  'stress-free-temperature': 'toleranceTemperature',
};
export const settingsNumbers: Table = {
  targetMargin: 'targetMargin',
  'factors.limit': 'factor',
  'factors.ultimate': 'factor',
  'factors.fitting': 'factor',
};
export const sleeveLoadNumbers: Table = {
  force: 'force',
  moment: 'moment',
  torque: 'torque',
  shear: 'shear',
};

export const benchNumbers: Table = {
  jigOffset: 'offset',
  waste: 'wasteFactor',
};
export const limitNumbers: Table = { from: 'gap', to: 'gap' };
export const instrumentNumbers: Table = {
  error: 'instrumentError',
  repeatability: 'repeatability',
};
export const mixNumbers: Table = { 'mix.resin': 'mixParts', 'mix.hardener': 'mixParts' };
export const processNumbers: Table = { openTime: 'openTime' };
export const cureNumbers: Table = { temperature: 'temperature', hours: 'cureHours' };

const tube: Table = { 'tube.outsideDiameter': 'outsideDiameter', 'tube.wall': 'wall' };
const strip: Table = { 'strip.thickness': 'wall' };
const wall = (name: string): Table => ({ [`${name}.atRoot`]: 'wall', [`${name}.atMouth`]: 'wall' });
const bond = (name: string): Table => ({
  [`${name}.gap`]: 'gap',
  [`${name}.tolerance`]: 'gapTolerance',
});

export const jointNumbers: Readonly<Record<Joint['type'], Table>> = {
  'sleeve-single': {
    overlap: 'overlap',
    offset: 'offset',
    ...tube,
    ...wall('sleeve'),
    ...bond('bond'),
  },
  'sleeve-double': {
    overlap: 'overlap',
    offset: 'offset',
    ...tube,
    ...wall('spigot'),
    ...wall('socket'),
    ...bond('innerBond'),
    ...bond('outerBond'),
  },
  'flat-single': {
    overlap: 'overlap',
    width: 'width',
    ...strip,
    ...wall('plate'),
    ...bond('bond'),
  },
  'flat-double': {
    overlap: 'overlap',
    width: 'width',
    ...strip,
    ...wall('lowerStrap'),
    ...wall('upperStrap'),
    ...bond('lowerBond'),
    ...bond('upperBond'),
  },
};

const at = (where: Path, table: Table): NumberAt[] =>
  Object.entries(table).map(([field, quantity]) => ({
    path: [...where, ...field.split('.')],
    quantity,
  }));

/** Those of the table that the project has. */
const given = (project: Project, where: Path, table: Table): NumberAt[] =>
  at(where, table)
    .filter(({ path }) => valueAt(project, path) !== undefined)
    .map((number) => ({ ...number, optional: true }));

function numbersOfAdhesive(project: Project, i: number): NumberAt[] {
  const { states, fatigue, fracture, knockdowns, process } = project.adhesives[i]!;
  const where = ['adhesives', i];
  return [
    ...at(where, { stressFreeTemperature: 'temperature' }),
    ...states.flatMap((_, k) => [
      ...at([...where, 'states', k], adhesiveStateNumbers),
      ...given(project, [...where, 'states', k], optionalStateNumbers),
    ]),
    ...given(project, where, optionalAdhesiveNumbers),
    ...given(project, where, densityNumbers),
    ...(fracture ? at([...where, 'fracture'], fractureNumbers) : []),
    ...(knockdowns ? at([...where, 'knockdowns'], knockdownNumbers) : []),
    ...(knockdowns?.gap ?? []).flatMap((_, k) =>
      at([...where, 'knockdowns', 'gap', k], gapKnockdownNumbers),
    ),
    ...(fatigue ? at([...where, 'fatigue'], fatigueNumbers) : []),
    ...(fatigue ? given(project, [...where, 'fatigue'], optionalRatioNumbers) : []),
    ...(process?.mix ? at([...where, 'process'], mixNumbers) : []),
    ...given(project, [...where, 'process'], processNumbers),
    ...(process?.cure ?? []).flatMap((_, k) => at([...where, 'process', 'cure', k], cureNumbers)),
  ];
}

function numbersOfBench(project: Project, bench: Joint['bench'], where: Path): NumberAt[] {
  const list = (name: 'stations' | 'clockings', quantity: QuantityName): NumberAt[] =>
    (bench?.[name] ?? []).map((_, i) => ({ path: [...where, name, i], quantity, optional: true }));
  return [
    ...given(project, where, benchNumbers),
    ...(bench?.spacer ? at(where, { 'spacer.size': 'spacerSize' }) : []),
    ...Object.keys(bench?.limits ?? {}).flatMap((key) =>
      at([...where, 'limits', key], limitNumbers),
    ),
    ...list('stations', 'station'),
    ...list('clockings', 'clocking'),
  ];
}

function numbersOfJoint(
  project: Project,
  { type, loads, sizes, bench }: Joint,
  where: Path,
): NumberAt[] {
  const flat = type.startsWith('flat');
  const loadNumbers: Table = flat ? { force: 'force' } : sleeveLoadNumbers;
  const ofLoads = (list: readonly unknown[], at_: Path): NumberAt[] =>
    list.flatMap((_, k) => at([...at_, 'loads', k], loadNumbers));
  return [
    ...at(where, jointNumbers[type]),
    ...numbersOfBench(project, bench, [...where, 'bench']),
    ...ofLoads(loads, where),
    ...(sizes ?? []).flatMap((size, i) => [
      ...given(project, [...where, 'sizes', i], flat ? flatSizeNumbers : sleeveSizeNumbers),
      ...ofLoads(size.loads ?? [], [...where, 'sizes', i]),
    ]),
  ];
}

export function numbersOf(project: Project): NumberAt[] {
  return [
    ...at(['settings'], settingsNumbers),
    ...(project.settings.printing ? at(['settings'], printingNumbers) : []),
    ...(project.settings.steps ? at(['settings'], stepNumbers) : []),
    ...(project.settings.tolerances ?? []).flatMap(({ input }, i) =>
      at(['settings', 'tolerances', i], { spread: spreads[input] ?? 'toleranceShare' }),
    ),
    ...(project.plies ?? []).flatMap((_, i) => [
      ...at(['plies', i], plyNumbers),
      ...given(project, ['plies', i], densityNumbers),
    ]),
    ...(project.conditions ?? []).flatMap((_, i) =>
      at(['conditions', i], { temperature: 'temperature' }),
    ),
    ...project.adherends.flatMap(({ kind }, i) => [
      ...at(['adherends', i], adherendNumbers[kind]),
      ...(kind === 'orthotropic' ? given(project, ['adherends', i], throughThicknessNumbers) : []),
      ...given(project, ['adherends', i], densityNumbers),
    ]),
    ...project.adhesives.flatMap((_, i) => numbersOfAdhesive(project, i)),
    ...project.loadCases.flatMap(({ kind }, i) =>
      at(['loadCases', i], {
        temperature: 'temperature',
        ...(kind === 'cyclic' ? { cycles: 'cycles' as const } : {}),
      }),
    ),
    ...project.joints.flatMap((joint, i) => numbersOfJoint(project, joint, ['joints', i])),
    ...(project.instruments ?? []).flatMap((_, i) => at(['instruments', i], instrumentNumbers)),
    ...(project.variants ?? []).flatMap(({ joint }, i) =>
      numbersOfJoint(project, joint, ['variants', i, 'joint']),
    ),
  ];
}

/** Paths of all numbers that stand in a document, whatever they mean. */
export function pathsOfNumbers(value: unknown, where: Path = []): Path[] {
  if (typeof value === 'number') return [where];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    pathsOfNumbers(inner, [...where, Array.isArray(value) ? Number(key) : key]),
  );
}

export const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce(
    (value, key) => (value as Record<string | number, unknown> | undefined)?.[key],
    document,
  );

/** A deep copy with one thing put in, or taken out when it is undefined. */
export function withAt(document: unknown, path: Path, value: unknown): unknown {
  const copy = structuredClone(document);
  let inner = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) inner = inner[key] as Record<string | number, unknown>;
  const last = path.at(-1)!;
  if (value === undefined) delete inner[last];
  else inner[last] = value;
  return copy;
}
