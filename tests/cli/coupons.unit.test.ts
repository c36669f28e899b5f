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
  it('are told with their bound and what it would be as an S-N line', async () => {
    const results = [
      [8400, 2679],
      [8400, 6038],
      [6300, 43212],
      [6300, 139700],
      [4200, 2005368],
      [4200, 5000000],
    ].map(([peak, cycles], i) => ({
      coupon: String(i),
      batch: 'a',
      peak: peak!,
      cycles: cycles!,
      runOut: i === 5,
    }));
    const { results: _, ...head } = set('hum', []);
    const document = project();
    const { code, out } = await run(
      {
        ...document,
        coupons: {
          ...document.coupons!,
          life: [{ ...head, temperature: 23, moisture: 'dry', ratio: 0.1, results }],
        },
      },
      'basis',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^Set hum: Double lap shear, .*, load ratio 0\.1$/m);
    expect(out).toMatch(
      /^5 failures, 1 run-out, longest 5\.0·10\^6 cycles; scatter of log N 0\.\d+/m,
    );
    expect(out).toMatch(
      /S-N line below the 90 % bound: share = \d\.\d+·n\^−0\.\d+\. Nothing is changed/,
    );
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /at ratio −1, 0\.\d+ at ratio 0 of it: test at the ratio/,
    );
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
