import { describe, expect, it, vi } from 'vitest';
import type { JointReport, Working } from '../../src/shared/reports.ts';
import { signed } from '../../src/shared/words.ts';
import { answerOf, file, lapwright, linesOf, mastProject } from './lapwright.ts';

vi.setConfig({ testTimeout: 600_000 });

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
    const { out } = await explain(...given, '--json');
    const { margin } = JSON.parse(out) as Working;
    expect(margin).toMatchObject({ part: wall.part, caseId: 'wind-hot', gapState: 'max' });
    const there = await explain(...given, '--place', margin!.place, '--json');
    expect(there.out).toBe(out);
    const other = margin!.place === 'root' ? 'mouth' : 'root';
    const { err, code } = await explain(...given, '--place', other);
    expect(code).toBe(2);
    expect(err).toContain(`--place: This margin is listed for the place "${margin!.place}"`);
  });

  it('refuses in plain words', async () => {
    const unknown = await explain('--mode', 'creep');
    expect(unknown.code).toBe(2);
    expect(unknown.err).toContain('"creep"');
    expect(unknown.err).toContain('adhesive-yield');
    expect(unknown.err).toMatch(/mast\.json: --mode: Nothing here is called "creep"/);
    // A sleeve has no edge moment.
    expect(unknown.err).toContain('plateau');
    expect(unknown.err).not.toContain('edge-moment');
    const joint = await lapwright(['explain', file('mast.json', mast), '--joint', 'mast-fot']);
    expect(joint.err).toContain('Did you mean "mast-foot"?');
    expect(joint.err).toMatch(/mast\.json: --joint: There is no joint/);
    const place = await explain('--place', 'top');
    expect(place.err).toContain('"top" is not one of');
    const away = await explain('--part', 'wing');
    expect(away.code).toBe(2);
    expect(away.err).toContain('--mode');
  });

  it('names the option that is wrong, never a place inside the program', async () => {
    const edge = await explain('--mode', 'edge-moment');
    expect(edge.err).toMatch(/: --mode: Only a flat single lap has an edge moment/);
    const strips = await explain('--mode', 'first-ply');
    expect(strips.err).toMatch(/: --mode: No wall of this joint is given as a stack/);
    const bond = await explain('--mode', 'peak-shear', '--part', 'wing');
    expect(bond.err).toMatch(/: --part: This joint has no bond "wing"/);
    const wall = await explain('--mode', 'metal-yield', '--part', 'wing');
    expect(wall.err).toMatch(/: --part: The wing has no such margin; it is listed for: /);
    const none = await explain('--part', 'wing');
    expect(none.err).toMatch(/mast\.json: No margin of this joint is lowest there/);
    const away = await explain('--mode', 'plateau', '--case', 'wind-hoot');
    expect(away.err).toMatch(
      /: --case: .*carries no load case "wind-hoot".*Did you mean "wind-hot"/,
    );
    for (const { err, code } of [edge, strips, bond, wall, none, away]) {
      expect(code).toBe(2);
      expect(err).not.toMatch(/subject|joints|: part:/);
    }
    const json = JSON.parse((await explain('--mode', 'creep', '--json')).out);
    expect(json.error).toMatchObject({ code: 'not-found', field: 'subject' });
  });

  it('names --case and --joint in the other commands too', async () => {
    const path = file('mast.json', mast);
    const at = async (...argv: string[]) => (await lapwright(argv)).err;
    expect(await at('stress', path, '--joint', 'mast-foot', '--case', 'rain')).toMatch(
      /: --case: .*carries no load case "rain"/,
    );
    expect(await at('stress', path, '--joint', 'mast', '--case', 'rain')).toMatch(/: --joint: /);
    expect(await at('sweep', path, '--joint', 'mast')).toMatch(/: --joint: /);
    const sweep = ['sweep', path, '--joint', 'mast-foot', '--from', '50', '--to', '20'];
    expect(await at(...sweep)).toMatch(/: --to: A sweep must end beyond where it starts/);
    const joint = mast.joints[0]!;
    const bare = file('bare.json', { ...mast, joints: [{ ...joint, loads: [] }] });
    // Nothing is wrong with an option here: the place in the project is named.
    expect(await at('sweep', bare, '--joint', 'mast-foot')).toMatch(
      /bare\.json: joints\.0\.loads: /,
    );
  });

  it('lists the edge moment where there is one', async () => {
    const metal = mast.adherends.find(({ kind }) => kind === 'isotropic')!;
    const { id, name, overlap, adhesive } = mast.joints[0]!;
    const flat = {
      id,
      name,
      overlap,
      adhesive,
      type: 'flat-single',
      width: 25,
      strip: { adherend: metal.id, thickness: 2 },
      plate: { adherend: metal.id, atRoot: 2, atMouth: 2 },
      bond: { gap: 0.2, tolerance: 0 },
      loads: [{ case: 'wind-hot', force: 1000 }],
    };
    const path = file('flat.json', { ...mast, joints: [flat] });
    const { err } = await lapwright(['explain', path, '--joint', id, '--mode', 'creep']);
    expect(err).toContain('edge-moment');
  });
});
