/** What the documents say about the project file is what the reader takes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';
import { readProjectText } from '../../src/shared/read-project.ts';
import { readStack } from '../../src/shared/stack-notation.ts';
import { lapwright } from '../cli/lapwright.ts';
import {
  adherendNumbers,
  adhesiveStateNumbers,
  cureNumbers,
  densityNumbers,
  fatigueNumbers,
  flatSizeNumbers,
  fractureNumbers,
  gapKnockdownNumbers,
  instrumentNumbers,
  knockdownNumbers,
  limitNumbers,
  mixNumbers,
  optionalAdhesiveNumbers,
  optionalRatioNumbers,
  optionalStateNumbers,
  plyNumbers,
  printingNumbers,
  processNumbers,
  settingsNumbers,
  sleeveLoadNumbers,
  sleeveSizeNumbers,
  stepNumbers,
  throughThicknessNumbers,
} from './numbers.ts';

// A busy machine computes a joint in seconds, not in a tenth of one.
vi.setConfig({ testTimeout: 600_000 });

const docs = join(import.meta.dirname, '..', '..', 'docs');
/** A checkout may have turned the line ends. */
const read = (name: string): string =>
  readFileSync(join(docs, name), 'utf8').replaceAll('\r\n', '\n');

const guide = read('project-file.md');
const example = read('example.lapwright.json');
const schema = read('project.schema.json');

/** The text under a heading, down to the next one of any level. */
function section(heading: string): string {
  const [, rest] = guide.split(new RegExp(`^#+ ${heading}$`, 'm'));
  return rest?.split(/^#+ /m)[0] ?? '';
}

const row = /^\| `([\w.]+)` \| (\S+) \| (\S+) to (\S+) \|/gm;

interface Row {
  readonly field: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}
const rowsOf = (heading: string): Row[] =>
  [...section(heading).matchAll(row)].map(([, field, unit, min, max]) => ({
    field: field!,
    unit: unit!,
    min: Number(min),
    max: Number(max),
  }));

const expected = (table: Readonly<Record<string, QuantityName>>): Row[] =>
  Object.entries(table).map(([field, name]) => {
    const { unit, min, max } = quantities[name];
    return { field, unit: unit === '1' || unit === 'cycles' ? '–' : unit, min, max };
  });

describe('the JSON Schema in the documents', () => {
  it('is what the command line prints', async () => {
    const { code, out, err } = await lapwright(['schema']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    // When this fails: npm run -s schema > docs/project.schema.json
    expect(schema).toBe(out);
  });
});

describe('the guide to the project file', () => {
  it.each<[string, Readonly<Record<string, QuantityName>>]>([
    ['Settings', settingsNumbers],
    ['Printing', printingNumbers],
    ['Steps', stepNumbers],
    ['Isotropic', adherendNumbers.isotropic],
    ['Orthotropic', adherendNumbers.orthotropic],
    ['Through the thickness', throughThicknessNumbers],
    ['Plies', plyNumbers],
    [
      'Adhesives',
      {
        stressFreeTemperature: 'temperature',
        ...adhesiveStateNumbers,
        ...optionalStateNumbers,
        ...optionalAdhesiveNumbers,
        ...fatigueNumbers,
        ...optionalRatioNumbers,
      },
    ],
    ['Fracture', fractureNumbers],
    ['Knockdowns', knockdownNumbers],
    ['Strength against gap', gapKnockdownNumbers],
    ['Densities', densityNumbers],
    ['Conditions', { temperature: 'temperature' }],
    ['Load cases', { temperature: 'temperature', cycles: 'cycles', ...optionalRatioNumbers }],
    [
      'Joints',
      {
        overlap: 'overlap',
        offset: 'offset',
        width: 'width',
        'tube.outsideDiameter': 'outsideDiameter',
        'tube.wall': 'wall',
        'strip.thickness': 'wall',
        atRoot: 'wall',
        atMouth: 'wall',
        gap: 'gap',
        tolerance: 'gapTolerance',
      },
    ],
    ['Process', { ...mixNumbers, ...processNumbers, ...cureNumbers }],
    [
      'Bench',
      {
        ...limitNumbers,
        'spacer.size': 'spacerSize',
        jigOffset: 'offset',
        stations: 'station',
        clockings: 'clocking',
        waste: 'wasteFactor',
      },
    ],
    ['Instruments', instrumentNumbers],
    ['Gap checks', { diameters: 'diameter' }],
    [
      'Allowables',
      {
        temperature: 'temperature',
        gap: 'gap',
        coupons: 'couponTotal',
        batches: 'batchCount',
        value: 'couponStrength',
        mean: 'couponStrength',
        ratio: 'measuredOverPredicted',
        factor: 'strengthFactor',
      },
    ],
    [
      'Coupons',
      {
        temperature: 'temperature',
        gap: 'gap',
        'planned.batches': 'batchCount',
        'planned.each': 'couponCount',
        load: 'failureLoad',
        overlap: 'overlap',
        width: 'width',
        'modes.cohesive': 'percent',
        ratio: 'loadRatio',
        peak: 'failureLoad',
        cycles: 'cycles',
      },
    ],
    ['Loads', sleeveLoadNumbers],
    ['Sizes', sleeveSizeNumbers],
    ['Sizes of flat joints', flatSizeNumbers],
  ])('gives unit and range of every number under %s', (heading, table) => {
    expect(rowsOf(heading)).toEqual(expected(table));
  });

  it('names every field and every word that the schema knows', () => {
    const words = new Set<string>();
    const visit = (node: unknown): void => {
      if (typeof node !== 'object' || node === null) return;
      const { properties, enum: choices, const: only } = node as Record<string, unknown>;
      for (const word of Object.keys(properties ?? {})) words.add(`${word}\``);
      for (const word of (choices as unknown[] | undefined) ?? []) words.add(`\`"${word}"\``);
      if (typeof only === 'string') words.add(`"${only}"\``);
      for (const inner of Object.values(node)) visit(inner);
    };
    visit(JSON.parse(schema));
    expect(words.size).toBeGreaterThan(60);
    const bare = guide.replace(/```[\s\S]*?```/g, '');
    const forgotten = [...words].filter(
      (word) => !bare.includes(word) && !bare.includes(word.replace(/`$/, '.')),
    );
    expect(forgotten).toEqual([]);
  });

  it('states the limits of the lists', () => {
    const { properties } = JSON.parse(schema);
    const limits = [
      `up to ${properties.plies.maxItems} plies`,
      `${properties.adherends.maxItems} adherends`,
      `${properties.adhesives.maxItems} adhesives`,
      `${properties.loadCases.maxItems} load cases`,
      `${properties.joints.maxItems} joints`,
      `up to ${properties.note.maxLength} characters`,
    ];
    for (const limit of limits) expect(guide.replaceAll('\n', ' ')).toContain(limit);
  });

  it('reads the stacks that it shows as it says', () => {
    const table = /^\| `(\[[^`]*)` \| (-?\d+(?:, -?\d+)*|the same)(?::[^|]*)? \|$/gm;
    const shown = [...section('Laminate').matchAll(table)];
    expect(shown.length).toBeGreaterThan(4);
    let before = '';
    for (const [, text, says] of shown) {
      const reading = readStack(text!);
      expect(reading.ok && reading.angles.join(', ')).toBe(says === 'the same' ? before : says);
      before = reading.ok ? reading.angles.join(', ') : '';
    }
  });

  it('shows the example as it is in its file', () => {
    const [, shown] = /```json\n([\s\S]*?)```/.exec(guide) ?? [];
    expect(shown).toBe(example);
  });
});

describe('the example project', () => {
  it('is a project written as people write it', () => {
    const project = readProjectText(example);
    expect(project).toEqual({ ok: true, value: JSON.parse(example) });
  });

  it('is accepted by check, which prints its figures', async () => {
    const { code, out, err } = await lapwright(['check', join(docs, 'example.lapwright.json')]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^mast-foot +● holds +\+\d+\.\d\d\*/m);
  });
});

describe('the demonstration project', () => {
  it('is printed so that it can be saved and read again', async () => {
    const { code, out, err } = await lapwright(['demo']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const project = readProjectText(out);
    expect(project.ok && project.value.name).toBe('Curlew');
    expect(out.split('\n').length).toBeGreaterThan(100);
  });
});
