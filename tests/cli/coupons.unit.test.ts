/** `basis` and `correlate`: what a person reads, and the figures of the app for a program. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import type { Project } from '../../src/shared/project.ts';
import type { CouponSet } from '../../src/shared/project-coupons.ts';
import { standardSpecimen, standardSpecimens } from '../../src/shared/standard-specimens.ts';
import { EIGHTEEN, ETW2 } from '../support/coupons-published.ts';
import { answerOf, folder, lapwright } from './lapwright.ts';

/** Both bonds of an ASTM D3528 specimen, mm². */
const AREA = 2 * 25.4 * 12.7;
const set = (id: string, batches: readonly (readonly number[])[], last = ''): CouponSet => ({
  id,
  name: `Set ${id}`,
  specimen: 'd3528',
  adhesive: 'toughened-paste',
  temperature: 60,
  moisture: 'wet',
  gap: 0.2,
  results: batches.flatMap((batch, b) =>
    batch.map((strength, i) => ({
      coupon: `${b + 1}.${i + 1}`,
      batch: `batch ${b + 1}`,
      load: strength * AREA,
      modes: { cohesive: 100 },
      ...(last !== '' && i === 0 && b === 0 ? { apart: last } : {}),
    })),
  ),
});
function project(...sets: CouponSet[]): Project {
  const d3528 = standardSpecimens.find(({ id }) => id === 'd3528')!;
  return {
    ...(demo as unknown as Project),
    coupons: { specimens: [standardSpecimen(d3528, 'titanium-printed')], sets },
  };
}
function run(document: Project, ...words: readonly string[]) {
  const cwd = folder();
  writeFileSync(join(cwd, 'c.json'), JSON.stringify(document));
  const [name, ...rest] = words;
  return lapwright([name!, 'c.json', ...rest], { cwd, columns: 100 });
}

describe('basis', () => {
  it('tells number, decisions and every value, the chosen ones marked', async () => {
    const { code, out, err } = await run(project(set('etw2', ETW2)), 'basis');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^Set etw2: Double lap shear \(ASTM D3528\), Toughened epoxy paste, 60 °C wet, gap 0\.2 mm,/,
    );
    expect(out).toMatch(/^batch 1 +7 +102 /m);
    expect(out).toMatch(/^all +20 +103 /m);
    expect(out).toMatch(/^Results that lie apart, batch batch 3 +MNR 1\.85 +1\.89 +No result/m);
    expect(out).toMatch(/^Are the batches alike\? +ADK \S+ +\S+ +The batches differ/m);
    // Printed by the handbook as 63.2 and 34.6.
    expect(out).toMatch(/^> +variation between batches counted +63\.2 \* +34\.6 \*/m);
    expect(out).toContain('* B-basis, 20 coupons, 60 °C wet: 63.2 MPa of load over area');
    expect(out).not.toMatch(/allowable is|design allowable:/);
  });

  it('says that there are too few, and what number would do', async () => {
    const { code, out } = await run(project(set('few', [[101]])), 'basis');
    expect(code).toBe(1);
    expect(out).toContain('There is no B value: see the last decision.');
    expect(out).toMatch(/^ +normal +takes 2 results/m);
    expect(out).toContain(
      'Short of the usual class B18 (3 batches, 18 results; from memory) by 2 batches and 17 results.',
    );
  });

  it('tells counts as whole numbers, and what is next to nothing as less', async () => {
    // Two results far above twenty that are alike in pairs: nothing fits.
    const odd = [...Array.from({ length: 20 }, (_, i) => 100 + (i % 2) / 10), 400, 420];
    const { out } = await run(project(set('odd', [odd])), 'basis');
    expect(out).toMatch(/^Does a Weibull distribution fit\? +OSL < 0\.001 +0\.0500/m);
    expect(out).toMatch(/^Without a distribution +results 22 +29 +B: fewer than 29/m);
    expect(out).toMatch(/Leave them out only [\s\S]* here they stay in\./);
    expect(out).not.toMatch(/ 0 /);
    const two = await run(project(set('two', [EIGHTEEN.slice(0, 9), EIGHTEEN.slice(9)])), 'basis');
    expect(two.out).toContain('results; from memory) by 1 batch.');
  });

  it('says which of the two values a method does not give', async () => {
    const many = Array.from({ length: 35 }, (_, i) => 100 + i + (i % 7) / 3);
    const { out } = await run(project(set('many', [many])), 'basis');
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /\(Hanson and Koopmans\) \d+\.?\d* B: up to 28 results; use the rank/,
    );
  });

  it('prints as JSON what the app is answered', async () => {
    const document = project(set('a', [EIGHTEEN]), set('b', ETW2));
    const { code, out } = await run(document, 'basis', '--set', 'a', '--json');
    const answer = await answerOf('project.coupons', { document, setId: 'a' });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  it('names a set that is not there, and the nearest that is', async () => {
    const { code, err } = await run(project(set('etw', [EIGHTEEN])), 'basis', '--set', 'etv');
    expect(code).toBe(2);
    expect(err).toMatch(
      /^lapwright: c\.json: --set: There is no set of coupons "etv".*Did you mean "etw"/,
    );
  });

  it('has nothing to say of a project without coupons', async () => {
    const { code, out } = await run(demo as unknown as Project, 'basis');
    expect([code, out.trim()]).toEqual([0, 'There are no sets of coupons in this project.']);
  });
});

describe('lives', () => {
  const told = async (list: readonly (readonly [number, number])[], runOut = -1) => {
    const results = list.map(([peak, cycles], i) => ({
      coupon: String(i),
      batch: 'a',
      peak,
      cycles,
      runOut: i === runOut,
    }));
    const { results: _, ...head } = set('hum', []);
    const { coupons, ...rest } = project();
    const life = [{ ...head, temperature: 23, moisture: 'dry' as const, ratio: 0.1, results }];
    const { code, out } = await run({ ...rest, coupons: { ...coupons!, life } }, 'basis');
    return { code, out, words: out.replaceAll(/\s+/g, ' ') };
  };
  const six: readonly [number, number][] = [
    [8400, 2679],
    [8400, 6038],
    [6300, 43212],
    [6300, 139700],
    [4200, 2005368],
    [4200, 5000000],
  ];

  it('are told with their bound and what it would be as an S-N line', async () => {
    const { code, out, words } = await told(six, 5);
    expect(code).toBe(0);
    expect(out).toMatch(/^Set hum: Double lap shear, .*, load ratio 0\.1$/m);
    expect(out).toMatch(
      /^5 failures, 1 run-out, longest 5\.0·10\^6 cycles; scatter of log N 0\.\d+/m,
    );
    expect(words).toMatch(
      /S-N line below the 90 % bound: share = (0\.\d{4}|\d\.\d{3})·n\^−0\.\d{4,5}\. Nothing is changed/,
    );
    expect(words).toMatch(
      /goes with 0\.450 at ratio −1, 0\.900 at ratio 0 of it, as the margins carry it over.*test at the ratio/,
    );
    expect(words).not.toContain('can move it far');
  });

  it('of few failures say so', async () => {
    const from = async (n: number) => (await told(six.slice(0, n))).words;
    expect(await from(3)).toContain(
      'From 3 failures: the bound is wide and a fourth can move it far.',
    );
    expect(await from(4)).toContain('From 4 failures: the bound is wide and a fifth can');
    expect(await from(5)).not.toContain('can move it far');
  });

  it('are not carried over where they rise with stress or have no line', async () => {
    const rising = six.map(([peak], i): [number, number] => [peak, six[5 - i]![1]]);
    const up = await told(rising);
    expect(up.words).toContain('Lives do not fall as stress rises');
    expect(up.words).not.toContain('Goodman');
    const none = await told(six.slice(0, 2));
    expect(none.words).not.toContain('Goodman');
  });
});

describe('correlate', () => {
  it('sets each coupon beside what was expected of it', async () => {
    const { code, out } = await run(
      project(set('a', [[30, 33, 36]], 'slipped in the grips')),
      'correlate',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/Expected: \d+ N, adhesive, .*; grips for \d+ N\./);
    expect(out).toMatch(
      /^1\.1 +batch 1 +0\.2 +19400 +\d+ +\d\.\d+ +not counted: slipped in the grips/m,
    );
    expect(out).toMatch(
      /^This set: measured over predicted \d\.\d+, scatter 6\.1 %, 2 results, its mean/m,
    );
    expect(out).toMatch(/^Toughened epoxy paste: measured over predicted/m);
  });
});
