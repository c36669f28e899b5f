import { describe, expect, it } from 'vitest';
import { findText, type Searched } from '../../src/renderer/guide/find-text.ts';

const section = (heading: string, text: string): Searched => ({
  page: 'size',
  pageTitle: 'Size',
  anchor: heading,
  heading,
  text,
});
const all = [
  section('Springs', 'The stiffness of the joint, for a frame model.'),
  section('Find', 'Looks for the shortest overlap. The stiffness plays no part.'),
  section('Stiffness', 'What bends.'),
];

describe('the search', () => {
  it('finds every word in whatever order, headings first', () => {
    const heads = (text: string): string[] => findText(all, text).map(({ heading }) => heading);
    expect(heads('stiffness')).toEqual(['Stiffness', 'Springs', 'Find']);
    expect(heads('frame JOINT')).toEqual(['Springs']);
    expect(heads('stiffness overlap')).toEqual(['Find']);
    expect(heads('nowhere')).toEqual([]);
    expect(heads(' ')).toEqual([]);
  });

  it('shows the word among its neighbours', () => {
    const [found] = findText(
      [section('A', `${'many words '.repeat(20)}plateau ${'and more '.repeat(20)}`)],
      'plateau',
    );
    expect(found!.word).toBe('plateau');
    expect(found!.before).toMatch(/^… (many |words )+/);
    expect(found!.after).toMatch(/ …$/);
  });
});
