/** What the core says where a page shows it in its own units: no figure stays behind in others. */
import { afterEach, describe, expect, it } from 'vitest';
import { presets } from '../../src/shared/display-units.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { CompareReport, VariantReport } from '../../src/shared/reports-compare.ts';
import { type Said, saidText, type shownRest } from '../../src/shared/said.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';
import { ask, curlew } from './asking.ts';

let back = (): void => {};
afterEach(() => back());

const SI = /\d (mm|µm|MPa|GPa|N|kN|°C|g|ml|µm\/m\/K)(?![\w²³])/;

/** Everything that is said in an answer, wherever it stands. */
function saidIn(value: unknown): Said[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = value as { message?: unknown; restsOn?: unknown; change?: unknown };
  const said: Said[] = [];
  if (typeof own.message === 'string') said.push(value as Said);
  if (typeof own.restsOn === 'string') {
    const { restsOn, restsOnFigures } = value as Parameters<typeof shownRest>[0];
    said.push({ message: restsOn, figures: restsOnFigures });
  }
  if (typeof own.change === 'string') {
    const { change, changeFigures } = value as { change: string; changeFigures?: Said['figures'] };
    said.push({ message: change, figures: changeFigures });
  }
  return [...said, ...Object.values(value).flatMap(saidIn)];
}

/** What is said to a question: whole in SI, and without any SI unit where the page is in others. */
async function saidTo(name: string, input: object): Promise<string[]> {
  const reply = (await ask(name, input)) as Reply<unknown>;
  const all = saidIn(reply.ok ? reply.value : [reply.error]);
  for (const said of all) expect(saidText(said)).toBe(said.message);
  const figures = all.filter(({ message }) => SI.test(message));
  back = showUnitsOf(() => presets.US);
  for (const said of figures) expect(saidText(said)).not.toMatch(SI);
  back();
  return figures.map(({ message }) => message);
}

/** Curlew as it should not be: too hot, gaps too thick, a stack that is not its wall, a tall print. */
async function troubled(): Promise<Project> {
  const project = await curlew();
  for (const loadCase of project.loadCases) loadCase.temperature = 95;
  for (const joint of project.joints) {
    if (joint.type === 'sleeve-single') joint.bond.gap = 0.7;
    if (joint.type === 'sleeve-double') joint.overlap = 400;
  }
  for (const adherend of project.adherends) {
    if (adherend.kind === 'laminate') adherend.stack = '[0/45/90]';
  }
  return project;
}

describe('what is said of the joints', () => {
  it('has its figures told apart from its words', async () => {
    const document = await troubled();
    const flags = await saidTo('project.check', { document });
    const has = (words: RegExp): void =>
      expect(
        flags.some((text) => words.test(text)),
        String(words),
      ).toBe(true);
    has(/95 °C lies beyond the adhesive's/);
    has(/is 0\.7 mm thick; shear properties are usually measured between/);
    has(/they are scaled to it/);
    has(/hold the curvature suppressed .*: Ex [\d.]+ GPa against/);
    const leg = { document, jointId: 'landing-leg', focus: {} };
    const margins = await saidTo('joint.analyse', leg);
    expect(margins.some((text) => text.includes("lies within the adhesive's table"))).toBe(true);
    expect(margins.some((text) => text.includes('the gap (0.'))).toBe(true);
    const root = await saidTo('joint.springs', { document, jointId: 'boom-root' });
    expect(root.some((text) => text.includes('lies beyond the adhesive'))).toBe(true);
    expect(root.some((text) => text.includes('400 mm tall'))).toBe(true);
    await saidTo('joint.matters', { document: await curlew(), jointId: 'landing-leg' });
  });

  it('of a joint that cannot be, too', async () => {
    const document = await curlew();
    const leg = document.joints.find(({ id }) => id === 'landing-leg')!;
    if (leg.type !== 'sleeve-single') throw new Error('Curlew has changed.');
    const refused = (change: object): Promise<string[]> => {
      const joints = [{ ...leg, ...change }];
      return saidTo('joint.analyse', {
        document: { ...document, joints },
        jointId: leg.id,
        focus: {},
      });
    };
    const { bond, tube, sleeve } = leg;
    expect(await refused({ bond: { ...bond, tolerance: bond.gap + 0.1 } })).toEqual([
      expect.stringMatching(/^The gap of [\d.]+ mm closes/),
    ]);
    expect(await refused({ tube: { ...tube, wall: tube.outsideDiameter } })).toEqual([
      expect.stringMatching(/leaves no bore in a tube of/),
    ]);
    expect(await refused({ sleeve: { ...sleeve, atRoot: tube.outsideDiameter / 2 } })).toEqual([
      expect.stringMatching(/does not fit inside the tube/),
    ]);
  });
});

describe('what is said of sizes', () => {
  it('that cannot be looked for', async () => {
    const document = await curlew();
    const size = (more: object): Promise<string[]> =>
      saidTo('joint.size', { document, jointId: 'landing-leg', vary: 'overlap', ...more });
    expect(await size({ from: 10, to: 10.5 })).toEqual([
      expect.stringContaining('widen the range'),
    ]);
    expect(await size({ from: 0.5, to: 20 })).toEqual([expect.stringContaining('not at 0.5 mm')]);
    expect(await size({ from: 30, to: 20 })).toEqual([
      'The search must end above where it begins: 20 mm is not above 30 mm.',
    ]);
    expect(await size({ vary: 'gap', from: 0.3, to: 0.31, step: 0.1 })).toEqual([
      expect.stringContaining('multiples of 0.1 mm'),
    ]);
  });

  it('that would help', async () => {
    const document = await curlew();
    const said = await saidTo('joint.size', {
      document,
      jointId: 'landing-leg',
      vary: 'gap',
      target: 3,
      from: 0.2,
      to: 0.25,
    });
    expect(said).toEqual([expect.stringMatching(/^overlap 14\.0 → [\d.]+ mm$/)]);
  });
});

describe('what is said of joints side by side', () => {
  it('and of how they were made', async () => {
    const document = await curlew();
    const variant = { document, jointId: 'landing-leg', lap: 'double', equal: 'mass' };
    const changed = await saidTo('joint.variant', variant);
    expect(changed.some((text) => /weigh the same [\d.]+ g: spigot [\d.]+ mm/.test(text))).toBe(
      true,
    );
    expect(await saidTo('joint.variant', { ...variant, equal: 'margin' })).toEqual([
      expect.stringMatching(/^overlap [\d.]+ mm instead of 14\.0 mm/),
    ]);
    const made = (await ask('joint.variant', variant)) as Reply<VariantReport>;
    if (!made.ok) throw new Error(made.error.message);
    const { of, joint } = made.value;
    document.variants = [{ of, joint }];
    const columns = [{ joint: 'landing-leg' }, { variant: joint.id }];
    const said = await saidTo('project.compare', { document, columns });
    expect(said.some((text) => /peak peel falls from [\d.]+ to [\d.]+ MPa/.test(text))).toBe(true);
    const report = (await ask('project.compare', { document, columns })) as Reply<CompareReport>;
    if (!report.ok) throw new Error(report.error.message);
    back = showUnitsOf(() => presets.US);
    expect(saidText(report.value.sentences[0]!)).toMatch(
      /peak peel falls from 0\.\d+ to 0\.\d+ ksi/,
    );
  });
});
