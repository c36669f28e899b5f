/** Joints with one size changed, and joints in a frame size. */
import { describe, expect, it } from 'vitest';
import { atSize, sizeId } from '../../src/shared/frame-sizes.ts';
import { jointSchema } from '../../src/shared/project.ts';
import { tidy, varied, variedValue, withMouth, withValue } from '../../src/shared/vary-joint.ts';
import { makeProject } from '../renderer/support/project.ts';

const { joints } = makeProject();
const of = (type: string) => structuredClone(joints.find((joint) => joint.type === type)!);

describe('a varied joint', () => {
  it.each(joints.flatMap((joint) => varied.map((vary) => ({ joint, vary, name: joint.name }))))(
    '$name, $vary: holds the value, and is itself again with its own',
    ({ joint, vary }) => {
      const own = variedValue(joint, vary);
      const changed = withValue(joint, vary, tidy(own * 1.5));
      expect(variedValue(changed, vary)).toBeCloseTo(own * 1.5, 9);
      expect(jointSchema.safeParse(changed).success).toBe(true);
      expect(withValue(changed, vary, own)).toEqual(withValue(joint, vary, own));
      expect(withValue(joint, vary, own).loads).toEqual(joint.loads);
    },
  );

  it('keeps the taper of each wall, and the ratio of two walls', () => {
    const joint = of('sleeve-double');
    if (joint.type !== 'sleeve-double') throw new Error('double');
    const tapered = {
      ...joint,
      spigot: { ...joint.spigot, atRoot: 1.2, atMouth: 0.6 },
      socket: { ...joint.socket, atRoot: 1.8, atMouth: 1.8 },
    };
    const changed = withValue(tapered, 'sleeve-wall', 1.4);
    expect(changed).toMatchObject({
      spigot: { atRoot: 1.4, atMouth: 0.7 },
      socket: { atRoot: 2.1, atMouth: 2.1 },
    });
    expect(withMouth(tapered, 0.5)).toMatchObject({
      spigot: { atRoot: 1.2, atMouth: 0.3 },
      socket: { atRoot: 1.8, atMouth: 0.9 },
    });
  });

  it('keeps the outside diameter of a tube in a socket, the bore of one over a spigot', () => {
    const joint = of('sleeve-single');
    if (joint.type !== 'sleeve-single') throw new Error('single');
    const { outsideDiameter, wall } = joint.tube;
    const socket = withValue({ ...joint, side: 'socket' }, 'tube-wall', wall + 0.5);
    const spigot = withValue({ ...joint, side: 'spigot' }, 'tube-wall', wall + 0.5);
    expect(socket).toMatchObject({ tube: { outsideDiameter, wall: wall + 0.5 } });
    expect(spigot).toMatchObject({
      tube: { outsideDiameter: outsideDiameter + 1, wall: wall + 0.5 },
    });
  });

  it('gives both bonds the gap, and leaves the tolerances', () => {
    const joint = of('sleeve-double');
    const changed = withValue(joint, 'gap', 0.35);
    if (joint.type !== 'sleeve-double') throw new Error('double');
    expect(changed).toMatchObject({
      innerBond: { gap: 0.35, tolerance: joint.innerBond.tolerance },
      outerBond: { gap: 0.35, tolerance: joint.outerBond.tolerance },
    });
  });
});

describe('a frame size', () => {
  const joint = of('sleeve-single');
  if (joint.type !== 'sleeve-single') throw new Error('single');

  it('that differs in nothing is the joint itself, under another name', () => {
    const { id, name, ...one } = atSize(joint, { id: 'm', name: 'Medium' });
    const { id: _id, name: _name, sizes: _sizes, ...own } = joint;
    expect(one).toEqual(own);
    expect([id, name]).toEqual([`${joint.id}-m`, `${joint.name}, Medium`]);
  });

  it('takes its own sizes, and multiplies walls and loads', () => {
    const size = {
      id: 'l',
      name: 'L',
      outsideDiameter: 44,
      tubeWall: 2.2,
      wallFactor: 1.5,
      loadFactor: 2,
    };
    const large = atSize(joint, size);
    expect(large).toMatchObject({
      tube: { adherend: joint.tube.adherend, outsideDiameter: 44, wall: 2.2 },
      sleeve: {
        atRoot: tidy(joint.sleeve.atRoot * 1.5),
        atMouth: tidy(joint.sleeve.atMouth * 1.5),
      },
    });
    expect(large.loads.map(({ force }) => force)).toEqual(
      joint.loads.map(({ force }) => tidy(force * 2)),
    );
    expect(jointSchema.safeParse(large).success).toBe(true);
  });

  it('with loads of its own takes those, times its factor', () => {
    const loads = [{ case: 'gust', force: 1, moment: 2, torque: 3, shear: 4 }];
    expect(atSize(joint, { id: 'l', name: 'L', loads }).loads).toEqual(loads);
    expect(atSize(joint, { id: 'l', name: 'L', loadFactor: 9, loads }).loads).toEqual([
      { case: 'gust', force: 9, moment: 18, torque: 27, shear: 36 },
    ]);
  });

  it('of a flat joint differs in width and thickness', () => {
    const strip = of('flat-single');
    const wide = atSize(strip, { id: 'w', name: 'W', width: 60, thickness: 5, loadFactor: 0.5 });
    expect(wide).toMatchObject({ width: 60, strip: { thickness: 5 } });
    expect(wide.loads[0]!.force).toBe(tidy(strip.loads[0]!.force * 0.5));
    expect(jointSchema.safeParse(wide).success).toBe(true);
  });

  it('has an id that a project takes, however long the names are', () => {
    const long = { ...joint, id: 'a'.repeat(60) };
    expect(sizeId(long, { id: 'b'.repeat(60), name: 'B' })).toHaveLength(64);
  });
});
