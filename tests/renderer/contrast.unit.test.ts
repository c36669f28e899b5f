import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const sheet = (name: string): string =>
  readFileSync(new URL(`../../src/renderer/styles/${name}.css`, import.meta.url), 'utf8');
const pairsOf = (text: string) =>
  new Map(
    [...text.matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\);/g)].map(
      ([, name = '', light = '', dark = '']) => [name, { light, dark }],
    ),
  );
const css = sheet('tokens');
const pairs = pairsOf(css);
/** Where the system asks for more: those colours in the place of the usual ones. */
const more = new Map([...pairs, ...pairsOf(sheet('access'))]);

/** Relative luminance and contrast ratio, WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

const grounds = ['paper', 'sheet', 'wash'];
const text = ['ink', 'soft', 'shear', 'shear-second', 'peel', 'fails', 'low', 'holds'];

describe.each(['light', 'dark'] as const)('%s', (scheme) => {
  const colour = (name: string): string => {
    const pair = pairs.get(name);
    if (!pair) throw new Error(`There is no token --${name}`);
    return pair[scheme];
  };

  it.each(text.flatMap((name) => grounds.map((ground) => [name, ground] as const)))(
    'text in %s on %s',
    (name, ground) => {
      expect(contrast(colour(name), colour(ground))).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each([
    ['on-accent', 'shear'],
    ['fails', 'fails-wash'],
    ['ink', 'fails-wash'],
    ['soft', 'zone'],
    ['soft', 'band'],
    ['ink', 'band'],
    ['shear', 'band'],
    ['shear', 'zone'],
    ['paper', 'ink'],
  ])('text in %s on %s', (name, ground) => {
    expect(contrast(colour(name), colour(ground))).toBeGreaterThanOrEqual(4.5);
  });

  it.each([
    ['line', 'paper'],
    ['line', 'sheet'],
    ['metal', 'sheet'],
    ['ink', 'bond'],
  ])('what bounds or shapes: %s on %s', (name, ground) => {
    expect(contrast(colour(name), colour(ground))).toBeGreaterThanOrEqual(3);
  });
});

describe.each(['light', 'dark'] as const)('%s, with more contrast', (scheme) => {
  const colour = (name: string): string => more.get(name)![scheme];

  it.each(text.flatMap((name) => [...grounds, 'band'].map((ground) => [name, ground] as const)))(
    'text in %s on %s',
    (name, ground) => {
      expect(contrast(colour(name), colour(ground))).toBeGreaterThanOrEqual(7);
    },
  );

  it.each([
    ['line', 'paper', 7],
    ['rule', 'paper', 3],
    ['on-accent', 'shear', 7],
    ['soft', 'zone', 7],
  ] as const)('%s on %s', (name, ground, least) => {
    expect(contrast(colour(name), colour(ground))).toBeGreaterThanOrEqual(least);
  });
});

it('gives every token a colour of the system where that sets them', () => {
  const forced = sheet('access').split('@media (forced-colors: active)')[1]!;
  const system = /--([a-z-]+):\s*(?:Canvas|Link|Highlight|GrayText|color-mix)/g;
  const names = new Set([...forced.matchAll(system)].map(([, name]) => name));
  expect([...pairs.keys()].filter((name) => !names.has(name))).toEqual([]);
});

it('reads every colour of the sheet', () => {
  const declared = [...css.matchAll(/light-dark\(/g)].length;
  expect(pairs.size).toBe(declared);
  expect(declared).toBeGreaterThan(15);
});
