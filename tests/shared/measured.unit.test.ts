/** Measured diameters as text, what looks wrong among them, their record. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { readCsv, writeCsv } from '../../src/shared/csv.ts';
import { checksCsv, readingsCsv } from '../../src/shared/gap-records.ts';
import { findMistakes } from '../../src/shared/measured-mistakes.ts';
import {
  measuringTemplate,
  readMeasuredCsv,
  writeMeasuredCsv,
} from '../../src/shared/measured-text.ts';
import { instrumentsOf, measuringPlan, usualStations } from '../../src/shared/measuring-plan.ts';
import { readBlock } from '../../src/shared/pasted-block.ts';
import type { GapCheck, Joint, MeasuredSurface, Project } from '../../src/shared/project.ts';
import { type Made, partsOf, withReading } from '../support/parts.ts';

const project = demo as unknown as Project;
const [root, tip, leg, lug] = project.joints as [Joint, Joint, Joint, Joint];
const instruments = instrumentsOf(project);
const say = (joint: Joint, measured: readonly MeasuredSurface[]) =>
  findMistakes(joint, measured).map(({ code, message }) => `${code}: ${message}`);

describe('what is to be measured', () => {
  it('follows from the drawing', () => {
    const drawn = (joint: Joint) =>
      measuringPlan(joint)?.surfaces.map(({ surface, drawn: size }) => `${surface} ${size}`);
    expect(drawn(tip)).toEqual(['tube-outside 32', 'socket-inside 32.4']);
    expect(drawn(leg)).toEqual(['spigot-outside 21.6', 'tube-inside 22']);
    expect(drawn(root)).toEqual([
      'spigot-outside 35.6',
      'tube-inside 36',
      'tube-outside 40',
      'socket-inside 40.4',
    ]);
    expect(drawn(lug)).toBeUndefined();
    expect(usualStations(35)).toEqual([4, 18, 31]);
    expect(usualStations(3)).toEqual([1.5]);
  });
});

describe('mistakes', () => {
  const good = partsOf(tip, (_, drawn, x, at) => drawn + 0.02 * Math.cos(at / 20) - 0.001 * x);

  it('are not seen in plausible parts', () => {
    const noise = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(root, tip, leg),
        noise,
        fc.array(noise, { minLength: 40, maxLength: 40 }),
        (joint, size, list) => {
          let k = 0;
          const made: Made = (_, drawn, x) =>
            drawn + 0.05 * size + 0.04 * list[k++ % 40]! - 0.001 * x * size;
          expect(say(joint, partsOf(joint, made))).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
  });

  it.each([
    ['inch', 1.2598, '1.2598 looks like inches: 31.9989 mm?', 31.99892],
    ['radius', 16.01, '16.01 looks like a radius: 32.02 mm?', 32.02],
    ['decimal-point', 3.201, '3.201: has the point slipped: 32.01 mm?', 32.01],
    ['decimal-point', 3201, '3201: has the point slipped: 32.01 mm?', 32.01],
    ['swapped-digits', 23.01, '23.01: are two digits exchanged: 32.01 mm?', 32.01],
    ['swapped-digits', 32.2, '32.2: are two digits exchanged: 32.02 mm?', 32.02],
    ['stands-off', 32.35, '32.35 mm is 0.358 mm above the others: measure it again.', null],
  ])('of one reading: %s, %d', (code, typed, message, meant) => {
    const measured = withReading(good, 'tube-outside', [1, 1], typed);
    const [first, ...others] = findMistakes(tip, measured);
    expect(others).toEqual([]);
    expect(first).toMatchObject({ surface: 'tube-outside', at: [1, 1], level: 'doubt', code });
    expect(first!.message.replace(/0\.3[56]\d* mm above/, '0.358 mm above')).toBe(message);
    expect(first!.meant).toBe(meant);
    const confirmed = measured.map((one) =>
      one.surface === 'tube-outside' ? { ...one, confirmed: [[1, 1]] as [number, number][] } : one,
    );
    const left = findMistakes(tip, confirmed).map((one) => one.code);
    expect(left.filter((one) => one !== 'larger-than-sleeve')).toEqual([]);
  });

  it('of the very first reading are seen by the drawing', () => {
    const empty = partsOf(tip).map((one) => ({
      ...one,
      diameters: one.diameters.map((row) => row.map(() => null)),
    }));
    const first = (typed: number) => say(tip, withReading(empty, 'tube-outside', [0, 0], typed));
    expect(first(32.01)).toEqual([]);
    expect(first(1.26)).toEqual(['inch: 1.26 looks like inches: 32.004 mm?']);
    expect(first(33.5)).toEqual([
      'far-from-drawing: 33.5 mm is far from the drawing, 32 mm: is it the right part?',
    ]);
  });

  it('of a whole part in inches are seen in each reading', () => {
    const inches = partsOf(tip, (_, drawn) => drawn / 25.4);
    const found = findMistakes(tip, inches);
    expect(found.length).toBe(18);
    expect(new Set(found.map(({ code }) => code))).toEqual(new Set(['inch']));
  });

  it('of a tube larger than its sleeve say where', () => {
    const measured = partsOf(tip, (surface, drawn, x) =>
      surface === 'tube-outside' && x > 30 ? 32.41 : drawn,
    );
    expect(say(tip, measured).filter((one) => one.startsWith('larger'))).toEqual([
      'larger-than-sleeve: Here the tube (32.41 mm) is larger than the socket (32.4 mm): it cannot go in.',
    ]);
    const all = partsOf(tip, (surface, drawn) => (surface === 'tube-outside' ? 32.41 : drawn));
    expect(say(tip, all)).toEqual([
      'larger-than-sleeve: Here the tube (32.41 mm) is larger than the socket (32.4 mm): it cannot go in.',
    ]);
    const same = partsOf(tip, () => 32.4);
    expect(say(tip, same)).toEqual([
      'larger-than-sleeve: Here the tube (32.4 mm) is as large as the socket (32.4 mm): it cannot go in.',
    ]);
  });

  it('of one reading larger than the sleeve must be mended, and no other doubt hides it', () => {
    const large = withReading(good, 'tube-outside', [1, 1], 32.45);
    const [first, ...others] = findMistakes(tip, large);
    expect(others).toEqual([]);
    expect(first).toMatchObject({ code: 'larger-than-sleeve', level: 'wrong', at: [1, 1] });
    const slipped = withReading(large, 'socket-inside', [0, 0], 324);
    expect(findMistakes(tip, slipped).map(({ code, level }) => `${level} ${code}`)).toEqual([
      'doubt decimal-point',
      'wrong larger-than-sleeve',
    ]);
    // Where the sleeve's reading is the strange one, it is the one that is marked.
    const small = withReading(good, 'socket-inside', [1, 1], 31.9);
    expect(findMistakes(tip, small)).toMatchObject([
      { code: 'larger-than-sleeve', level: 'wrong', surface: 'socket-inside', at: [1, 1] },
    ]);
    // Confirmed or not: what is larger cannot go in.
    const confirmed = large.map((one) => ({ ...one, confirmed: [[1, 1]] as [number, number][] }));
    expect(findMistakes(tip, confirmed)).toMatchObject([{ level: 'wrong', at: [1, 1] }]);
  });

  it('of parts exchanged are one, not eighteen', () => {
    const measured = partsOf(tip, (surface) => (surface === 'tube-outside' ? 32.4 : 32));
    expect(say(tip, measured)).toEqual([
      'parts-exchanged: The readings of tube and socket look exchanged.',
    ]);
  });

  it('of clockings and stations are named', () => {
    const with_ = (change: Partial<MeasuredSurface>) =>
      say(tip, [{ ...good[0]!, ...change }, good[1]!]);
    expect(with_({ clockings: [0, 90, 45] })).toEqual([
      'clocking-order: The clockings must rise: 90° stands before 45°.',
    ]);
    expect(with_({ clockings: [0, 60, 60] })).toEqual([
      'clocking-order: The clocking 60° stands twice.',
    ]);
    expect(with_({ clockings: [0, 90, 180] })[0]).toMatch(
      /^clocking-order: The clocking 180° is not/,
    );
    expect(with_({ stations: [4, 31, 18] })).toEqual([
      'station-order: The stations must rise: 31 mm stands before 18 mm.',
    ]);
    expect(with_({ stations: [4, 18, 36] })).toEqual([
      'station-outside: The station 36 mm is not within the joint: it is 35 mm long from the mouth.',
    ]);
    expect(with_({ stations: [4, 18] })).toEqual([
      'grid: There must be 3 readings at each of 2 stations.',
    ]);
  });
});

describe('pasted cells', () => {
  const rows = (text: string) => {
    const block = readBlock(text);
    return block.ok ? block.rows : block.message;
  };
  it('are numbers and blanks, however a spreadsheet parts them', () => {
    const two = [
      [32.01, 32.02],
      [null, 32.03],
    ];
    expect(rows('32.01\t32.02\r\n\t32.03\r\n')).toEqual(two);
    expect(rows('32.01;32.02\n;32.03')).toEqual(two);
    expect(rows('32.01 32.02\n32.03  32.04')).toEqual([
      [32.01, 32.02],
      [32.03, 32.04],
    ]);
    expect(rows('32.01,32.02\n32.03,32.04')).toEqual([
      [32.01, 32.02],
      [32.03, 32.04],
    ]);
    expect(rows(' 40.1 ')).toEqual([[40.1]]);
  });

  it('may have decimal commas where they can be nothing else', () => {
    expect(rows('35,601\t35,6\n36\t35,604')).toEqual([
      [35.601, 35.6],
      [36, 35.604],
    ]);
    expect(rows('32.01\t32,03')).toMatch(
      /row 1, column 2 of what was pasted, “32,03” is ambiguous/,
    );
    expect(rows('gap\t32.03')).toMatch(/^Nothing was taken: in row 1, column 1/);
  });
});

describe('the file of measured diameters', () => {
  it('comes back as it was written', () => {
    const [first, second] = partsOf(tip);
    const surfaces = [
      { ...first!, confirmed: [[0, 1]] as [number, number][] },
      withReading([second!], 'socket-inside', [1, 2], null)[0]!,
    ];
    const read = readMeasuredCsv(writeMeasuredCsv(surfaces), tip, [
      { id: 'm', ...surfaces[0]!.instrument },
    ]);
    expect(read).toEqual({ ok: true, surfaces });
  });

  it('has a form to fill in', () => {
    const template = measuringTemplate(tip, instruments);
    expect(template.split('\r\n').slice(0, 2)).toEqual([
      'surface,station_mm,clocking_deg,diameter_mm,instrument,confirmed',
      'tube-outside,4,0,,Caliper,',
    ]);
    const read = readMeasuredCsv(template, tip, instruments);
    expect(read.ok && read.surfaces.flatMap(({ diameters }) => diameters.flat())).toEqual(
      Array(18).fill(null),
    );
  });

  it('is read as spreadsheets write it', () => {
    const text =
      '\uFEFF# bench 2\r\n"Diameter (mm)"; Surface ;Station mm;Clocking deg\r\n\r\n32.01;"Tube, outside";4;0\r\n';
    const read = readMeasuredCsv(text, tip, instruments);
    expect(read.ok && read.surfaces[0]).toMatchObject({
      surface: 'tube-outside',
      stations: [4],
      clockings: [0],
      diameters: [[32.01]],
      instrument: { name: 'Caliper' },
    });
    const inches = 'surface,station_mm,clocking_deg,diameter_in\ntube-outside,4,0,1.26\n';
    const converted = readMeasuredCsv(inches, tip, instruments);
    expect(converted.ok && converted.surfaces[0]!.diameters).toEqual([[32.004]]);
  });

  const HEAD = 'surface,station_mm,clocking_deg,diameter_mm,instrument\n';
  it.each([
    ['', 1, 'the file is empty'],
    ['surface,where\n', 1, 'there is no column “where”'],
    ['surface,station_mm,clocking_deg\n', 1, 'the column diameter_mm is missing'],
    [HEAD, 1, 'there is no reading in it'],
    [`${HEAD}foot,1,0,32\n`, 2, 'there is no surface “foot” in this joint: it has tube-outside'],
    [`${HEAD}tube-outside,x,0,32\n`, 2, 'station_mm: “x” is not a number'],
    [
      `${HEAD}\ntube-outside,4,0,"32,01"\ntube-outside,4,60,32.02\n`,
      3,
      'diameter_mm: “32,01” is ambiguous: write 32.01.',
    ],
    [`${HEAD}tube-outside,4,0,32,01,\n`, 2, 'there is no instrument “01”'],
    [`${HEAD}tube-outside,4,0,32,Caliper,5\n`, 2, '6 cells under 5 columns: is a decimal comma'],
    [`${HEAD}tube-outside,4,0,32,Laser\n`, 2, 'there is no instrument “Laser” in the project'],
    [`${HEAD}tube-outside,4,0,32\ntube-outside,4,0,32\n`, 3, 'stands in line 2 already'],
    [`${HEAD}tube-outside,4,0,"32\n`, 2, 'a quotation mark is not closed'],
    [`${HEAD}tube-outside,4,0,-32\n`, 2, 'diameter_mm: It lies between 0.001 and'],
    [`${HEAD}tube-outside,36,0,32\n`, 2, 'station_mm: 36 mm is not within the joint: it is 35 mm'],
    [`${HEAD}tube-outside,-4,0,32\n`, 2, 'station_mm: It lies between 0 and 500'],
    [`${HEAD}tube-outside,4,270,32\n`, 2, 'clocking_deg: It lies between 0 and 179.999'],
  ])('is refused with its line: %j', (text, line, message) => {
    const read = readMeasuredCsv(text, tip, instruments);
    expect(read.ok).toBe(false);
    const [error] = read.ok ? [] : read.errors;
    expect(error?.line).toBe(line);
    expect(error?.message).toContain(message);
  });
});

describe('the record', () => {
  const check: GapCheck = {
    id: 'check-1',
    joint: 'boom-tip',
    started: '2026-03-01T08:00:00Z',
    recorded: '2026-03-01T08:30:00Z',
    by: '=HYPERLINK("x")',
    tubeSerial: '-T,7',
    sleeveSerial: '+S',
    surfaces: partsOf(tip),
    done: [{ step: 'Degrease', at: '2026-03-01T08:10:00Z' }],
    cure: [{ at: '2026-03-01T09:00:00Z', temperature: 23, note: 'on the jig' }],
    result: {
      verdict: 'hold',
      reason: 'It is "thin"',
      bonds: [
        {
          bond: 'bond',
          min: { value: 0.12, uncertainty: 0 },
          mean: { value: 0.2, uncertainty: 0.004 },
          max: { value: 0.28, uncertainty: 0.013 },
          from: 0.12,
          to: null,
        },
      ],
      margin: -0.08,
      targetMargin: 0.25,
      modelVersion: '2',
    },
  };
  const cellsOf = (text: string) => {
    const read = readCsv(text);
    if (!read.ok) throw new Error(read.message);
    const [head, ...rows] = read.rows.map(({ cells }) => cells);
    return rows.map((row) => Object.fromEntries(head!.map((name, i) => [name, row[i]])));
  };

  it('has one row for each check, no cell of it a formula', () => {
    const [row] = cellsOf(checksCsv({ ...project, gapChecks: [check] }));
    expect(row).toMatchObject({
      check: 'check-1',
      joint_name: tip.name,
      by: `'=HYPERLINK("x")`,
      tube_serial: "'-T,7",
      sleeve_serial: "'+S",
      verdict: 'Hold for engineering',
      reason: 'It is "thin"',
      margin: '-0.08',
      gap_max_mm_1: '0.28',
      gap_max_u_mm_1: '0.013',
      gap_to_mm_1: '',
      bond_2: '',
      model_version: '2',
    });
    expect(row!.steps_done).toBe('Degrease (2026-03-01T08:10:00Z)');
    expect(row!.cure_log).toBe('2026-03-01T09:00:00Z: 23 °C, on the jig');
  });

  it('has one row for each reading', () => {
    const rows = cellsOf(readingsCsv({ ...project, gapChecks: [check] }));
    expect(rows.length).toBe(18);
    expect(rows[4]).toMatchObject({
      surface: 'tube-outside',
      instrument: 'Micrometer',
      instrument_error_mm: '0.004',
      station_mm: '18',
      clocking_deg: '60',
      diameter_mm: '32',
    });
  });

  it('is empty but for its head where nothing was measured', () => {
    expect(checksCsv(project).split('\r\n').length).toBe(2);
  });

  it('keeps numbers numbers', () => {
    expect(writeCsv([[-1, '@x', '\tx', null]])).toBe(`-1,"'@x","'\tx",\r\n`);
  });
});
