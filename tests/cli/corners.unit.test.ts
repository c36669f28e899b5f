/** The command that sets joints against load cases. */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import type { CornersReport } from '../../src/shared/reports.ts';
import { signed } from '../../src/shared/words.ts';
import { answerOf, changed, file, lapwright, linesOf, type Ran } from './lapwright.ts';

vi.setConfig({ testTimeout: 600_000 });

const blocks = (out: string): string[][] =>
  out.split('\n\n').map((block) => block.split('\n').filter((line) => line !== ''));
const firstWords = (lines: readonly string[]): string[] =>
  lines.slice(2).flatMap((line) => (line.startsWith(' ') ? [] : [line.split(' ')[0]!]));

describe('corners of the demonstration project', () => {
  let document: Project;
  let path: string;
  let report: CornersReport;
  let ran: Ran;
  beforeAll(async () => {
    document = JSON.parse((await lapwright(['demo'])).out) as Project;
    report = (await answerOf('project.corners', { document })) as CornersReport;
    const { mkdtempSync, writeFileSync } = await import('node:fs');
    const { tmpdir } = await import('node:os');
    path = `${mkdtempSync(`${tmpdir()}/lapwright-`)}/curlew.json`;
    writeFileSync(path, JSON.stringify(document));
    ran = await lapwright(['corners', path]);
  }, 600_000);

  it('shows a column for each case, a figure for each load, the governing one marked', () => {
    const [, table] = blocks(ran.out);
    expect(table![0]!.split(/\s+/)).toEqual(['Joint', ...document.loadCases.map(({ id }) => id)]);
    for (const { jointId, cells, lowest } of report.joints) {
      const row = table!.find((line) => line.startsWith(jointId))!;
      for (const cell of cells) expect(row).toContain(signed(cell.lowest!.margin));
      expect(row.split('>').length).toBe(2);
      expect(row).toMatch(new RegExp(`>[▲◆●] ${signed(lowest!.margin).replace('+', '\\+')}`));
    }
    expect(ran).toMatchObject({ code: 1, err: '' });
    for (const line of linesOf(ran.out)) expect([...line].length).toBeLessThanOrEqual(100);
  });

  it('names the governing corner of each joint underneath', () => {
    const [, , named] = blocks(ran.out);
    for (const { jointId, lowest } of report.joints) {
      const row = named!.find((line) => line.startsWith(jointId))!;
      expect(row).toContain(lowest!.caseId);
      expect(row).toContain(signed(lowest!.margin));
      expect(row).toMatch(/(min|nominal|max|side)$/);
    }
    expect(ran.out).toContain('Of four joints, one fails, one is low and two hold.');
  });

  it('is in the order that is asked for', async () => {
    const order = async (by: string): Promise<string[]> =>
      firstWords(blocks((await lapwright(['corners', path, '--sort', by])).out)[1]!);
    expect(firstWords(blocks(ran.out)[1]!)).toEqual([
      'landing-leg',
      'boom-tip',
      'boom-root',
      'tail-strut',
    ]);
    expect(await order('joint')).toEqual(['boom-root', 'boom-tip', 'landing-leg', 'tail-strut']);
    // A joint that the case does not load comes after those that it does.
    expect(await order('gust-hot')).toEqual(['boom-root', 'tail-strut', 'boom-tip', 'landing-leg']);
    const wrong = await lapwright(['corners', path, '--sort', 'gust-hto']);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('Did you mean "gust-hot"?');
  });

  it('lists every corner of one joint, lowest first, its conditions named', async () => {
    const { out, code } = await lapwright(['corners', path, '--joint', 'landing-leg']);
    expect(code).toBe(1);
    const [head, table] = blocks(out);
    const { states } = report.joints.find(({ jointId }) => jointId === 'landing-leg')!;
    expect(head!.join(' ')).toContain(`Landing leg: target margin +0.25, ${states} states`);
    expect(table!.length - 2).toBe(states);
    const margins = table!
      .slice(2)
      .map((line) => Number(/[+−]\d+\.\d+/.exec(line)![0].replace('−', '-')));
    expect(margins).toEqual(margins.toSorted((a, b) => a - b));
    expect(table!.some((line) => /hard-landing, at cold-soak .*thin side$/.test(line))).toBe(true);
  });

  it('gives the answer of the handler as JSON', async () => {
    const { out } = await lapwright(['corners', path, '--json']);
    expect(JSON.parse(out)).toEqual(report);
  });

  it('draws and explains a case in a condition, or in its own surroundings', async () => {
    const stress = async (...more: string[]) => {
      const argv = ['stress', path, '--joint', 'landing-leg', '--case', 'hard-landing', ...more];
      return lapwright(argv);
    };
    const cold = await stress('--condition', 'cold-soak');
    expect(cold.out).toContain('Hard landing, at Cold soak (ultimate), −20 °C dry');
    const own = await stress('--condition', 'own');
    expect(own.out).toContain('Hard landing (ultimate), 60 °C wet');
    // The condition that is its own surroundings already.
    const hot = await stress('--condition', 'hot-deck');
    expect(hot.out).toBe(own.out);
    const none = await stress('--condition', 'warm');
    expect(none.code).toBe(2);
    expect(none.err).toContain('There is no condition "warm"');
    const wrong = await lapwright([
      ...['stress', path, '--joint', 'landing-leg', '--case', 'gust-cold'],
      ...['--condition', 'hot-deck'],
    ]);
    expect(wrong.err).toContain('not judged in the condition "hot-deck"');
    const explain = await lapwright([
      ...['explain', path, '--joint', 'landing-leg', '--mode', 'adhesive-strain'],
      ...['--case', 'hard-landing', '--condition', 'cold-soak', '--gap', 'thick-side'],
    ]);
    expect(explain.out).toContain('Hard landing, at Cold soak (ultimate) · −20 °C dry');
    expect(explain.out).toContain('offset, thick side');
  });
});

it('sets many cases below each other, and a joint that cannot be computed first', async () => {
  const project = changed({}, (joint) => [
    { ...joint, id: 'too-thin', name: 'Too thin', bond: { gap: 0.05, tolerance: 0.05 } },
  ]);
  const cases = Array.from({ length: 14 }, (_, i) => ({
    ...project.loadCases[0]!,
    id: `wind-from-${i}`,
  }));
  const loads = cases.map(({ id }) => ({ ...project.joints[0]!.loads[0]!, case: id }));
  const long = {
    ...project,
    loadCases: [...project.loadCases, ...cases],
    joints: project.joints.map((joint, i) => (i === 0 ? { ...joint, loads } : joint)),
  };
  const { out, code, err } = await lapwright(['corners', file('long.json', long)]);
  expect(code).toBe(2);
  expect(err).toMatch(/joints\.1\./);
  for (const line of linesOf(out)) expect([...line].length).toBeLessThanOrEqual(100);
  for (const { id } of cases) expect(out.split(` ${id}`).length).toBeGreaterThan(1);
  expect(out).toMatch(/^too-thin +■/m);
  expect(out.indexOf('too-thin')).toBeLessThan(out.indexOf('mast-foot'));
});
