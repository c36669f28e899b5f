/** The ledger in words and as comma-separated values. */
import { describe, expect, it } from 'vitest';
import { ledgerReport } from '../../src/main/handlers/ledger/ledger.ts';
import { readCsv } from '../../src/shared/csv.ts';
import { ledgerCsv } from '../../src/shared/ledger-csv.ts';
import {
  gapsText,
  ledgerLines,
  ledgerOthers,
  ledgerSentence,
  sourceWords,
} from '../../src/shared/ledger-words.ts';
import type { Adhesive, Project } from '../../src/shared/project.ts';
import type { LedgerReport } from '../../src/shared/reports-ledger.ts';
import { ask, curlew } from '../main/asking.ts';
import { couponSet, withAllowables, withSets } from '../support/with-coupons.ts';

const first = ({ adhesives }: LedgerReport) => adhesives[0]!;
const changed = async (change: Partial<Adhesive>): Promise<Project> => {
  const document = await curlew();
  return { ...document, adhesives: [{ ...document.adhesives[0]!, ...change }] };
};

function records(text: string): readonly Record<string, string>[] {
  const read = readCsv(text);
  if (!read.ok) throw new Error(read.message);
  const [head, ...rows] = read.rows.map(({ cells }) => cells);
  return rows.map((cells) => Object.fromEntries(head!.map((name, i) => [name, cells[i]!])));
}

describe('lines of the ledger', () => {
  it('hold neighbouring gaps at which all is the same, and no other', async () => {
    const { environments } = first(ledgerReport(await curlew()));
    const hot = environments.at(-1)!;
    const lines = ledgerLines(hot.gaps);
    expect(lines.map(({ gaps }) => gapsText(gaps, true))).toEqual(['0.1 to 0.3', '0.5']);
    expect(lines[0]!.joints.toSorted()).toEqual([
      'boom-root',
      'boom-tip',
      'landing-leg',
      'tail-strut',
    ]);
    // A gap between them that is weaker parts those that are the same.
    const weak = hot.gaps.map((one) =>
      one.gap === 0.2 ? { ...one, strength: { ...one.strength!, shearYield: 1 } } : one,
    );
    expect(ledgerLines(weak).map(({ gaps }) => gapsText(gaps, true))).toEqual([
      '0.1 to 0.17',
      '0.2',
      '0.23 to 0.3',
      '0.5',
    ]);
  });

  it('say nothing of what lies between where gaps were left out', () => {
    expect(gapsText([], true)).toBe('any');
    expect(gapsText([0.2], true)).toBe('0.2');
    expect(gapsText([0.1, 0.2, 0.3], false)).toBe('0.1, 0.2, 0.3');
    expect(gapsText([0.1, 0.2, 0.3, 0.4, 0.5], false)).toBe('0.1 … 0.5, 5 gaps');
  });
});

describe('what it comes to', () => {
  it('counts the environments that joints meet, by what they rest on', async () => {
    const typical = await curlew();
    expect(ledgerSentence(ledgerReport(typical).adhesives)).toBe(
      'All three environments that joints meet rest on values that are typical or from memory.',
    );
    const sets = [
      couponSet('hot', 150),
      couponSet('room', 150, { temperature: 23, moisture: 'dry' }),
    ];
    const taken = await withAllowables(ask, withSets(typical, ...sets), 'hot', 'room');
    expect(ledgerSentence(ledgerReport(taken).adhesives)).toBe(
      'Of three environments that joints meet, one rests on an allowable tested there, two on an allowable from another temperature.',
    );
    const [glue] = taken.adhesives;
    const means = {
      ...taken,
      adhesives: [
        {
          ...glue!,
          allowables: glue!.allowables!.map((one) => ({ ...one, basis: 'mean' as const })),
        },
      ],
    };
    expect(ledgerSentence(ledgerReport(means).adhesives)).toMatch(/on a mean of coupons, no allow/);
    expect(ledgerSentence(ledgerReport(means).adhesives)).not.toMatch(/on an allowable/);
    expect(ledgerSentence(ledgerReport({ ...typical, joints: [] }).adhesives)).toMatch(
      /^No joint is judged/,
    );
  });

  it('says of tested values that they are as entered, of nothing given that it is not', async () => {
    const { fatigue: _f, fracture: _r, knockdowns: _k, ...bare } = (await curlew()).adhesives[0]!;
    const document = { ...(await curlew()), adhesives: [bare] };
    const source = { kind: 'tested', text: 'own' } as const;
    const tested = ledgerReport({ ...document, adhesives: [{ ...bare, source }] });
    expect(ledgerSentence(tested.adhesives)).toMatch(/rest on tested values as entered\.$/);
    expect(ledgerOthers(first(tested)).map((one) => [one.what, sourceWords(one)])).toEqual([
      ['rows', 'tested values as entered'],
      ['knockdowns', 'not given'],
      ['strength against gap', 'not given'],
      ['fracture energies', 'not given'],
      ['S-N line', 'not given'],
    ]);
  });
});

describe('as comma-separated values', () => {
  it('has a row for each environment and gap, its units in the head, the figures whole', async () => {
    const report = ledgerReport(await curlew());
    const rows = records(ledgerCsv(report));
    const lines = first(report).environments.flatMap(({ gaps }) => gaps);
    const strengths = rows.filter(({ what }) => what === 'strength');
    expect(strengths).toHaveLength(lines.length);
    expect(rows).toHaveLength(lines.length + 5);
    strengths.forEach((row, i) => {
      expect(Number(row.shear_yield_MPa)).toBeCloseTo(lines[i]!.strength!.shearYield, 6);
      expect(row.rests_on).toBe('typical values, no allowable');
      expect(row.scatter_from).toBe('knockdown');
    });
    expect(strengths[0]).toMatchObject({ temperature_C: '-40', moisture: 'dry', gap_mm: '0.1' });
    expect(rows.at(-1)).toMatchObject({ what: 'S-N line', basis: 'published' });
    expect(strengths.find((row) => row.gap_mm === '0.15' && row.moisture === 'wet')!.cases).toBe(
      '',
    );
    expect(
      strengths.find(
        (row) => row.gap_mm === '0.15' && row.temperature_C === '60' && row.moisture === 'wet',
      )!.cases,
    ).toBe('Tail strut lug: Gust, hot deck');
  });

  it('names the set of an allowable and what was not taken', async () => {
    const sets = [couponSet('hot', 150), couponSet('more', 150, { gap: 0.4 })];
    const document = await withAllowables(ask, withSets(await curlew(), ...sets), 'hot');
    const row = records(ledgerCsv(ledgerReport(document))).find(
      (one) => one.temperature_C === '60' && one.moisture === 'wet' && one.gap_mm === '0.2',
    )!;
    expect(row).toMatchObject({
      basis: 'B',
      scatter_from: 'allowable',
      set: 'hot',
      set_now: 'as-taken',
      coupons: '18',
      tested: '2026-02-03',
      taken: '2026-03-01T08:00:00Z',
      not_taken: 'Set more: 18 results at gap 0.4 mm: no allowable is taken.',
    });
    expect(Number(row.scatter_factor)).toBeCloseTo(
      document.adhesives[0]!.allowables![0]!.factor,
      7,
    );
  });

  it('lets no text be a formula, and no name break a row', async () => {
    const name = '=HYPERLINK("http://a","b"),\n"c"';
    const text = '@SUM(1)';
    const csv = ledgerCsv(ledgerReport(await changed({ name, source: { kind: 'memory', text } })));
    const rows = records(csv);
    expect(rows.every(({ adhesive_name }) => adhesive_name === `'${name}`)).toBe(true);
    expect(rows[0]!.source).toBe(`'${text}`);
    expect(csv).not.toMatch(/(^|,|\r\n)"?[=@]/);
    // Numbers stay numbers.
    expect(rows[0]!.temperature_C).toBe('-40');
  });
});
