import { describe, expect, it, vi } from 'vitest';
import type { JointReport, Working } from '../../src/shared/reports.ts';
import { signed } from '../../src/shared/words.ts';
import { answerOf, file, lapwright, linesOf, mastProject } from './lapwright.ts';

vi.setConfig({ testTimeout: 120_000 });

const mast = mastProject();
const explain = (...more: string[]) =>
  lapwright(['explain', file('mast.json', mast), '--joint', 'mast-foot', ...more]);
const working = (subject: string, more: object = {}): Promise<Working> =>
  answerOf('joint.explain', {
    document: mast,
    jointId: 'mast-foot',
    subject,
    focus: {},
    ...more,
  }) as Promise<Working>;
const margins = async () =>
  (
    (await answerOf('joint.analyse', {
      document: mast,
      jointId: 'mast-foot',
      focus: {},
    })) as JointReport
  ).margins;

describe('explain', () => {
  it('prints with --json exactly what the handler answers', async () => {
    const value = await working('adhesive-yield');
    const { code, out } = await explain('--mode', 'adhesive-yield', '--json');
    expect({ code, out }).toEqual({ code: 0, out: `${JSON.stringify(value)}\n` });
  });

  it('explains the lowest margin when no mode is named', async () => {
    const [lowest] = await margins();
    const { out, code } = await explain('--json');
    expect(code).toBe(0);
    const { margin } = JSON.parse(out) as Working;
    expect(margin!.mode).toBe(lowest!.mode);
    expect(margin!.margin).toBe(lowest!.margin);
  });

  it('prints every card: statement, formula, values put in, result, source, domain', async () => {
    const { cards, margin, title } = await working('adhesive-yield');
    const { out } = await explain('--mode', 'adhesive-yield');
    const flowing = out.replace(/\s+/g, ' ');
    expect(flowing).toContain(`${title}.`);
    expect(flowing).toContain(signed(margin!.margin));
    cards.forEach((card, i) => {
      expect(flowing).toContain(`${i + 1}. ${card.title}`);
      for (const text of [card.statement, card.formula, card.filled, card.source]) {
        expect(flowing).toContain(text);
      }
      for (const { label } of card.values) expect(flowing).toContain(label);
      for (const { text, inside } of card.domain) {
        expect(flowing).toContain(`${inside ? 'inside:' : 'OUTSIDE:'} ${text}`);
      }
    });
    expect(linesOf(out).every((line) => line.length <= 100)).toBe(true);
  });

  it('passes case, gap, part and place on', async () => {
    const wall = (await margins()).find(({ mode }) => mode === 'metal-yield')!;
    const given = [
      '--mode',
      'metal-yield',
      '--part',
      wall.part,
      '--case',
      'wind-hot',
      '--gap',
      'max',
    ];
    const { out } = await explain(...given, '--place', 'mouth', '--json');
    const { margin } = JSON.parse(out) as Working;
    expect(margin).toMatchObject({ part: wall.part, caseId: 'wind-hot', gapState: 'max' });
  });

  it('refuses in plain words', async () => {
    const unknown = await explain('--mode', 'creep');
    expect(unknown.code).toBe(2);
    expect(unknown.err).toContain('"creep"');
    expect(unknown.err).toContain('adhesive-yield');
    const joint = await lapwright(['explain', file('mast.json', mast), '--joint', 'mast-fot']);
    expect(joint.err).toContain('Did you mean "mast-foot"?');
    const place = await explain('--place', 'top');
    expect(place.err).toContain('"top" is not one of');
    const away = await explain('--part', 'wing');
    expect(away.code).toBe(2);
    expect(away.err).toContain('--mode');
  });
});
