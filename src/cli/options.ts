/** Options of the command line: how each is written, read and explained. */
import type { z } from 'zod';
import { figures, requests } from '../shared/contract.ts';
import { readNumber } from '../shared/number-entry.ts';
import { scatterDefaults } from '../shared/reports-scatter.ts';

export type Read = { readonly value: unknown } | { readonly wrong: string };

export interface Option {
  readonly name: string;
  /** Word for its value in the help; none for a switch. */
  readonly takes?: string;
  readonly help: string;
  readonly needed?: boolean;
  /** What it adds is only in the JSON answer: without `--json` it would do nothing. */
  readonly onlyJson?: boolean;
  read(text: string): Read;
}

const minus = (value: number | null): string => String(value).replace('-', '−');

/** Ranges are those of the contract: nothing here says them a second time. */
function numberIn(schema: z.ZodNumber): Option['read'] {
  const { minValue, maxValue } = schema;
  const whole = schema.format === 'safeint';
  const range = `${whole ? 'a whole number' : 'a number'} from ${minus(minValue)} to ${minus(maxValue)}`;
  return (text) => {
    const entry = readNumber(text);
    if (!entry.ok) return { wrong: `${entry.message} It takes ${range}.` };
    const { value } = entry;
    const fits =
      value >= (minValue ?? -Infinity) &&
      value <= (maxValue ?? Infinity) &&
      (!whole || Number.isInteger(value));
    return fits ? { value } : { wrong: `${text} is out of range: it takes ${range}.` };
  };
}

const oneOf =
  (words: readonly string[]): Option['read'] =>
  (text) =>
    words.includes(text)
      ? { value: text }
      : { wrong: `"${text}" is not one of ${words.join(', ')}.` };

const anId: Option['read'] = (text) =>
  text.length > 0 && text.length <= 64
    ? { value: text }
    : { wrong: 'an id has 1 to 64 characters.' };

const on: Option['read'] = () => ({ value: true });

const { focus } = requests['joint.stress'].shape;
const sweep = requests['joint.sweep'].shape;
const gaps = focus.shape.gapState.unwrap().options;

export const joint: Option = {
  name: 'joint',
  takes: 'ID',
  help: "the joint's id",
  needed: true,
  read: anId,
};
export const loadCase: Option = {
  name: 'case',
  takes: 'ID',
  help: 'the id of one of its load cases',
  needed: true,
  read: anId,
};
/** The same where the governing one is meant when it is left out. */
export const anyCase: Option = {
  ...loadCase,
  help: 'the id of one of its load cases; the governing one when left out',
  needed: false,
};
export const anyJoint: Option = {
  ...joint,
  help: "the joint's id; every joint when left out",
  needed: false,
};
/** What stands for a case's own surroundings where a condition can be named. */
export const OWN = 'own';
export const condition: Option = {
  name: 'condition',
  takes: 'ID',
  help: `the id of a condition that the case is judged in, or "${OWN}" for its own surroundings; the governing one when left out`,
  read: anId,
};
export const sort: Option = {
  name: 'sort',
  takes: 'joint|margin|CASE',
  help: 'order of the rows: by joint, by lowest margin, or by the margin in a load case; by lowest margin when left out',
  read: anId,
};
const aWord: Option['read'] = (text) =>
  text.length > 0 && text.length <= 40
    ? { value: text }
    : { wrong: 'a name has 1 to 40 characters.' };
const withWhere = figures.map((figure) =>
  figure === 'edge-moment' ? `${figure} (flat single laps)` : figure,
);
export const mode: Option = {
  name: 'mode',
  takes: 'MODE',
  help: `a mode of the margin list, or one of ${withWhere.join(', ')}; the lowest margin when left out`,
  read: aWord,
};
export const part: Option = {
  name: 'part',
  takes: 'PART',
  help: 'bond or wall, where there are several',
  read: aWord,
};
const places = requests['joint.explain'].shape.place.unwrap().options;
export const place: Option = {
  name: 'place',
  takes: places.join('|'),
  help: 'end of the overlap, where a mode is listed for both',
  read: oneOf(places),
};
export const gap: Option = {
  name: 'gap',
  takes: gaps.join('|'),
  help: 'state of the gap; the one with the lowest adhesive margin when left out',
  read: oneOf(gaps),
};
export const theta: Option = {
  name: 'theta',
  takes: 'DEG',
  help: 'clocking from the plane of bending; the worst one when left out',
  read: numberIn(focus.shape.theta.unwrap()),
};
export const factor: Option = {
  name: 'factor',
  takes: 'X',
  help: 'multiplies the loads of the case; 1 when left out',
  read: numberIn(focus.shape.loadFactor.unwrap()),
};
export const stations: Option = {
  name: 'stations',
  takes: 'N',
  help: 'also lists shear and peel at N places along the overlap',
  read: numberIn(focus.shape.stations.unwrap()),
};
export const map: Option = {
  name: 'map',
  takes: 'N',
  help: 'also the elastic stresses all round, at N clockings; with --json only',
  onlyJson: true,
  read: numberIn(focus.shape.map.unwrap()),
};
export const from: Option = {
  name: 'from',
  takes: 'MM',
  help: 'shortest overlap',
  read: numberIn(sweep.from.unwrap()),
};
export const to: Option = {
  name: 'to',
  takes: 'MM',
  help: 'longest overlap; chosen past the plateau when left out',
  read: numberIn(sweep.to.unwrap()),
};
export const points: Option = {
  name: 'points',
  takes: 'N',
  help: 'number of overlaps',
  read: numberIn(sweep.points.unwrap()),
};
export const csv: Option = {
  name: 'csv',
  help: 'print the table as comma-separated values and nothing else',
  read: on,
};
export const beside: Option = {
  name: 'with',
  takes: 'ID[,ID]',
  help: 'joints or variants of the project to set beside it, up to three',
  read: (text) => {
    const ids = text.split(',').map((id) => id.trim());
    return ids.length > 3 || ids.some((id) => id.length < 1 || id.length > 64)
      ? { wrong: 'it takes one to three ids with commas between.' }
      : { value: ids };
  },
};
const variant = requests['joint.variant'].shape;
export const lap: Option = {
  name: 'lap',
  takes: variant.lap.options.join('|'),
  help: 'also the joint itself with this lap',
  read: oneOf(variant.lap.options),
};
export const equal: Option = {
  name: 'equal',
  takes: variant.equal.options.join('|'),
  help: 'what that lap is made equal in; overlap when left out',
  read: oneOf(variant.equal.options),
};
const size = requests['joint.size'].shape;
export const vary: Option = {
  name: 'vary',
  takes: size.vary.options.join('|'),
  help: 'what is sized; the overlap when left out',
  read: oneOf(size.vary.options),
};
export const target: Option = {
  name: 'target',
  takes: 'X',
  help: "margin to reach; the project's target when left out",
  read: numberIn(size.target.unwrap()),
};
export const step: Option = {
  name: 'step',
  takes: 'MM',
  help: "step that the answer is a multiple of; the project's when left out",
  read: numberIn(size.step.unwrap()),
};
export const least: Option = {
  name: 'from',
  takes: 'MM',
  help: 'smallest value that is looked at',
  read: numberIn(size.from.unwrap()),
};
export const most: Option = {
  name: 'to',
  takes: 'MM',
  help: 'largest value that is looked at',
  read: numberIn(size.to.unwrap()),
};
export const each: Option = {
  name: 'each',
  help: 'an overlap for each size in place of one for all',
  read: on,
};
const scatter = requests['joint.scatter'].shape;
export const samples: Option = {
  name: 'samples',
  takes: 'N',
  help: `number of samples; ${scatterDefaults.samples} when left out`,
  read: numberIn(scatter.samples.unwrap()),
};
export const seed: Option = {
  name: 'seed',
  takes: 'N',
  help: `seed of the random numbers: the same gives the same samples; ${scatterDefaults.seed} when left out`,
  read: numberIn(scatter.seed.unwrap()),
};
const methods = scatter.method.unwrap().options;
export const method: Option = {
  name: 'method',
  takes: methods.join('|'),
  help: `most samples by fitted surfaces, or each by the full model; ${scatterDefaults.method} when left out`,
  read: oneOf(methods),
};
export const json: Option = {
  name: 'json',
  help: 'print the whole answer as JSON and nothing else',
  read: on,
};
export const help: Option = { name: 'help', help: 'explain this command', read: on };
export const version: Option = { name: 'version', help: 'print the version', read: on };

const path: Option['read'] = (text) =>
  text === '' ? { wrong: 'it takes the path of a file.' } : { value: text };

export const measured: Option = {
  name: 'measured',
  takes: 'CSV',
  help: 'file of measured diameters, as --template prints it',
  read: path,
};

export const template: Option = {
  name: 'template',
  help: 'print the file to fill in with measured diameters',
  read: on,
};

export const limits: Option = {
  name: 'limits',
  help: 'print between which gaps the joint reaches its target, by the model and by coupons',
  read: on,
};

export const set: Option = {
  name: 'set',
  takes: 'ID',
  help: 'the id of one set of coupons; all of them when left out',
  read: anId,
};
