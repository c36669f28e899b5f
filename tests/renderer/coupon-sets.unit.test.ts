/** What is sent about sets of coupons, and what makes them be asked for again. */
import { describe, expect, it } from 'vitest';
import { keysOf, setsAtFault, withSets } from '../../src/renderer/state/coupon-sets.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { someLives, withLives } from './support/lives.ts';
import { makeProject } from './support/project.ts';

const project = withLives(someLives(), []);
const [first, second] = project.coupons!.life!;

describe('a document about lives', () => {
  const sent = withSets(project, 'life', [second!.id]);
  it('has these sets and their specimens alone, and is a project', () => {
    expect(sent.coupons).toEqual({
      specimens: project.coupons!.specimens,
      sets: [],
      life: [second],
    });
    expect(sent.joints).toEqual([]);
    expect(readProject(sent).ok).toBe(true);
    expect(withSets(project, 'sets', [second!.id]).coupons).toEqual({ specimens: [], sets: [] });
  });

  it('tells which set an error is about', () => {
    expect(setsAtFault(sent, 'life', 'coupons.life.0.results.3.cycles')).toEqual([second!.id]);
    expect(setsAtFault(sent, 'life', 'coupons.specimens.0.shape.tube')).toEqual([second!.id]);
    expect(setsAtFault(sent, 'life', 'coupons.sets.0.gap')).toBeNull();
    expect(setsAtFault(sent, 'life', 'adhesives.0.states')).toBeNull();
  });
});

describe('the figures of a set of lives', () => {
  const key = (one: typeof project): string | undefined => keysOf(one, 1).life.get(first!.id);
  const withFirst = (change: object): typeof project =>
    makeProject({
      coupons: { ...project.coupons!, life: [{ ...first!, ...change }, second!] },
    });
  it('hang on its results, ratio and adhesive', () => {
    expect(key(withFirst({ ratio: 0.5 }))).not.toBe(key(project));
    expect(key(withFirst({ results: first!.results.slice(1) }))).not.toBe(key(project));
    const [adhesive] = project.adhesives;
    const hotter = { ...project, adhesives: [{ ...adhesive!, stressFreeTemperature: 80 }] };
    expect(key(hotter)).not.toBe(key(project));
    expect(keysOf(project, 2).life.get(first!.id)).not.toBe(key(project));
  });

  it('hang neither on its day and note, nor on another set, nor on the S-N line', () => {
    expect(key(withFirst({ tested: '2026-03-01', note: 'warm' }))).toBe(key(project));
    const alone = makeProject({ coupons: { ...project.coupons!, life: [first!] } });
    expect(key(alone)).toBe(key(project));
    const source = { kind: 'typical' as const, text: '' };
    const [adhesive] = project.adhesives;
    const fatigue = { coefficient: 1, exponent: 0.1, source };
    expect(key({ ...project, adhesives: [{ ...adhesive!, fatigue }] })).toBe(key(project));
  });
});
