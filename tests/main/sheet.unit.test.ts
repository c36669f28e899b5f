/** joint.sheet: one answer that holds what the pages get, figure by figure; sheet.pdf elsewhere than in a window. */
import { describe, expect, it, vi } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import { projectShape } from '../../src/shared/project.ts';
import type { CheckReport, JointReport, SweepReport, Working } from '../../src/shared/reports.ts';
import type { JointSheet } from '../../src/shared/reports-sheet.ts';
import { remarksOf, restsOnText, sourceWords, wallsOf } from '../../src/shared/sheet-words.ts';
import { ask, curlew, value } from './asking.ts';

const demo: Project = await curlew();
/** Without strength against overlap, which takes longest. */
const sheetOf = (jointId: string, workings = 0, document: unknown = demo): Promise<JointSheet> =>
  value<JointSheet>('joint.sheet', { document, jointId, workings, sweep: false });

vi.setConfig({ testTimeout: 600_000 });

describe('the sheet of a joint', () => {
  it.each(demo.joints.map(({ id }) => id))(
    'of %s says what the pages and the check say',
    async (jointId) => {
      const sheet = await value<JointSheet>('joint.sheet', {
        document: demo,
        jointId,
        workings: 1,
        // Of one joint: it takes longest.
        sweep: jointId === 'tail-strut',
      });
      const joint = { document: demo, jointId };
      const report = await value<JointReport>('joint.analyse', {
        ...joint,
        focus: { stations: 241 },
      });
      expect(sheet.report).toEqual(report);
      expect(sheet.sweep).toEqual(
        jointId === 'tail-strut' ? await value<SweepReport>('joint.sweep', joint) : null,
      );
      const check = await value<CheckReport>('project.check', { document: demo });
      const summary = check.joints.find((one) => one.jointId === jointId)!;
      expect(sheet.report.margins[0]!.margin).toBe(summary.lowest!.margin);
      const [lowest] = report.margins;
      const { caseId, conditionId, gapState, theta, mode, part, place } = lowest!;
      const working = await value<Working>('joint.explain', {
        ...joint,
        subject: mode,
        part,
        place,
        focus: { caseId, conditionId, gapState, theta },
      });
      expect(sheet.workings).toEqual([{ margin: lowest, working, refused: null }]);
    },
    600_000,
  );

  it('has the working of as many of the lowest margins as were asked for, and of all', async () => {
    const two = await sheetOf('landing-leg', 2);
    expect(two.workings.map(({ margin }) => margin)).toEqual(two.report.margins.slice(0, 2));
    const all = await sheetOf('landing-leg', 200);
    expect(all.workings).toHaveLength(all.report.margins.length);
    expect(all.workings.every(({ working }) => working !== null)).toBe(true);
  });

  it('stands without a load: no strength against overlap, no working, and no refusal', async () => {
    const document = structuredClone(demo);
    document.joints.find(({ id }) => id === 'landing-leg')!.loads = [];
    const sheet = await sheetOf('landing-leg', 3, document);
    expect([sheet.report.margins, sheet.sweep, sheet.sweepRefused, sheet.workings]).toEqual([
      [],
      null,
      null,
      [],
    ]);
  });

  it('tells how far it is, up to the last margin', async () => {
    const told: [number, number][] = [];
    await value(
      'joint.sheet',
      { document: demo, jointId: 'landing-leg', workings: 2 },
      { progress: (done, total) => void told.push([done, total]) },
    );
    const shares = told.map(([done, total]) => done / total);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeGreaterThan(0.8);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });

  it('is refused where the joint is', async () => {
    expect(await ask('joint.sheet', { document: demo, jointId: 'none' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });
});

describe('words of the sheet', () => {
  it('says of every margin what it rests on, and marks what is typical', async () => {
    const root = demo.joints.find(({ id }) => id === 'landing-leg');
    const now = await sheetOf(root!.id);
    for (const margin of now.report.margins) {
      if (margin.typical) expect(restsOnText(margin, root!, demo)).toMatch(/typical|published/);
    }
    const tested = structuredClone(demo);
    for (const adherend of tested.adherends) {
      adherend.source = { kind: 'tested', text: 'own coupons' };
    }
    const { report } = await sheetOf(root!.id, 0, tested);
    const wall = report.margins.find(({ mode }) => mode === 'metal-yield')!;
    expect(restsOnText(wall, root!, tested)).toBe('tested values as entered');
  });

  it('finds the material of each wall once', () => {
    const root = demo.joints.find(({ type }) => type === 'sleeve-double')!;
    const walls = wallsOf(root, demo);
    expect(walls.flatMap(({ parts }) => parts).toSorted()).toEqual(['socket', 'spigot', 'tube']);
    expect(walls).toHaveLength(2);
  });

  it('never calls what is typical anything else', () => {
    expect(sourceWords({ kind: 'typical', text: 'x' }).mark).toMatch(/^typical: replace/);
    expect(sourceWords({ kind: 'memory', text: 'x' }).mark).toMatch(/memory: replace/);
    expect(sourceWords({ kind: 'tested', text: 'x' })).toEqual({ mark: null, text: 'tested: x' });
  });

  it('lists every flag once, with the figures that it is said of', async () => {
    const { report, sweep, couponFlags } = await sheetOf('landing-leg');
    const remarks = remarksOf(report, sweep, couponFlags);
    const messages = [
      ...report.flags,
      ...report.margins.flatMap(({ flags }) => flags),
      ...(report.stress?.flags ?? []),
      ...(sweep?.flags ?? []),
      ...couponFlags,
    ].map(({ message }) => message);
    expect(remarks.map(({ said }) => said.message).toSorted()).toEqual(
      [...new Set(messages)].toSorted(),
    );
    const flagged = report.margins.find(({ flags }) => flags.length > 0)!;
    const remark = remarks.find(({ said }) => said.message === flagged.flags[0]!.message)!;
    expect(remark.about).toContain(flagged.label);
  });
});

describe('its words in the project file', () => {
  const parse = (sheet: unknown) => projectShape.safeParse({ ...demo, sheet });
  it('may be left out, wholly or in part', () => {
    expect(parse(undefined).success).toBe(true);
    expect(
      parse({ revision: 'B', revisions: [{ revision: 'A', date: '2026-03-01' }] }).success,
    ).toBe(true);
  });
  it('are refused where they are too long, or unknown', () => {
    expect(parse({ revision: 'B'.repeat(21) }).success).toBe(false);
    expect(parse({ author: 'me' }).success).toBe(false);
  });
});

it('saves no PDF where there is no window', async () => {
  expect(await ask('sheet.pdf', { name: 'sheet' })).toMatchObject({
    ok: false,
    error: { code: 'not-found', message: expect.stringContaining('Print the sheet') },
  });
});
