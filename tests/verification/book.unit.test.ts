/** The book's own rules: a wrong figure fails, and what is printed is legible and stable. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PAGE, renderBook, topics } from './book.ts';
import {
  type CurveCase,
  group,
  halfLastDigit,
  isCurve,
  lazy,
  printed,
  same,
  value,
} from './case.ts';
import { layeredAcceptance } from './cases/layered-acceptance.ts';
import { allowance, difference, plain, share, significant } from './figures.ts';
import { checksOf, judge } from './judge.ts';
import { renderCase } from './page.ts';
import { drawCurves, ticks } from './plot.ts';

const cases = topics.flatMap((topic) => topic.cases);

const curve = (factor: number): CurveCase => ({
  id: 'ramp',
  title: 'Ramp <1>',
  source: 'here',
  tag: 'independent',
  inputs: ['a ramp'],
  length: 10,
  panels: [
    {
      title: 'Shear',
      x: [1, 5, 9],
      series: [
        { name: 'ramp', stress: 'shear', expected: [1, 5, 9], computed: () => (x) => factor * x },
      ],
    },
  ],
  zones: [
    { name: 'end', contains: (x) => x > 8, of: 'value', tolerance: 0.05, why: 'end' },
    { name: 'rest', contains: () => true, of: 'peak', tolerance: 0.05, why: 'rest' },
  ],
});

describe('a check of one figure', () => {
  const check = (computed: number) => printed('x', 'MPa', '40.6', () => computed);

  it('allows half of the last printed digit and no more', () => {
    expect(judge(check(40.64)).failure).toBeNull();
    expect(judge(check(40.66)).failure).toContain('expected 40.6');
    expect(judge(check(Number.NaN)).failure).not.toBeNull();
    expect(halfLastDigit('12')).toBe(0.5);
    expect(halfLastDigit('1.71e-3')).toBe(5e-6);
  });

  it('takes the larger of two tolerances', () => {
    const both = (computed: number) =>
      value({
        name: 'x',
        unit: '',
        expected: 100,
        computed: () => computed,
        tolerance: { relative: 0.01, absolute: 2 },
        why: '',
      });
    expect(judge(both(101.9)).failure).toBeNull();
    expect(judge(both(102.1)).failure).not.toBeNull();
  });
});

describe('a group', () => {
  const check = (...computed: number[]) =>
    group({
      name: 'x',
      compare: () =>
        computed.map((one, i) => ({ what: `number ${i}`, expected: 10, computed: one })),
      tolerance: 0.01,
      scale: 'of the value',
      why: '',
    });

  it('names the worst and fails by it', () => {
    expect(judge(check(10, 10.09)).failure).toBeNull();
    expect(judge(check(10.2, 10, 9.5)).failure).toMatch(/2 of 3 beyond .* worst is number 2/);
  });

  it('names the first of two that are as good as the same', () => {
    expect(judge(check(10.005, 10.09, 10.0900001)).worst?.what).toBe('number 1');
  });

  it('fails when it has nothing to compare, or something that is not a number', () => {
    expect(judge(check()).failure).toContain('nothing');
    expect(judge(check(10, Number.NaN)).failure).toContain('number 1');
    expect(judge(check(10, Number.NaN)).largest).toBe(Number.POSITIVE_INFINITY);
  });

  it('has words of its own', () => {
    const words = (...computed: string[]) =>
      same({
        name: 'place',
        compare: () => computed.map((one) => ({ what: 'a', expected: 'root', computed: one })),
      });
    expect(judge(words('root', 'root'))).toMatchObject({ failure: null, agreeing: 2 });
    expect(judge(words('root', 'mouth')).failure).toContain('expected root');
    expect(judge(words()).failure).toContain('nothing');
  });
});

describe('a curve', () => {
  it('is judged stretch by stretch', () => {
    const failures = (factor: number) =>
      checksOf(curve(factor)).map(({ check }) => judge(check).failure !== null);
    expect(failures(1.04)).toEqual([false, false]);
    // A tenth of the middle is little against the peak.
    expect(failures(1.08)).toEqual([true, false]);
    expect(failures(1.1)).toEqual([true, true]);
  });

  it('must have a tolerance everywhere', () => {
    const open: CurveCase = { ...curve(1), zones: curve(1).zones.slice(0, 1) };
    expect(() => checksOf(open)).toThrow('no tolerance at x = 1');
  });

  it('is drawn the same each time, and otherwise when the curve is another', () => {
    const drawn = drawCurves(curve(1));
    expect(drawCurves(curve(1))).toBe(drawn);
    expect(drawCurves(curve(1.01))).not.toBe(drawn);
    expect(drawn).toContain('Ramp &lt;1&gt;');
    expect(drawn).not.toMatch(/NaN|Infinity|-0[" ,]/);
  });

  it('draws the dots of two theories once', () => {
    const { panels, ...rest } = curve(1);
    const [first] = panels[0]!.series;
    const two = { ...first!, name: 'other', line: 'dashed' as const };
    const both: CurveCase = { ...rest, panels: [{ ...panels[0]!, series: [first!, two] }] };
    expect(drawCurves(both).match(/<circle/g)).toHaveLength(3 + 1);
    expect(drawCurves(both).match(/class="line dashed shear"/g)).toHaveLength(2);
    expect(renderCase(both)).toContain(
      '| x, mm | source | ramp | difference | other | difference |',
    );
  });

  it('shows a change of its figures on the page', () => {
    expect(renderCase(curve(1.0001))).not.toBe(renderCase(curve(1)));
  });
});

describe('figures', () => {
  it('are printed with few digits', () => {
    expect([0.88871, 7.2219, 1234.5678, 12, 0].map((one) => significant(one, 4))).toEqual([
      '0.8887',
      '7.222',
      '1235',
      '12.00',
      '0',
    ]);
    expect(significant(-1.234e-7, 2)).toBe('−1.2e-7');
    expect(significant(9.99996, 5)).toBe('10.000');
    expect(significant(98_765_432, 3)).toBe('9.88e7');
  });

  it('leave out what is rounding', () => {
    expect(difference(1e-12, 1)).toBe('< 1e-9');
    expect(difference(-0.029, 40.6)).toBe('−0.029 (0.071 %)');
    expect(difference(3.14e-7, 1)).toBe('+3e-7 (3e-7)');
    expect(difference(0.25, 0)).toBe('+0.25');
    expect(share(0)).toBe('< 1e-9');
  });

  it('write tolerances as people do', () => {
    expect([0.062, 1e-4, 5e-5, 0.115].map(allowance)).toEqual([
      '6.2 %',
      '0.01 %',
      '5e-5',
      '11.5 %',
    ]);
    expect([-0.3, 1e-12, 114_000].map(plain)).toEqual(['−0.3', '1e-12', '114000']);
  });

  it('have round ticks', () => {
    expect(ticks(0, 30, 6)).toEqual([0, 5, 10, 15, 20, 25, 30]);
    expect(ticks(-7.9, 9.3, 5)).toEqual([-5, 0, 5]);
  });
});

describe('the cases', () => {
  it('have names that differ', () => {
    const ids = cases.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9-]+$/);
  });

  it('state source, inputs and reasons', () => {
    for (const one of cases) {
      expect(one.source.length).toBeGreaterThan(20);
      expect(one.inputs.length).toBeGreaterThan(0);
      const reasons = [
        ...(isCurve(one) ? one.zones : []),
        ...(one.checks ?? []).filter((check) => check.kind !== 'same'),
      ];
      for (const { why } of reasons) expect(why.length, one.id).toBeGreaterThan(10);
    }
  });

  it('say OUTSIDE at every station where the specification is not met, and nowhere else', () => {
    const said: string[] = [];
    const found: string[] = [];
    for (const one of layeredAcceptance.cases) {
      if (!isCurve(one)) continue;
      for (const { panel, series, check } of checksOf(one)) {
        const { x, series: all } = one.panels[panel]!;
        const { stress, expected, computed } = all[series]!;
        const peak = Math.max(...expected.map(Math.abs));
        const at = computed();
        const places = new Set(check.compare().map(({ what }) => what));
        x.forEach((station, i) => {
          const name = `x = ${station} mm`;
          if (!places.has(name)) return;
          const source = expected[i]!;
          const miss = Math.abs(at(station) - source);
          const asked = {
            // Every station, the edges of the last h too; a share of nothing is taken of the peak.
            shear: 0.08 * (Math.abs(source) < peak / 50 ? peak : Math.abs(source)),
            // Under a quarter of its peak nothing is asked. At h from the mouth it is 25 %.
            peel:
              Math.abs(source) > peak / 4
                ? (one.length - station < 0.3 ? 0.25 : 0.2) * Math.abs(source)
                : Number.POSITIVE_INFINITY,
          };
          const place = `${one.id}, ${stress}, ${name}`;
          if (miss > asked[stress]) found.push(place);
          if (check.why.startsWith('OUTSIDE')) said.push(place);
        });
      }
    }
    expect(said.toSorted()).toEqual(found.toSorted());
    expect(said).toContain('acceptance-cold, shear, x = 29.8 mm');
  });
});

describe('the page', () => {
  const page = lazy(() => ({ text: renderBook().get(PAGE)! }));

  it('says which numbers were set on its own joints, as they stand in the code', () => {
    const source = (name: string): string =>
      readFileSync(join(import.meta.dirname, '../../src/model/layered', name), 'utf8');
    expect(source('opening-law.ts')).toContain('WALL_SHARE = 1 / 4;');
    expect(source('opening-law.ts')).toContain('ACROSS_SHARE = 1 / 8;');
    expect(source('layer-pull.ts')).toContain('END_LENGTH = 0.5;');
    const [, section = ''] = page().text.split('## What was set on these joints');
    const [said = ''] = section.split('\n## ');
    for (const words of ['1/4', '1/8', 'h/2', 'WALL_SHARE', 'ACROSS_SHARE', 'END_LENGTH']) {
      expect(said).toContain(words);
    }
    expect(said).toContain('not a blind prediction');
    expect(said).toContain('lock against regression, not an acceptance');
  });

  it('counts in its contents what is outside the specification', () => {
    const line = page()
      .text.split('\n')
      .find((one) => one.startsWith(`| [${layeredAcceptance.title}]`));
    const rows = page()
      .text.split('\n')
      .filter((one) => one.includes('| OUTSIDE '));
    expect(line).toContain(`(rows OUTSIDE the specification: ${rows.length})`);
    expect(rows.length).toBeGreaterThan(0);
    const cold = rows.find((one) => one.includes('x = 29.8 mm'));
    expect(cold).toMatch(/\| 1 \| 8\.9 % \|/);
  });
});
