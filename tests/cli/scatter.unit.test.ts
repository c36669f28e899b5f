import { describe, expect, it, vi } from 'vitest';
import type { MattersReport, ScatterReport } from '../../src/shared/reports-scatter.ts';
import { belowSentence, checkSentences } from '../../src/shared/scatter-words.ts';
import { signed } from '../../src/shared/words.ts';
import { answerOf, file, lapwright, mastProject } from './lapwright.ts';

vi.setConfig({ testTimeout: 180_000 });

const mast = {
  ...mastProject(),
  settings: {
    ...mastProject().settings,
    tolerances: [
      { input: 'load', distribution: 'normal', spread: 0.05 },
      { input: 'overlap', distribution: 'uniform', spread: 0.5 },
    ],
  },
};
const jointId = 'mast-foot';
const plain = (text: string): string => text.replace(/\s+/g, ' ');

describe('matters', () => {
  it('prints every input with both margins, and with --json what the handler answers', async () => {
    const report = (await answerOf('joint.matters', { document: mast, jointId })) as MattersReport;
    const { code, out } = await lapwright(['matters', file('mast.json', mast), '--joint', jointId]);
    expect(code).toBe(0);
    for (const { label, low, high } of report.bars) {
      expect(out).toContain(label);
      expect(out).toContain(signed(low.margin));
      expect(out).toContain(signed(high.margin));
    }
    const json = await lapwright([
      'matters',
      file('mast.json', mast),
      '--joint',
      jointId,
      '--json',
    ]);
    expect(json.out).toBe(`${JSON.stringify(report)}\n`);
  });
});

describe('scatter', () => {
  const args = () => [
    ...['scatter', file('mast.json', mast), '--joint', jointId],
    ...['--samples', '100', '--method', 'each'],
  ];

  it('prints the share, percentiles and what governs; --json what the handler answers', async () => {
    const input = { document: mast, jointId, samples: 100, method: 'each' };
    const report = (await answerOf('joint.scatter', input)) as ScatterReport;
    const { code, out } = await lapwright(args());
    expect(code).toBe(0);
    expect(plain(out)).toContain(plain(belowSentence(report)));
    expect(plain(out)).toContain(plain(checkSentences(report)[0]!));
    expect(out).toContain(report.governs[0]!.label);
    expect(plain(out)).toContain('The tolerances are assumptions');
    const json = await lapwright([...args(), '--json']);
    expect(json.out).toBe(`${JSON.stringify(report)}\n`);
  });

  it('refuses a number of samples or a joint that cannot be', async () => {
    const path = file('mast.json', mast);
    const few = await lapwright(['scatter', path, '--joint', jointId, '--samples', '3']);
    expect(few.code).toBe(2);
    expect(few.err).toContain('a whole number from 100 to 1000000');
    const other = await lapwright(['scatter', path, '--joint', 'mast-foott']);
    expect(other.err).toContain('Did you mean "mast-foot"?');
  });
});
