import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import type { Allowable } from '../../src/shared/project-materials.ts';
import type { CheckReport } from '../../src/shared/reports.ts';
import { answerOf, changed, file, lapwright, linesOf, mastProject, type Ran } from './lapwright.ts';

// A busy machine computes a joint in seconds, not in a tenth of one.
vi.setConfig({ testTimeout: 600_000 });

const rowsOf = (out: string): string[] => {
  const lines = linesOf(out);
  const rule = lines.findIndex((line) => line.startsWith('─'));
  return lines.slice(rule + 1, lines.indexOf('', rule));
};

describe('check of the demonstration project', () => {
  let ran: Ran;
  let report: CheckReport;
  beforeAll(async () => {
    const demo = JSON.parse((await lapwright(['demo'])).out);
    // One remark that holds for every joint.
    delete demo.adhesives[0].fracture;
    report = (await answerOf('project.check', { document: demo })) as CheckReport;
    const path = mkdtempSync(join(tmpdir(), 'lapwright-'));
    writeFileSync(join(path, 'curlew.lapwright.json'), JSON.stringify(demo));
    ran = await lapwright(['check', 'curlew.lapwright.json'], { cwd: path });
    rmSync(path, { recursive: true });
  }, 600_000);

  it('exits with 1, for one joint fails, and complains of nothing', () => {
    expect(report.counts.fails).toBe(1);
    expect(ran).toMatchObject({ code: 1, err: '' });
  });

  it('shows every joint with its state as mark and word, the lowest margin first', () => {
    const rows = rowsOf(ran.out).filter((row) => !row.startsWith(' '));
    const order = report.joints.toSorted((a, b) => a.lowest!.margin - b.lowest!.margin);
    expect(rows.map((row) => row.split(' ')[0])).toEqual(order.map(({ jointId }) => jointId));
    const marks = { fails: '▲ fails', low: '◆ low', holds: '● holds' };
    for (const [i, { lowest }] of order.entries()) {
      const { state, margin, caseId } = lowest!;
      const sign = margin < 0 ? '−' : '+';
      expect(rows[i]).toContain(marks[state]);
      expect(rows[i]).toContain(`${sign}${Math.abs(margin).toFixed(2)}*`);
      expect(rows[i]).toContain(caseId);
      expect(rows[i]).toMatch(/(root|mouth|at [\d.]+ mm), .*gap (min|nominal|max)$/);
    }
  });

  it('names the clocking of a sleeve but not of a flat joint', () => {
    const row = (id: string) => rowsOf(ran.out).find((line) => line.startsWith(id));
    expect(row('landing-leg')).toMatch(/, \d+°, gap/);
    expect(row('tail-strut')).not.toContain('°');
  });

  it('counts the joints, says each remark once and ends with the caution', () => {
    expect(ran.out).toContain('Of four joints, one fails');
    expect(ran.out.split('no fracture energies').length).toBe(2);
    expect(ran.out.trimEnd().endsWith('have a competent engineer approve it.')).toBe(true);
  });

  it('fits into 100 columns', () => {
    for (const line of linesOf(ran.out)) expect([...line].length).toBeLessThanOrEqual(100);
  });
});

/** The example with an allowable of own coupons; with joints of another adhesive where one is named. */
function withAllowable(other?: string): Project {
  const project = changed({}, (joint) =>
    other === undefined
      ? []
      : [0, 1, 2, 3, 4].map((i) => ({ ...joint, id: `more-${i}`, adhesive: other })),
  );
  const [first] = project.adhesives;
  const allowable: Allowable = {
    set: 'own',
    setName: 'Own coupons',
    temperature: 50,
    moisture: 'wet',
    gap: 0.2,
    basis: 'B',
    coupons: 18,
    batches: 3,
    method: 'Weibull',
    value: 20,
    mean: 25,
    ratio: 1,
    factor: 0.8,
    taken: '2026-01-31T08:30:00Z',
  };
  return {
    ...project,
    adhesives: [
      { ...first!, allowables: [allowable] },
      ...(other === undefined ? [] : [{ ...first!, id: other }]),
    ],
  };
}

describe('check', () => {
  it('exits with 0 when every margin reaches the target', async () => {
    const ran = await lapwright(['check', file('mast.json', mastProject())]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toContain('Of one joint, one holds.');
  });

  it('exits with 1 when a margin is low but nothing fails', async () => {
    const project = mastProject();
    const strict = { ...project, settings: { ...project.settings, targetMargin: 5 } };
    const ran = await lapwright(['check', file('mast.json', strict)]);
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/mast-foot +◆ low/);
  });

  it('exits with 2 and says why when a joint cannot be computed, but shows the others', async () => {
    const project = changed({}, (joint) => [
      { ...joint, id: 'too-thin', name: 'Too thin', bond: { gap: 0.05, tolerance: 0.05 } },
    ]);
    const ran = await lapwright(['check', file('mast.json', project)]);
    expect(ran.code).toBe(2);
    expect(ran.out).toMatch(/^too-thin +■ refused$/m);
    expect(ran.out).toMatch(/^mast-foot +● holds/m);
    expect(ran.out).toContain('Of two joints, one holds and one cannot be computed.');
    expect(ran.err).toMatch(/^lapwright: .*mast\.json: joints\.1\.\S+: .+\n$/);
  });

  it('says so when no joint at all could be computed', async () => {
    const project = changed({ bond: { gap: 0.05, tolerance: 0.05 } });
    const ran = await lapwright(['check', file('mast.json', project)]);
    expect(ran.code).toBe(2);
    expect(ran.out).toContain('Of one joint, one cannot be computed.');
  });

  it('names a joint without load cases and takes it for no margin', async () => {
    const ran = await lapwright(['check', file('mast.json', changed({ loads: [] }))]);
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^mast-foot +○ no load$/m);
    expect(ran.out).toContain('Of one joint, one has no load case.');
  });

  it('takes a project without joints', async () => {
    const ran = await lapwright(['check', file('mast.json', { ...mastProject(), joints: [] })]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('This project has no joints.');
  });

  it('names the joints that a remark is about when it is not about all', async () => {
    const project = changed({}, (joint) => [
      { ...joint, id: 'thick', bond: { gap: 0.8, tolerance: 0.05 } },
    ]);
    const ran = await lapwright(['check', file('mast.json', project)]);
    expect(ran.out).toMatch(/^! thick: The bond is 0\.8 mm thick/m);
  });

  it('says once what all bond margins rest on, and never calls a typical value an allowable', async () => {
    const { out } = await lapwright(['check', file('mast.json', mastProject())]);
    expect(out).toContain('\nThe bond margins above rest on typical values, no allowable.\n');
    // With an allowable in use the line says that instead.
    const { out: own } = await lapwright(['check', file('mast.json', withAllowable())]);
    expect(own).toContain('\nThe bond margins above rest on B-basis, 18 coupons, 50 °C wet.\n');
    expect(own).not.toContain('typical values');
  });

  it('says it by joint where they differ, all of them named', async () => {
    const { out } = await lapwright(['check', file('mast.json', withAllowable('typical-paste'))]);
    const [, said] = out.split('The bond margins above rest on\n');
    const lines = linesOf(`${said!.split('\n\n')[0]!}\n`);
    expect(lines.toSorted()).toEqual([
      '  B-basis, 18 coupons, 50 °C wet: mast-foot',
      '  typical values, no allowable: more-0, more-1, more-2, more-3, more-4',
    ]);
  });

  it('says nothing of walls', async () => {
    // Walls of paper: the adherend gives way long before the bond.
    const project = mastProject();
    const soft = project.adherends.map((one) =>
      one.kind === 'isotropic' ? { ...one, yieldStrength: 20, ultimateStrength: 20 } : one,
    );
    const { out } = await lapwright(['check', file('mast.json', { ...project, adherends: soft })]);
    expect(out).toMatch(/sleeve, (yield|ultimate)/);
    expect(out).not.toContain('rest on');
  });

  it('prints with --json exactly what the handler answers', async () => {
    const project = mastProject();
    const ran = await lapwright(['check', file('mast.json', project), '--json']);
    const value = await answerOf('project.check', { document: project });
    expect(ran).toEqual({ code: 0, out: `${JSON.stringify(value)}\n`, err: '' });
  });

  it('keeps its exit codes with --json', async () => {
    const low = await lapwright(['check', file('a.json', changed({ overlap: 5 })), '--json']);
    expect(low.code).toBe(1);
    const project = changed({ bond: { gap: 0.05, tolerance: 0.05 } });
    const refused = await lapwright(['check', '--json', file('b.json', project)]);
    expect(refused).toMatchObject({ code: 2, err: '' });
    expect(JSON.parse(refused.out).joints[0].refused.field).toMatch(/^joints\.0\./);
  });

  it('takes a path relative to the folder it is told', async () => {
    const path = file('mast.json', mastProject());
    expect((await lapwright(['check', 'mast.json'], { cwd: dirname(path) })).code).toBe(0);
  });

  it('colours only on a screen, and never when NO_COLOR is set', async () => {
    const path = file('mast.json', mastProject());
    const colour = '\u001B[';
    vi.stubEnv('NO_COLOR', '');
    vi.stubEnv('TERM', 'xterm');
    try {
      const shown = await lapwright(['check', path], { isTTY: true });
      expect(shown.out).toContain(`${colour}32m● holds`);
      expect((await lapwright(['check', path])).out).not.toContain(colour);
      vi.stubEnv('NO_COLOR', '1');
      const plain = await lapwright(['check', path], { isTTY: true });
      expect(plain.out).not.toContain(colour);
      // Without its colours the text is the same.
      // biome-ignore lint/suspicious/noControlCharactersInRegex: the codes are what is removed.
      expect(shown.out.replace(/\u001B\[\d+m/g, '')).toBe(plain.out);
    } finally {
      vi.unstubAllEnvs();
    }
  });

  it('fits into 80 columns on a narrow screen, with long ids', async () => {
    const long = 'a-joint-with-an-id-as-long-as-an-id-may-be-in-a-project-file-000';
    const path = file('mast.json', changed({ id: long }));
    const { out } = await lapwright(['check', path], { isTTY: false, columns: 40 });
    expect(long.length).toBe(64);
    for (const line of linesOf(out)) expect([...line].length).toBeLessThanOrEqual(80);
    expect(
      rowsOf(out)
        .map((line) => line.slice(0, 20).trim().split(' ')[0])
        .join(''),
    ).toContain('a-joint-');
  });

  it('lets no control character of a project reach the screen', async () => {
    const project = { ...mastProject(), name: 'Mast\u001B[2J\nfoot\u202E' };
    const { out } = await lapwright(['check', file('mast.json', project)]);
    expect(out).not.toContain('\u001B');
    expect(linesOf(out)[0]).toBe('Mast\uFFFD[2J\uFFFDfoot\uFFFD: target margin +0.25.');
  });
});
