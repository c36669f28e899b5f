/** What is said of a wall of plies: held and free constants, scaled plies, faces of tube and strip. */
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/shared/project.ts';
import type {
  JointReport,
  LaminateReport,
  Margin,
  Opened,
  Working,
} from '../../src/shared/reports.ts';
import { expectClose } from '../support/close.ts';
import { value } from './asking.ts';

/** The demonstration, its strip and the tube of its boom tip made of this stack, in walls of this size. */
async function laidUp(stack: string, wall: number): Promise<Project> {
  const document = structuredClone((await value<Opened>('project.demo', {})).document);
  const strip = document.adherends.find(({ id }) => id === 'carbon-strip')!;
  if (strip.kind !== 'laminate') throw new Error('Curlew has changed.');
  strip.stack = stack;
  for (const joint of document.joints) {
    if (joint.id === 'boom-tip' && joint.type === 'sleeve-single') {
      Object.assign(joint.tube, { adherend: 'carbon-strip', wall });
    }
    if (joint.type === 'flat-double') joint.strip.thickness = wall;
  }
  return document;
}

const report = async (stack: string, wall: number | undefined, flat = false) =>
  value<LaminateReport>('laminate.describe', {
    document: await laidUp(stack, wall ?? 2),
    adherendId: 'carbon-strip',
    ...(wall === undefined ? {} : { wall }),
    flat,
  });

const analyse = async (jointId: string, stack: string, wall: number): Promise<JointReport> =>
  value<JointReport>('joint.analyse', { document: await laidUp(stack, wall), jointId, focus: {} });

const flagOf = ({ flags }: JointReport, code: string): string | undefined =>
  flags.find((flag) => flag.code === code)?.message;

describe('a stack that couples stretching and bending', () => {
  it('tells the free constants beside those held', async () => {
    const { plane, free, curvatureHeld, notes } = await report('[0/45]', undefined);
    expect(curvatureHeld).toBe(true);
    // 71.9 and 35 GPa, as a reader worked them out from the inverse of the whole ABD matrix.
    expectClose(plane.axialModulus, 71_900, { absolute: 50 }, 'Ex held');
    expectClose(free.axialModulus!, 35_000, { absolute: 500 }, 'Ex free');
    expect(notes.map(({ message }) => message).join('\n')).toMatch(
      /hold the curvature suppressed \(membrane constants, from A\)/,
    );
  });

  it('tells none where the stack is symmetric', async () => {
    const { free, curvatureHeld, notes } = await report('[0/±45/90]s', undefined);
    expect({ free, curvatureHeld, notes }).toEqual({ free: {}, curvatureHeld: false, notes: [] });
  });

  it('is flagged on the joint with both figures', async () => {
    const tube = flagOf(await analyse('boom-tip', '[0/90]4', 1.5), 'stack-unsymmetric')!;
    expect(tube).toMatch(/hold the curvature suppressed \(membrane constants, from A\)/);
    expect(tube).toMatch(/Ex \d+\.\d GPa against \d+\.\d GPa free/);
    expect(tube).toContain('Eθ');
    const strip = flagOf(await analyse('tail-strut', '[0/90]4', 1.5), 'stack-unsymmetric')!;
    expect(strip).toContain('Ey');
    expect(strip).not.toContain('θ');
  });

  it('is not flagged so where it is only unbalanced', async () => {
    const joint = await analyse('boom-tip', '[0_3/30]s', 1.5);
    expect(flagOf(joint, 'stack-unbalanced')).toBeDefined();
    expect(joint.flags.map(({ message }) => message).join()).not.toMatch(/suppressed/);
  });
});

describe('the faces of a strip', () => {
  it('are the lower and the upper one in every sentence', async () => {
    const strip = await analyse('tail-strut', '[0/90]8', 3);
    const remark = ({ margins }: JointReport): string =>
      margins.find(({ mode }: Margin) => mode === 'first-ply')!.remark;
    expect(remark(strip)).toMatch(/^ply \d+ from the lower face, /);
    expect(flagOf(strip, 'stack-unsymmetric')).toContain('ply 1 from the lower face is 0°');
    expect(JSON.stringify(strip)).not.toMatch(/inside|outside [^a-z]|tube end/);
    const { notes } = await report('[0/90]8', 3, true);
    expect(notes[0]?.message).toContain('ply 1 from the upper face 90°');
  });

  it('are below and above the bond in its working', async () => {
    const document = await laidUp('[0/90]8', 3);
    const explain = (jointId: string) =>
      value<Working>('joint.explain', { document, jointId, subject: 'adhesive-peel', focus: {} });
    const strip = JSON.stringify(await explain('tail-strut'));
    expect(strip).toContain('of the wall below the bond');
    expect(strip).not.toMatch(/side the bond/);
    expect(JSON.stringify(await explain('boom-tip'))).toContain('of the wall inside the bond');
  });

  it('are inside and outside in a tube', async () => {
    const tube = await analyse('boom-tip', '[0/90]4', 1.5);
    expect(tube.margins.find(({ mode }) => mode === 'first-ply')!.remark).toMatch(
      /^ply \d+ from the inside, /,
    );
    expect(flagOf(tube, 'stack-unsymmetric')).toContain('ply 1 from the outside 90°');
    const { notes } = await report('[0/90]4', 1.5);
    expect(notes[0]?.message).toContain('ply 1 from the inside is 0°');
  });
});

describe('plies scaled to another wall', () => {
  // Eight plies of 0.1875 mm make 1.5 mm.
  it.each([
    [1.5, undefined],
    [1.51, undefined],
    [1.4, /8 plies of 0\.1875 mm make 1\.5 mm, its wall is 1\.4 mm: they are scaled to it\.$/],
    [1.64, /8 plies of 0\.1875 mm make 1\.5 mm, its wall is 1\.64 mm: they are scaled to it\.$/],
    [1.3, /8 plies of 0\.1875 mm make 1\.5 mm, its wall is 1\.3 mm: .*far from what is laid up/],
    [2, /8 plies of 0\.1875 mm make 1\.5 mm, its wall is 2 mm: .*far from what is laid up/],
  ])('a wall of %s mm', async (wall, said) => {
    const flag = flagOf(await analyse('boom-tip', '[0/±45/90]s', wall), 'stack-scaled');
    if (said === undefined) expect(flag).toBeUndefined();
    else expect(flag).toMatch(said);
    const { notes } = await report('[0/±45/90]s', wall);
    expect(notes.length).toBe(wall === 1.5 ? 0 : 1);
  });
});
