/** `ledger`: what a person reads, and the answer of the app for a program. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { ledgerCsv } from '../../src/shared/ledger-csv.ts';
import type { Project } from '../../src/shared/project.ts';
import type { LedgerReport } from '../../src/shared/reports-ledger.ts';
import { couponSet, withAllowables, withSets } from '../support/with-coupons.ts';
import { answerOf, ask, folder, lapwright, linesOf } from './lapwright.ts';

const plain = demo as unknown as Project;
function run(document: Project, ...words: readonly string[]) {
  const cwd = folder();
  writeFileSync(join(cwd, 'c.json'), JSON.stringify(document));
  return lapwright(['ledger', 'c.json', ...words], { cwd, columns: 100 });
}

describe('ledger', () => {
  it('tells each environment with its factors, gaps that are alike on one line', async () => {
    const { code, out, err } = await run(plain);
    expect([code, err]).toEqual([0, '']);
    expect(linesOf(out)[0]).toBe(
      'All three environments that joints meet rest on values that are typical or from memory.',
    );
    expect(out).toMatch(
      /^60 °C wet +20\.0 +1\.00 +0\.950 +0\.950 +0\.1 to 0\.3 +1\.00 +18\.1 +27\.1 +4 +typical values,/m,
    );
    expect(out).toMatch(/^ +0\.5 +0\.850 +15\.3 +23\.0 +–/m);
    expect(out).toContain('−20 °C dry: Properties between the rows at −40 and 23 °C.');
    expect(out).toMatch(/^S-N line +share of yield +published values +Epoxy-polyamide/m);
    expect(out).not.toMatch(/B-basis|allowable is/);
    expect(Math.max(...linesOf(out).map((line) => [...line].length))).toBeLessThanOrEqual(100);
  });

  it('tells what is taken, what has changed since, and what is not taken', async () => {
    const sets = [couponSet('hot', 150), couponSet('more', 150, { gap: 0.4 })];
    const taken = structuredClone(await withAllowables(ask, withSets(plain, ...sets), 'hot'));
    taken.coupons!.sets[0]!.results[0]!.load = 1;
    const { code, out } = await run(taken);
    expect(code).toBe(0);
    const said = out.replaceAll(/\s+/g, ' ');
    expect(said).toContain(
      '60 °C wet: Set hot: 18 coupons in 3 batches at gap 0.2 mm, tested 2026-02-03, taken 2026-03-01. The coupons have changed since: take it again.',
    );
    expect(said).toContain(
      '60 °C wet: Not taken: Set more, 18 results at gap 0.4 mm: no allowable is taken.',
    );
    expect(out).toMatch(/^60 °C wet +20\.0 +1\.00 +0\.950 +1\.\d+ B /m);
  });

  it('prints as JSON what the app is answered, and as a table for a spreadsheet', async () => {
    const answer = (await answerOf('project.ledger', { document: plain })) as LedgerReport;
    const json = await run(plain, '--json');
    expect(json.code).toBe(0);
    expect(JSON.parse(json.out)).toEqual(JSON.parse(JSON.stringify(answer)));
    expect((await run(plain, '--csv')).out.trimEnd()).toBe(ledgerCsv(answer).trimEnd());
  });

  it('lets no name of the file write to the terminal', async () => {
    const [paste] = plain.adhesives;
    const { out } = await run({ ...plain, adhesives: [{ ...paste!, name: 'a\u001b[31mb' }] });
    expect(out).not.toContain('\u001b');
    expect(out).toContain('a\uFFFD[31mb');
  });

  it('names a joint that cannot be computed', async () => {
    const joints = plain.joints.map((joint) =>
      joint.type === 'flat-double' ? { ...joint, lowerBond: { gap: 0.2, tolerance: 0.2 } } : joint,
    );
    const { code, out } = await run({ ...plain, joints });
    expect(code).toBe(0);
    expect(out).toMatch(/^! Tail strut lug cannot be computed: The gap of 0\.2 mm closes/m);
  });
});
