/**
 * Joint number i of a seed: a project of one joint, anywhere in the declared ranges. Wide ranges are drawn by their
 * logarithm, and a tenth of the values are an end of theirs.
 */
import { uniforms } from '../../../src/model/scatter/philox.ts';
import type { Adherend, Adhesive, Bond, Joint, Project } from '../../../src/shared/project.ts';
import { type QuantityName, quantities } from '../../../src/shared/quantities.ts';

const source = { kind: 'typical', text: 'random' } as const;
const STACKS = ['[0]', '[0/90]s', '[0/±45/90]s', '[30/-30]', '[0/45]', '[±45]2s', '[90]'] as const;
const OFTEN_NONE = [0, 0, 0.005, 0.05] as const;
const TYPES = ['sleeve-single', 'sleeve-double', 'flat-single', 'flat-double'] as const;

class Dice {
  readonly #uniform: (stream: number) => number;
  #drawn = 0;

  constructor(seed: number, index: number) {
    const draw = uniforms(seed);
    this.#uniform = (stream) => draw(index, stream);
  }

  unit(): number {
    return this.#uniform(this.#drawn++);
  }
  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.unit() * of.length)]!;
  }
  chance(share: number): boolean {
    return this.unit() < share;
  }
  between(min: number, max: number): number {
    return min > 0 && max / min > 10
      ? min * (max / min) ** this.unit()
      : min + (max - min) * this.unit();
  }
  any(name: QuantityName): number {
    const { min, max } = quantities[name];
    if (this.chance(0.1)) return this.one(min < 0 && max > 0 ? [min, 0, max] : [min, max]);
    if (min < 0 && this.chance(0.5)) {
      return this.one([-1, 1]) * Math.min(-min, max) * 10 ** (-6 * this.unit());
    }
    return Math.min(Math.max(this.between(min, max), min), max);
  }
}

function adherend(dice: Dice, id: string): Adherend {
  const kind = dice.one(['isotropic', 'orthotropic', 'laminate'] as const);
  const named = { id, name: id, source };
  if (kind === 'laminate') return { ...named, kind, ply: 'ply', stack: dice.one(STACKS) };
  if (kind === 'isotropic') {
    return {
      ...named,
      kind,
      modulus: dice.any('modulus'),
      poisson: dice.any('poisson'),
      expansion: dice.any('expansion'),
      yieldStrength: dice.any('strength'),
      ultimateStrength: quantities.strength.max,
    };
  }
  const axialModulus = dice.any('modulus');
  const hoopModulus = dice.any('modulus');
  // No solid has a Poisson ratio beyond this.
  const most = Math.min(Math.sqrt((0.99 * axialModulus) / hoopModulus), 1.5);
  return {
    ...named,
    kind,
    axialModulus,
    hoopModulus,
    shearModulus: dice.any('shearModulus'),
    poisson: dice.between(Math.max(-most, -0.5), most),
    axialExpansion: dice.any('expansion'),
    hoopExpansion: dice.any('expansion'),
    throughShearModulus: dice.any('shearModulus'),
    ...(dice.chance(0.5)
      ? { throughModulus: dice.any('modulus'), throughExpansion: dice.any('expansion') }
      : {}),
    tensileStrength: dice.any('strength'),
    compressiveStrength: dice.any('strength'),
    shearStrength: dice.any('strength'),
  };
}

/** A ply of usual proportions: its own rules are tested where plies are. */
const ply = (dice: Dice): NonNullable<Project['plies']>[number] => ({
  id: 'ply',
  name: 'ply',
  axialModulus: dice.between(30_000, 500_000),
  transverseModulus: dice.between(3_000, 20_000),
  shearModulus: dice.between(2_000, 10_000),
  poisson: dice.between(0.1, 0.4),
  transverseShearModulus: dice.between(7_000, 10_000),
  axialExpansion: dice.any('expansion'),
  transverseExpansion: dice.any('expansion'),
  thickness: dice.between(0.05, 1),
  tensileStrength: dice.any('strength'),
  compressiveStrength: dice.any('strength'),
  transverseTensileStrength: dice.any('strength'),
  transverseCompressiveStrength: dice.any('strength'),
  shearStrength: dice.any('strength'),
  interlaminarTension: dice.any('interlaminarStrength'),
  interlaminarShear: dice.any('interlaminarStrength'),
  source,
});

function adhesive(dice: Dice): Adhesive {
  const temperatures = [...new Set([-55, 23, 90].filter(() => dice.chance(0.7)))];
  return {
    id: 'glue',
    name: 'glue',
    source,
    stressFreeTemperature: dice.any('temperature'),
    states: (temperatures.length > 0 ? temperatures : [23]).map((temperature) => ({
      temperature,
      moisture: 'dry',
      modulus: dice.any('adhesiveModulus'),
      shearModulus: dice.any('adhesiveShearModulus'),
      shearYield: dice.any('shearYield'),
      plasticStrain: dice.any('plasticStrain'),
      peelStrength: dice.any('peelStrength'),
    })),
    knockdowns: {
      environment: dice.any('knockdown'),
      ageing: dice.any('knockdown'),
      scatter: dice.any('knockdown'),
      gap: [],
      source,
    },
  };
}

function joint(dice: Dice, tapers: boolean): Joint {
  const type = dice.one(TYPES);
  const part = () => ({ adherend: dice.one(['a', 'b']) });
  const wall = () => {
    const atRoot = dice.between(0.1, 8);
    return {
      ...part(),
      atRoot,
      atMouth: tapers && dice.chance(0.3) ? dice.between(0.1, 8) : atRoot,
    };
  };
  const bond = (): Bond => {
    const gap = dice.any('gap');
    return { gap, tolerance: gap * 0.6 * dice.unit() };
  };
  const common = { id: 'j', name: 'j', adhesive: 'glue', overlap: dice.any('overlap') };
  const load = (name: QuantityName): number => (dice.chance(0.5) ? dice.any(name) : 0);
  const force = dice.chance(0.8) ? dice.any('force') : 0;
  if (type === 'flat-single' || type === 'flat-double') {
    const flat = {
      ...common,
      width: dice.any('width'),
      strip: { ...part(), thickness: dice.between(0.1, 10) },
      loads: [{ case: 'c', force }],
    };
    return type === 'flat-single'
      ? { ...flat, type, plate: wall(), bond: bond() }
      : {
          ...flat,
          type,
          lowerStrap: wall(),
          upperStrap: wall(),
          lowerBond: bond(),
          upperBond: bond(),
        };
  }
  const sleeve = {
    ...common,
    tube: { ...part(), outsideDiameter: dice.between(8, 200), wall: dice.between(0.1, 5) },
    offset: dice.one(OFTEN_NONE),
    loads: [
      { case: 'c', force, moment: load('moment'), torque: load('torque'), shear: load('shear') },
    ],
  };
  return type === 'sleeve-single'
    ? { ...sleeve, type, side: dice.one(['socket', 'spigot']), sleeve: wall(), bond: bond() }
    : {
        ...sleeve,
        type,
        spigot: wall(),
        socket: wall(),
        innerBond: bond(),
        outerBond: bond(),
      };
}

/** @param tapers whether some walls taper */
export function randomJoint(seed: number, index: number, tapers: boolean): Project {
  const dice = new Dice(seed, index);
  return {
    format: 'lapwright-project',
    version: 1,
    name: 'random',
    settings: {
      targetMargin: 0,
      factors: { limit: dice.any('factor'), ultimate: dice.any('factor'), fitting: 1 },
      adherendShear: dice.chance(0.5),
      edgeMoment: dice.one(['goland-reissner', 'hart-smith']),
    },
    plies: [ply(dice)],
    adherends: [adherend(dice, 'a'), adherend(dice, 'b')],
    adhesives: [adhesive(dice)],
    loadCases: [
      {
        id: 'c',
        name: 'c',
        kind: dice.one(['limit', 'ultimate']),
        temperature: dice.any('temperature'),
        moisture: 'dry',
      },
    ],
    joints: [joint(dice, tapers)],
  };
}
