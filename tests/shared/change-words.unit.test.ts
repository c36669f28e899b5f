/** Changes of the document in words. */
import { describe, expect, it } from 'vitest';
import { changeWords } from '../../src/shared/change-words.ts';
import { presets } from '../../src/shared/display-units.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';
import { curlew } from '../main/asking.ts';

const document = await curlew();
const leg = document.joints.findIndex(({ id }) => id === 'landing-leg');
const words = (path: (string | number)[], before: unknown, after: unknown): string =>
  changeWords(document, path, before, after);

describe('a change in words', () => {
  it.each<[string, (string | number)[], unknown, unknown]>([
    ['overlap 14.0 → 30.0 mm, Landing leg', ['joints', leg, 'overlap'], 14, 30],
    [
      'axial force −1.5 → −2.0 kN, Landing leg, Gust, cold soak',
      ['joints', leg, 'loads', 0, 'force'],
      -1500,
      -2000,
    ],
    ['gap 0.20 → 0.25 mm, Landing leg', ['joints', leg, 'bond', 'gap'], 0.2, 0.25],
    [
      'kind “typical” → “tested”, Toughened epoxy paste',
      ['adhesives', 0, 'source', 'kind'],
      'typical',
      'tested',
    ],
    [
      'load ratio not set → −1, Toughened epoxy paste',
      ['adhesives', 0, 'fatigue', 'ratio'],
      undefined,
      -1,
    ],
    [
      'load ratio 0.1 → not set, Toughened epoxy paste',
      ['adhesives', 0, 'fatigue', 'ratio'],
      0.1,
      undefined,
    ],
    ['conditions: added “Hot”', ['conditions'], [], [{ name: 'Hot' }]],
    [
      'conditions: removed “Hot”',
      ['conditions'],
      [{ name: 'Hot' }, { name: 'Wet' }],
      [{ name: 'Wet' }],
    ],
    [
      'S-N line added, Toughened epoxy paste',
      ['adhesives', 0, 'fatigue'],
      undefined,
      { exponent: 1 },
    ],
    [
      'fracture energies removed, Toughened epoxy paste',
      ['adhesives', 0, 'fracture'],
      { modeI: 1 },
      undefined,
    ],
    ['joint: “Landing leg”', ['joints', leg], { name: 'Landing leg' }, { name: 'Landing leg' }],
    [
      'judged in every condition not set → yes',
      ['loadCases', 99, 'everyCondition'],
      undefined,
      true,
    ],
    ['tube serial nothing → “T-1”', ['gapChecks', 0, 'tubeSerial'], '', 'T-1'],
  ])('%s', (said, path, before, after) => {
    expect(words(path, before, after)).toBe(said);
  });

  it('tells figures apart that would read the same', () => {
    const back = showUnitsOf(() => presets.US);
    try {
      const path = ['joints', leg, 'bond', 'tolerance'];
      expect(words(path, 0.05, 0.050001)).toBe('gap tolerance 1.9685 → 1.96854 mil, Landing leg');
      expect(words(path, 0.05, 0.05 + 1e-14)).toMatch(/ 1\.9685039\d+ → 1\.9685039\d+ mil/);
    } finally {
      back();
    }
  });

  it('keeps a long text short', () => {
    expect(words(['note'], '', 'x'.repeat(400)).length).toBeLessThan(70);
  });
});
