/** Places in a project file in plain words. */
import { describe, expect, it } from 'vitest';
import { inPlace, placeWords } from '../../src/shared/place-words.ts';
import { curlew } from '../main/asking.ts';

const document = await curlew();
const leg = document.joints.findIndex(({ id }) => id === 'landing-leg');

describe('a place in words', () => {
  it.each<[string, string]>([
    [`joint ${leg + 1} (Landing leg), overlap`, `joints.${leg}.overlap`],
    [`joint ${leg + 1} (Landing leg), tube, material`, `joints.${leg}.tube.adherend`],
    [
      `joint ${leg + 1} (Landing leg), load 1 (Gust, cold soak), axial force`,
      `joints.${leg}.loads.0.force`,
    ],
    ['adhesive 1 (Toughened epoxy paste), source, kind', 'adhesives.0.source.kind'],
    ['settings, target margin', 'settings.targetMargin'],
    ['settings, factors, fitting factor', 'settings.factors.fitting'],
    ['gap check 2, surface 1, reading 3, number 4', 'gapChecks.1.surfaces.0.diameters.2.3'],
    ['materials', 'adherends'],
    ['joints', 'joints'],
    ['load cases', 'loadCases'],
    ['joint 1 (Boom root), loads', 'joints.0.loads'],
    ['coupons, lives', 'coupons.life'],
    ['name', 'name'],
    ['“0”', '0'],
    ['“0”, target margin', '0.targetMargin'],
  ])('is told as %s', (words, field) => {
    expect(placeWords(document, field)).toBe(words);
  });

  it.each([null, 7, [], {}, { joints: 'none' }, { joints: [{ name: 7, case: 'x' }] }])(
    'is told of anything, also of %j',
    (other) => {
      expect(placeWords(other, 'joints.0.overlap')).toBe('joint 1, overlap');
    },
  );

  it('stands before what is wrong, which names its last part once', () => {
    const leads = `joint ${leg + 1} (Landing leg)`;
    const field = `joints.${leg}.overlap`;
    expect(inPlace(document, field, 'Overlap must be a number.')).toBe(
      `${leads}: Overlap must be a number.`,
    );
    expect(inPlace(document, field, 'Missing: this must be a number.')).toBe(
      `${leads}, overlap: Missing: this must be a number.`,
    );
    expect(inPlace(document, 'name', 'Name is too long.')).toBe('Name is too long.');
    expect(inPlace(document, '', 'The file is empty.')).toBe('The file is empty.');
  });

  it('keeps a long name short', () => {
    const named = { joints: [{ name: 'x'.repeat(100) }] };
    expect(placeWords(named, 'joints.0.overlap')).toMatch(/^joint 1 \(x{39}…\), overlap$/);
  });
});
