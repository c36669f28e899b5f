/** A change of the document in words: `overlap 24.0 → 30.0 mm, Landing leg`. */
import type { Project } from './project.ts';
import type { QuantityName } from './quantities.ts';
import { displayUnit, toDisplay, toldApart } from './units.ts';

type Path = readonly (string | number)[];
type Words = readonly [words: string, quantity?: QuantityName];

/** What keys of the document are called, and the quantity of those that are numbers. */
const keys: Readonly<Record<string, Words>> = {
  overlap: ['overlap', 'overlap'],
  outsideDiameter: ['outside diameter', 'outsideDiameter'],
  wall: ['wall', 'wall'],
  atRoot: ['wall at root', 'wall'],
  atMouth: ['wall at mouth', 'wall'],
  thickness: ['thickness', 'wall'],
  width: ['width', 'width'],
  gap: ['gap', 'gap'],
  tolerance: ['gap tolerance', 'gapTolerance'],
  offset: ['axis offset', 'offset'],
  force: ['axial force', 'force'],
  moment: ['bending moment', 'moment'],
  torque: ['torque', 'torque'],
  shear: ['transverse shear', 'shear'],
  temperature: ['temperature', 'temperature'],
  stressFreeTemperature: ['stress-free temperature', 'temperature'],
  cycles: ['cycles', 'cycles'],
  ratio: ['load ratio', 'loadRatio'],
  modulus: ['modulus'],
  shearModulus: ['shear modulus'],
  shearYield: ['shear yield', 'shearYield'],
  plasticStrain: ['plastic strain', 'plasticStrain'],
  peelStrength: ['peel strength', 'peelStrength'],
  expansion: ['expansion', 'expansion'],
  density: ['density', 'density'],
  modeI: ['fracture energy, opening', 'fractureEnergy'],
  modeII: ['fracture energy, sliding', 'fractureEnergy'],
  coefficient: ['S-N coefficient', 'fatigueCoefficient'],
  exponent: ['exponent'],
  fatigue: ['S-N line'],
  fracture: ['fracture energies'],
  environment: ['knockdown, environment', 'knockdown'],
  ageing: ['knockdown, ageing', 'knockdown'],
  scatter: ['knockdown, scatter', 'knockdown'],
  knockdowns: ['knockdowns'],
  allowables: ['allowables'],
  states: ['properties by temperature'],
  loads: ['loads'],
  loadCases: ['load cases'],
  conditions: ['conditions'],
  everyCondition: ['judged in every condition'],
  adhesive: ['adhesive'],
  adhesives: ['adhesives'],
  adherend: ['material'],
  adherends: ['materials'],
  plies: ['plies'],
  stack: ['stack'],
  joints: ['joint'],
  variants: ['variants'],
  sizes: ['sizes'],
  bench: ['what the bench is asked for'],
  instruments: ['instruments'],
  gapChecks: ['gap checks'],
  coupons: ['coupons'],
  specimens: ['test pieces'],
  sets: ['sets of coupons'],
  life: ['sets of lives'],
  results: ['results of coupons'],
  planned: ['coupons planned'],
  tested: ['day of the test'],
  diameters: ['readings'],
  surfaces: ['measured surfaces'],
  cure: ['cure'],
  process: ['mix and cure'],
  moisture: ['moisture'],
  kind: ['kind'],
  name: ['name'],
  note: ['note'],
  text: ['source in words'],
  source: ['source'],
  edgeMoment: ['edge moment'],
  tolerances: ['tolerances'],
  fitting: ['fitting factor', 'factor'],
  sheet: ['words of the sheet'],
  job: ['job number'],
  drawing: ['drawing number'],
  prepared: ['prepared by'],
  checked: ['checked by'],
  approved: ['approved by'],
  revisions: ['revisions of the sheet'],
};

/** Settings of the project are named by their whole place: a step of the overlap is no overlap. */
const settings: Readonly<Record<string, Words>> = {
  targetMargin: ['target margin', 'targetMargin'],
  'factors.limit': ['factor on limit loads', 'factor'],
  'factors.ultimate': ['factor on ultimate loads', 'factor'],
  'factors.fitting': ['fitting factor', 'factor'],
  adherendShear: ['shear of the walls included'],
  steps: ['sizing steps'],
  'steps.overlap': ['sizing step of the overlap', 'step'],
  'steps.wall': ['sizing step of walls', 'step'],
  'steps.gap': ['sizing step of gaps', 'gapStep'],
  printing: ['printing'],
  'printing.layerThickness': ['printed layer', 'layerThickness'],
  'printing.base': ['printed base', 'printBase'],
};
const ofSettings = (path: Path): Words | undefined =>
  path[0] === 'settings' ? settings[path.slice(1).join('.')] : undefined;

/** `tubeSerial` as `tube serial`. */
const plainKey = (key: string): string => key.replace(/([A-Z])/g, ' $1').toLowerCase();

/** What the last key of a path is called. */
export const keyWords = (path: readonly string[]): string => {
  const key = path.at(-1) ?? '';
  return (ofSettings(path) ?? keys[key])?.[0] ?? plainKey(key);
};

const at = (root: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (here, key) =>
      typeof here === 'object' && here !== null
        ? (here as Record<string | number, unknown>)[key]
        : undefined,
    root,
  );

const nameOf = (value: unknown): string | null => {
  if (typeof value !== 'object' || value === null || !('name' in value)) return null;
  return typeof value.name === 'string' && value.name !== '' ? value.name : null;
};

/** Names of what holds the place: a joint, an adhesive, a load case; the innermost last. */
function ownersOf(document: Project, path: Path): string[] {
  const owners: string[] = [];
  for (let i = 1; i < path.length; i++) {
    const here = at(document, path.slice(0, i));
    const name = nameOf(here);
    if (name !== null) owners.push(name);
    const caseId = at(here, ['case']);
    const found = document.loadCases.find(({ id }) => id === caseId);
    if (found) owners.push(found.name);
  }
  return owners;
}

const LONG = 40;
const short = (text: string): string => (text.length > LONG ? `${text.slice(0, LONG - 1)}…` : text);
const quoted = (text: string): string => (text === '' ? 'nothing' : `“${short(text)}”`);

function valueText(value: unknown, quantity: QuantityName | undefined): string {
  if (value === undefined) return 'not set';
  if (typeof value === 'number') {
    return (quantity ? toDisplay(quantity, value) : String(value)).replace('-', '−');
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return quoted(String(value));
}

/** Two values that differ read differently. */
function valueTexts(
  before: unknown,
  after: unknown,
  quantity: QuantityName | undefined,
): readonly [string, string] {
  if (quantity && typeof before === 'number' && typeof after === 'number') {
    return toldApart(quantity, before, after);
  }
  return [valueText(before, quantity), valueText(after, quantity)];
}

const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null;

/** What was added to or taken out of a list, by name where it has one. */
function listWords(before: readonly unknown[], after: readonly unknown[]): string | null {
  if (before.length === after.length) return null;
  const [longer, other] = after.length > before.length ? [after, before] : [before, after];
  const there = new Set(other.map((one) => JSON.stringify(one)));
  const [found] = longer.filter((one) => !there.has(JSON.stringify(one)));
  const name = nameOf(found);
  const what = after.length > before.length ? 'added' : 'removed';
  return name === null ? what : `${what} ${quoted(name)}`;
}

/**
 * @param document as it is, before or after the change: names are looked up in it
 * @param before undefined where there was nothing
 */
export function changeWords(
  document: Project,
  path: Path,
  before: unknown,
  after: unknown,
): string {
  const last = path.at(-1)!;
  const key = typeof last === 'number' ? path.findLast((one) => typeof one === 'string') : last;
  const [words, quantity] = ofSettings(path) ?? keys[String(key)] ?? [plainKey(String(key))];
  const owners = ownersOf(document, path);
  const of = owners.length > 0 ? `, ${owners.map(short).join(', ')}` : '';
  if (isPlain(before) && isPlain(after) && typeof last !== 'number') {
    const symbol = quantity ? displayUnit(quantity).symbol : '';
    const [from, to] = valueTexts(before, after, quantity);
    const unit = symbol !== '' && after !== undefined ? ` ${symbol}` : '';
    return `${words} ${from} → ${to}${unit}${of}`;
  }
  if (Array.isArray(before) || Array.isArray(after)) {
    const said = listWords(
      (before as readonly unknown[] | undefined) ?? [],
      (after as readonly unknown[] | undefined) ?? [],
    );
    return `${words}${said === null ? '' : `: ${said}`}${of}`;
  }
  const name = nameOf(after) ?? nameOf(before);
  const named = name === null || owners.includes(name) ? of : `: ${quoted(name)}${of}`;
  if (before === undefined) return `${words} added${named}`;
  return after === undefined ? `${words} removed${named}` : `${words}${named}`;
}
