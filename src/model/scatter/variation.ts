/** The tolerances of one joint, and its strength as a function of the inputs they move. */
import type { ModelSettings } from '../joint/types.ts';
import {
  streams,
  type Tolerance,
  type ToleranceOrigin,
  typicalTolerances,
  type VariedInput,
  variedInputs,
} from './inputs.ts';
import { lowestRow, type Row, type RowValue, rowKey, rowsAt, sampledStates } from './joint-rows.ts';
import type { ScatterProblem, Strength } from './problem.ts';
import type { Distribution } from './quantiles.ts';
import type { Hinge } from './surface.ts';
import { type Changes, changed, type Study } from './varied.ts';

export interface Variation {
  readonly input: VariedInput;
  readonly distribution: Distribution;
  /** Standard deviation or half-width; for gaps with their own tolerances the largest of these. */
  readonly spread: number;
  /** What is added to the input's own value in the middle; not 0 for an offset from 0 to its own. */
  readonly middle: number;
  readonly origin: ToleranceOrigin;
}

export const bondsOf = ({ joint }: Study) =>
  joint.type === 'sleeve-double'
    ? [joint.innerBond, joint.outerBond]
    : joint.type === 'flat-double'
      ? [joint.lowerBond, joint.upperBond]
      : [joint.bond];

function fromJoint(study: Study, input: VariedInput): Variation | null {
  const common = { input, distribution: 'uniform', origin: 'joint' } as const;
  if (input === 'gap') {
    const spread = Math.max(...bondsOf(study).map(({ tolerance }) => tolerance));
    return { ...common, spread, middle: 0 };
  }
  if (input === 'offset' && 'offset' in study.joint) {
    const half = study.joint.offset / 2;
    return { ...common, spread: half, middle: -half };
  }
  return null;
}

const ofFlat: ReadonlySet<VariedInput> = new Set(['offset', 'tube-diameter']);

/** Whether a joint of this kind has such an input. */
export const applies = ({ joint }: Study, input: VariedInput): boolean =>
  'offset' in joint || !ofFlat.has(input);

/**
 * How an input of this joint varies: as the project says; gap and offset by the joint's own where the
 * project does not say; all else by the typical values where the project says nothing at all.
 * @param given null when the project has no tolerances
 * @returns null when nothing says how
 */
export function variationOf(
  study: Study,
  given: readonly Tolerance[] | null,
  input: VariedInput,
): Variation | null {
  const own = given?.find((tolerance) => tolerance.input === input);
  if (own) return { ...own, middle: 0, origin: 'project' };
  const typical = given ? undefined : typicalTolerances.get(input);
  return fromJoint(study, input) ?? (typical ? { ...typical, middle: 0, origin: 'typical' } : null);
}

/** Every input of this joint that varies. */
export const variationsOf = (study: Study, given: readonly Tolerance[] | null): Variation[] =>
  variedInputs.flatMap((input) => {
    const variation = applies(study, input) ? variationOf(study, given, input) : null;
    return variation && variation.spread > 0 ? [variation] : [];
  });

const strengths: ReadonlySet<VariedInput> = new Set([
  'shear-yield',
  'plastic-strain',
  'peel-strength',
]);

/**
 * The study whose inputs are sampled. A knockdown for scatter stands for the same thing as a tolerance
 * on the adhesive's strength: where there is such a tolerance, the knockdown is not taken off too.
 */
export function studyOf(study: Study, variations: readonly Variation[]): Study {
  const { knockdowns } = study.adhesive;
  if (!knockdowns || !variations.some(({ input }) => strengths.has(input))) return study;
  const bare = { ...knockdowns, scatter: 1, tested: [] };
  return { ...study, adhesive: { ...study.adhesive, knockdowns: bare } };
}

/** The study with each input at z spreads from its middle. */
export function studyAt(
  study: Study,
  variations: readonly Variation[],
  z: ArrayLike<number>,
): Study {
  const changes: Changes = {};
  let own: number | null = null;
  variations.forEach(({ input, middle, spread, origin }, j) => {
    if (input === 'gap' && origin === 'joint') own = z[j]!;
    else changes[input] = middle + spread * z[j]!;
  });
  const share = own as number | null;
  return share === null
    ? changed(study, changes)
    : changed(study, changes, ({ tolerance }) => share * tolerance);
}

/**
 * Where the model bends: at the rows of the adhesive's table, which is linear between them; at the
 * rows of strength against gap, with the offset or without; and at the stress-free temperature, where
 * thermal stress turns its sign and the worst end of the bond changes.
 */
function hingesOf(study: Study, variations: readonly Variation[]): Hinge[] {
  const { states, knockdowns, stressFreeTemperature } = study.adhesive;
  const place = (input: VariedInput): number => variations.findIndex((v) => v.input === input);
  const [gap, offset, service, free] = (
    ['gap', 'offset', 'service-temperature', 'stress-free-temperature'] as const
  ).map(place) as [number, number, number, number];
  const found = new Map<string, Hinge>();
  /** Σ sign·change of the inputs = at. */
  const add = (at: number, ...signed: (readonly [number, number])[]): void => {
    const weights = variations.map(() => 0);
    let left = at;
    for (const [j, sign] of signed) {
      const variation = variations[j];
      if (!variation) continue;
      weights[j] = sign * variation.spread;
      left -= sign * variation.middle;
    }
    // Equal to rounding is equal.
    found.set(`${weights} ${left.toFixed(9)}`, { weights, at: left });
  };
  for (const { temperature, moisture } of study.cases) {
    for (const row of states) {
      if (row.moisture === moisture) add(row.temperature - temperature, [service, 1]);
    }
    add(stressFreeTemperature - temperature, [service, 1], [free, -1]);
  }
  for (const bond of bondsOf(study)) {
    for (const row of knockdowns?.gap ?? []) {
      for (const side of [-1, 0, 1]) {
        const own = 'offset' in study.joint ? study.joint.offset * side : 0;
        add(row.gap - bond.gap - own, [gap, 1], [offset, side]);
      }
    }
  }
  return [...found.values()].filter(({ weights }) => weights.some((weight) => weight !== 0));
}

export interface JointScatter extends ScatterProblem {
  /** Every row met so far, by its key. */
  readonly known: ReadonlyMap<string, Row>;
  readonly variations: readonly Variation[];
}

/** @param study that of `studyOf` */
export function jointScatter(
  study: Study,
  settings: ModelSettings,
  variations: readonly Variation[],
): JointScatter {
  const known = new Map<string, Row>();
  const named = ({ row, ratio }: RowValue): Strength => {
    const key = rowKey(row);
    if (!known.has(key)) known.set(key, row);
    return { key, ratio };
  };
  return {
    known,
    variations,
    inputs: variations.map(({ input, distribution }) => ({ stream: streams[input], distribution })),
    hinges: hingesOf(study, variations),
    lowest(z) {
      const sample = studyAt(study, variations, z);
      const lowest = lowestRow(sample, settings, sampledStates(sample.joint));
      if (!lowest) throw new RangeError('no load case loads the joint');
      return named(lowest);
    },
    rows(z, wanted) {
      const rows = rowsAt(studyAt(study, variations, z), settings, wanted);
      return new Map([...rows].map(([key, value]) => [key, named(value).ratio]));
    },
  };
}
