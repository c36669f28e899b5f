/**
 * What must hold between the fields of a project: ids are unique, references exist, wet cases find
 * wet properties. Sizes that must fit inside one another are the model's to refuse.
 */
import type { Adhesive, Joint, Laminate, Project } from './project.ts';
import { brokenBench, brokenChecks } from './project-bench-rules.ts';
import { brokenCoupons } from './project-coupons-rules.ts';
import { readStack } from './stack-notation.ts';

export interface Broken {
  /** Dotted path of the input to change. */
  readonly field: string;
  readonly message: string;
}

function repeatedIds(list: readonly { readonly id: string }[], where: string): Broken | null {
  const seen = new Set<string>();
  for (const [i, { id }] of list.entries()) {
    if (seen.has(id)) {
      return { field: `${where}.${i}.id`, message: `the id "${id}" is used twice: choose another` };
    }
    seen.add(id);
  }
  return null;
}

/** Every place in a joint that names an adherend, with the name. */
export function adherendReferences(
  joint: Joint,
): readonly (readonly [field: string, id: string])[] {
  switch (joint.type) {
    case 'sleeve-single':
      return [
        ['tube.adherend', joint.tube.adherend],
        ['sleeve.adherend', joint.sleeve.adherend],
      ];
    case 'sleeve-double':
      return [
        ['tube.adherend', joint.tube.adherend],
        ['spigot.adherend', joint.spigot.adherend],
        ['socket.adherend', joint.socket.adherend],
      ];
    case 'flat-single':
      return [
        ['strip.adherend', joint.strip.adherend],
        ['plate.adherend', joint.plate.adherend],
      ];
    case 'flat-double':
      return [
        ['strip.adherend', joint.strip.adherend],
        ['lowerStrap.adherend', joint.lowerStrap.adherend],
        ['upperStrap.adherend', joint.upperStrap.adherend],
      ];
  }
}

function brokenJoint(project: Project, joint: Joint, where: string): Broken | null {
  for (const [field, id] of adherendReferences(joint)) {
    if (!project.adherends.some((adherend) => adherend.id === id)) {
      return { field: `${where}.${field}`, message: `there is no adherend with the id "${id}"` };
    }
  }
  const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive);
  if (!adhesive) {
    return {
      field: `${where}.adhesive`,
      message: `there is no adhesive with the id "${joint.adhesive}"`,
    };
  }
  const seen = new Set<string>();
  for (const [i, load] of joint.loads.entries()) {
    const field = `${where}.loads.${i}.case`;
    const loadCase = project.loadCases.find(({ id }) => id === load.case);
    if (!loadCase) return { field, message: `there is no load case with the id "${load.case}"` };
    if (seen.has(load.case)) {
      return { field, message: `the load case "${load.case}" stands twice in this joint` };
    }
    seen.add(load.case);
    const without = [
      { what: 'load case', ...loadCase },
      ...(loadCase.everyCondition ? (project.conditions ?? []) : []).map((condition) => ({
        what: 'condition',
        ...condition,
      })),
    ].find(({ moisture }) => !adhesive.states.some((state) => state.moisture === moisture));
    if (without) {
      const { what, name, moisture } = without;
      return {
        field: `${where}.adhesive`,
        message: `the ${what} "${name}" is ${moisture}, but the adhesive "${adhesive.name}" has no ${moisture} properties: add a ${moisture} state to it or choose another adhesive`,
      };
    }
  }
  return brokenBench(joint, where) ?? brokenSizes(project, joint, where);
}

function brokenSizes(project: Project, { sizes }: Joint, where: string): Broken | null {
  const repeated = repeatedIds(sizes ?? [], `${where}.sizes`);
  if (repeated) return repeated;
  for (const [i, { loads }] of (sizes ?? []).entries()) {
    const seen = new Set<string>();
    for (const [k, load] of (loads ?? []).entries()) {
      const field = `${where}.sizes.${i}.loads.${k}.case`;
      if (!project.loadCases.some(({ id }) => id === load.case)) {
        return { field, message: `there is no load case with the id "${load.case}"` };
      }
      if (seen.has(load.case)) {
        return { field, message: `the load case "${load.case}" stands twice in this size` };
      }
      seen.add(load.case);
    }
  }
  return null;
}

function brokenVariants(project: Project): Broken | null {
  const seen = new Set(project.joints.map(({ id }) => id));
  for (const [i, { of, joint }] of (project.variants ?? []).entries()) {
    const where = `variants.${i}`;
    if (!project.joints.some(({ id }) => id === of)) {
      return { field: `${where}.of`, message: `there is no joint with the id "${of}"` };
    }
    if (seen.has(joint.id)) {
      return {
        field: `${where}.joint.id`,
        message: `the id "${joint.id}" is used twice: choose another`,
      };
    }
    seen.add(joint.id);
    const broken = brokenJoint(project, joint, `${where}.joint`);
    if (broken) return broken;
  }
  return null;
}

function brokenTolerances({ settings }: Project): Broken | null {
  const seen = new Set<string>();
  for (const [i, { input }] of (settings.tolerances ?? []).entries()) {
    if (seen.has(input)) {
      return {
        field: `settings.tolerances.${i}.input`,
        message: `"${input}" stands twice among the tolerances: keep one`,
      };
    }
    seen.add(input);
  }
  return null;
}

function brokenLaminate(project: Project, { ply, stack }: Laminate): Broken | null {
  if (!project.plies?.some(({ id }) => id === ply)) {
    return { field: 'ply', message: `there is no ply with the id "${ply}"` };
  }
  const reading = readStack(stack);
  return reading.ok ? null : { field: 'stack', message: reading.message };
}

/** Place of the first entry that stands in the list before, or −1. */
const firstRepeated = (keys: readonly (string | number)[]): number =>
  keys.findIndex((key, i) => keys.indexOf(key) < i);

/** Rows of both tables may stand in any order; two at one place would say two things of it. */
function brokenAdhesive({ name, states, knockdowns, allowables = [] }: Adhesive): Broken | null {
  const state = firstRepeated(
    states.map(({ temperature, moisture }) => `${temperature} ${moisture}`),
  );
  if (state >= 0) {
    const { temperature, moisture } = states[state]!;
    return {
      field: `states.${state}.temperature`,
      message: `"${name}" has two ${moisture} states at ${temperature} °C: keep one`,
    };
  }
  const allowed = firstRepeated(
    allowables.map(({ temperature, moisture }) => `${temperature} ${moisture}`),
  );
  if (allowed >= 0) {
    const { temperature, moisture } = allowables[allowed]!;
    return {
      field: `allowables.${allowed}.temperature`,
      message: `"${name}" has two allowables at ${temperature} °C ${moisture}: keep one`,
    };
  }
  const rows = knockdowns?.gap ?? [];
  const row = firstRepeated(rows.map(({ gap }) => gap));
  return row < 0
    ? null
    : {
        field: `knockdowns.gap.${row}.gap`,
        message: `"${name}" has two rows of strength at a gap of ${rows[row]!.gap} mm: keep one`,
      };
}

/** The first rule that the project breaks, or null. */
export function brokenRule(project: Project): Broken | null {
  for (const list of [
    'plies',
    'adherends',
    'adhesives',
    'conditions',
    'loadCases',
    'joints',
    'instruments',
    'gapChecks',
  ] as const) {
    const repeated = repeatedIds(project[list] ?? [], list);
    if (repeated) return repeated;
  }
  for (const [i, adherend] of project.adherends.entries()) {
    if (adherend.kind === 'isotropic' && adherend.ultimateStrength < adherend.yieldStrength) {
      return {
        field: `adherends.${i}.ultimateStrength`,
        message: `the ultimate strength of "${adherend.name}" is below its yield strength`,
      };
    }
    if (adherend.kind === 'orthotropic') {
      const { poisson, axialModulus, hoopModulus } = adherend;
      // No solid stores negative energy: νxθ·νθx < 1.
      if (poisson * poisson * hoopModulus >= axialModulus) {
        return {
          field: `adherends.${i}.poisson`,
          message: `no material can have the Poisson ratio ${poisson} with these moduli: change it so that its square is below axial over hoop modulus`,
        };
      }
    }
    const laminate = adherend.kind === 'laminate' ? brokenLaminate(project, adherend) : null;
    if (laminate) {
      return { ...laminate, field: `adherends.${i}.${laminate.field}` };
    }
  }
  for (const [i, adhesive] of project.adhesives.entries()) {
    const broken = brokenAdhesive(adhesive);
    if (broken) return { ...broken, field: `adhesives.${i}.${broken.field}` };
  }
  for (const [i, joint] of project.joints.entries()) {
    const broken = brokenJoint(project, joint, `joints.${i}`);
    if (broken) return broken;
  }
  return (
    brokenVariants(project) ??
    brokenTolerances(project) ??
    brokenChecks(project) ??
    brokenCoupons(project)
  );
}
