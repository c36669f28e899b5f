import { describe, expect, it } from 'vitest';
import { ownFlags, sharedFlags } from '../../src/renderer/joints/shared-flags.ts';
import { pressed, sorted } from '../../src/renderer/joints/sort.ts';
import { refuse } from '../../src/shared/reply.ts';
import { makeMargin, makeSummary } from './support/reports.ts';

const joint = (name: string, margin: number | null, change = {}) =>
  makeSummary({ id: name, name, overlap: 30 }, margin === null ? null : makeMargin(margin), change);
const refusal = refuse('bad-input', 'joints.0', 'no');
const joints = [
  joint('b2', 0.5),
  joint('b10', -0.1),
  joint('a', null),
  joint('c', null, { refused: refusal.ok ? null : refusal.error }),
  joint('d', -0.1),
];
const names = (list: { name: string }[]): string[] => list.map(({ name }) => name);

describe('the order of the joints', () => {
  it('is what needs attention first: broken, lowest, equal by name, unloaded last', () => {
    expect(names(sorted(joints, { by: 'margin', down: false }))).toEqual([
      'c',
      'b10',
      'd',
      'b2',
      'a',
    ]);
  });

  it('is by name as people count', () => {
    expect(names(sorted(joints, { by: 'name', down: false }))).toEqual([
      'a',
      'b2',
      'b10',
      'c',
      'd',
    ]);
    expect(names(sorted(joints, { by: 'name', down: true }))).toEqual(['d', 'c', 'b10', 'b2', 'a']);
  });

  it('turns round when pressed again', () => {
    const order = { by: 'margin', down: false } as const;
    expect(pressed(order, 'margin')).toEqual({ by: 'margin', down: true });
    expect(pressed({ by: 'margin', down: true }, 'name')).toEqual({ by: 'name', down: false });
  });
});

describe('flags', () => {
  const common = { code: 'no-peel', message: 'Shear only.' };
  const own = { code: 'thick-wall', message: 'Thick.' };
  it('that every joint has are said once', () => {
    const list = [joint('a', 1, { flags: [common, own] }), joint('b', 1, { flags: [common] })];
    expect(sharedFlags(list)).toEqual([common]);
    expect(ownFlags(list[0]!, [common])).toEqual([own]);
    expect(ownFlags(list[1]!, [common])).toEqual([]);
  });

  it('of a joint that could not be computed do not count against it', () => {
    const broken = joint('c', null, { refused: refusal.ok ? null : refusal.error });
    expect(sharedFlags([joint('a', 1, { flags: [common] }), broken])).toEqual([common]);
    expect(sharedFlags([broken])).toEqual([]);
  });
});
