/** What leaves the program as comma-separated values: heads with units, every digit, no formula. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { takenName } from '../../src/renderer/files.ts';
import { jointsSheet, loadsSheet } from '../../src/renderer/sheets/margin-sheets.ts';
import { peelSheet, shearSheet } from '../../src/renderer/sheets/stress-sheets.ts';
import { column, sheetCsv } from '../../src/shared/sheet.ts';
import { makeProject } from './support/project.ts';
import { makeMargin, makeStress, makeSummary } from './support/reports.ts';

const parsed = (text: string): string[][] =>
  Papa.parse<string[]>(text, { skipEmptyLines: true }).data;

describe('the head of a column', () => {
  it.each([
    ['shear stress', 'MPa', 'shear stress, MPa'],
    ['temperature', '°C', 'temperature, deg C'],
    ['torque', 'N·mm', 'torque, N*mm'],
    ['clocking', '°', 'clocking, deg'],
    ['factor', '1', 'factor'],
    ['mode', '', 'mode'],
  ])('%s in %s', (name, unit, head) => {
    expect(column(name, unit)).toBe(head);
  });
});

describe('a table as text', () => {
  it('has one plain row of heads, quoted where a unit has its comma', () => {
    const text = sheetCsv({ head: [column('shear stress', 'MPa'), 'mode'], rows: [[1.5, 'peel']] });
    expect(text).toBe('"shear stress, MPa",mode\r\n1.5,peel\r\n');
  });

  it('keeps every digit, with a decimal point, an ASCII minus and no zero below zero', () => {
    const values = [-0.1 - 0.2, 1 / 3, 1e-12, -0, 123456789.123];
    const text = sheetCsv({ head: ['x'], rows: values.map((value) => [value]) });
    expect(text).not.toMatch(/[−]/);
    const rows = parsed(text).slice(1).flat();
    expect(rows.map(Number)).toEqual([-0.1 - 0.2, 1 / 3, 1e-12, 0, 123456789.123]);
    expect(rows[0]).toBe('-0.30000000000000004');
    expect(rows[3]).toBe('0');
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['@sum', "'@sum"],
    ['-cmd', "'-cmd"],
    ['tube, long', 'tube, long'],
    ['the “tip” 1" tube', 'the “tip” 1" tube'],
    ['two\nlines', 'two\nlines'],
  ])('the name %j is text, whatever a spreadsheet makes of it', (name, cell) => {
    const text = sheetCsv({ head: ['joint', 'margin'], rows: [[name, -0.5]] });
    expect(parsed(text)).toEqual([
      ['joint', 'margin'],
      [cell, '-0.5'],
    ]);
  });
});

describe('what is drawn, as columns', () => {
  it('stress stands at every station, with its units', () => {
    const stress = makeStress(30);
    const { head, rows } = shearSheet(stress, false);
    expect(head[0]).toBe('from the root, mm');
    expect(head.slice(1).every((title) => title.endsWith(', MPa'))).toBe(true);
    expect(rows.map(([x]) => x)).toEqual(stress.x);
    const shear = head.findIndex((title) => title.endsWith('shear stress, MPa'));
    expect(rows.map((row) => row[shear])).toEqual(stress.bonds[0]!.shear);
  });

  it('the shear of the shells comes with it where it is drawn', () => {
    const stress = makeStress(30);
    expect(shearSheet(stress, true).head.length - shearSheet(stress, false).head.length).toBe(
      stress.bonds.length,
    );
  });

  it('peel that counts, and as it would be if nothing yielded', () => {
    const stress = makeStress(30);
    const { head, rows } = peelSheet(stress);
    const peel = head.findIndex((title) => title.endsWith('peel stress, MPa'));
    const { capped, peel: elastic } = stress.bonds[0]!.layered;
    expect(rows.map((row) => row[peel])).toEqual(capped?.peel ?? elastic);
  });

  it('a joint whose name is a formula does not become one', () => {
    const [joint] = makeProject().joints;
    const report = {
      project: 'p',
      targetMargin: 0.15,
      joints: [makeSummary({ ...joint!, name: '=1+1' }, makeMargin(-0.125))],
      counts: { fails: 1, low: 0, holds: 0 },
      modelVersion: '1',
    };
    const [head, row] = parsed(sheetCsv(jointsSheet(report)));
    expect(row![head!.indexOf('joint')]).toBe("'=1+1");
    expect(row![head!.indexOf('margin')]).toBe('-0.125');
    expect(row![head!.indexOf('overlap, mm')]).toBe(String(joint!.overlap));
  });

  it('loads are as they are stored: N and N*mm', () => {
    const { joints, loadCases } = makeProject();
    const joint = joints.find(({ loads }) => loads.length > 0)!;
    const { head, rows } = loadsSheet(joint, loadCases);
    expect(head).toEqual([
      'load case',
      'kind',
      'force, N',
      'shear, N',
      'moment, N*mm',
      'torque, N*mm',
    ]);
    expect(rows[0]![2]).toBe(joint.loads[0]!.force);
  });
});

describe('the name of a file', () => {
  const from = { project: 'Curlew', joint: 'Boom root' };
  it.each([
    [from, 'Shear along the bond', 'csv', 'Curlew-Boom-root-shear-along-the-bond.csv'],
    [{ ...from, joint: null }, 'Joints', 'png', 'Curlew-joints.png'],
    [{ project: '', joint: '..' }, 'Margins', 'csv', 'project-margins.csv'],
    [{ project: 'a/b:c', joint: '=1+1*"x"' }, 'Loads', 'csv', 'a-b-c-=1+1-x-loads.csv'],
  ] as const)('%j, %s', (of, what, ending, name) => {
    expect(takenName(of, what, ending)).toBe(name);
  });

  it('stays short, however long the names are', () => {
    const long = 'x'.repeat(400);
    expect(takenName({ project: long, joint: long }, long, 'csv').length).toBeLessThan(200);
  });
});
