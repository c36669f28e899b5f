import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Action } from '../../src/renderer/actions/action.ts';
import { chordAria, chordText, isPressed } from '../../src/renderer/actions/chord.ts';
import { isSlip, search, wordsOf } from '../../src/renderer/actions/match.ts';

const action = (title: string, more: Partial<Action> = {}): Action => ({
  id: title,
  title: () => title,
  group: 'joint',
  available: () => true,
  run: () => {},
  ...more,
});
const found = (actions: readonly Action[], text: string): string[] =>
  search(actions, text, 'joints').map((one) => one.title());

describe('what is found', () => {
  const all = [
    action('Motor mount to boom tip'),
    action('Boomerang tipped'),
    action('Boom tip to motor mount'),
    action('Tail lug'),
    action('Gust', { group: 'case', also: 'draw' }),
    action('Gust, torque', { group: 'setting' }),
    action('Gust, cold soak', { group: 'case', also: 'draw' }),
    action('Night', { group: 'look', also: 'dark theme' }),
  ];

  it('has every word, in whatever order, what begins so first', () => {
    expect(found(all, 'boom tip')).toEqual([
      'Boom tip to motor mount',
      'Motor mount to boom tip',
      'Boomerang tipped',
    ]);
    expect(found(all, 'TIP  boom,')).toContain('Boom tip to motor mount');
    expect(found(all, 'boom lug')).toEqual([]);
  });

  it('is told by the start of a word before its inside, and by its title before other words', () => {
    const laps = [
      action('Overlap'),
      action('Night', { also: 'lapse' }),
      action('A strip, lapped'),
      action('Lap'),
    ];
    expect(found(laps, 'lap')).toEqual(['Lap', 'A strip, lapped', 'Night', 'Overlap']);
    // One letter is inside of nearly every word.
    expect(found(laps, 'v')).toEqual([]);
  });

  it('is a load case before its fields', () => {
    expect(found(all, 'gust')).toEqual(['Gust', 'Gust, cold soak', 'Gust, torque']);
    expect(found(all, 'draw cold')).toEqual(['Gust, cold soak']);
  });

  it('is found by other words for it and by its kind, whatever marks its letters bear', () => {
    expect(found(all, 'dark')).toEqual(['Night']);
    expect(found(all, 'theme')).toEqual(['Night']);
    expect(wordsOf('Ti-6Al, Prüfstück №2')).toEqual(['ti', '6al', 'prufstuck', '2']);
  });

  it('forgives one slip in a long word, not in a short one', () => {
    for (const slip of ['mtoor', 'motr', 'motoor', 'motpr']) {
      expect(found(all, slip).toSorted()).toEqual([
        'Boom tip to motor mount',
        'Motor mount to boom tip',
      ]);
    }
    expect(found(all, 'lgu')).toEqual([]);
    expect(found(all, 'mtorx')).toEqual([]);
  });

  it('is any title by its own words in any order', () => {
    const word = fc.stringMatching(/^[a-z]{2,8}$/);
    fc.assert(
      fc.property(fc.uniqueArray(word, { minLength: 1, maxLength: 5 }), fc.nat(), (words, by) => {
        const turned = words.map((_, i) => words[(i + by) % words.length]!);
        return found([...all, action(words.join(' '))], turned.join(' ')).includes(words.join(' '));
      }),
    );
    fc.assert(fc.property(word, (one) => one.length < 4 || isSlip(one, `${one}s`)));
  });

  it('is only what can be done', () => {
    expect(found([action('Redo', { available: () => false })], 'redo')).toEqual([]);
  });

  it('is the likely of the page while nothing is typed, some of each kind', () => {
    const joints = Array.from({ length: 20 }, (_, i) =>
      action(`Joint ${i}`, { likely: ['joints'] }),
    );
    const undo = action('Undo', { group: 'change', likely: ['joints'] });
    const shown = found([...joints, action('Tip', { likely: ['size'] }), undo], ' ');
    expect(shown[0]).toBe('Undo');
    expect(shown).toContain('Joint 0');
    expect(shown).not.toContain('Tip');
    expect(shown.length).toBeLessThan(10);
  });
});

describe('a chord', () => {
  const event = (key: string, more: Partial<KeyboardEvent> = {}): KeyboardEvent =>
    ({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...more }) as never;
  const redo = { key: 'z', ctrl: true, shift: true } as const;

  it('is the very keys, with either of the two that stand for Ctrl', () => {
    expect(isPressed(redo, event('Z', { ctrlKey: true, shiftKey: true }))).toBe(true);
    expect(isPressed(redo, event('z', { metaKey: true, shiftKey: true }))).toBe(true);
    expect(isPressed(redo, event('z', { ctrlKey: true }))).toBe(false);
    expect(isPressed({ key: 'F6' }, event('F6', { shiftKey: true }))).toBe(false);
    expect(isPressed({ key: 'F1' }, event('F1', { ctrlKey: true }))).toBe(false);
  });

  it('leaves AltGr to those who write with it', () => {
    expect(isPressed(redo, event('z', { ctrlKey: true, shiftKey: true, altKey: true }))).toBe(
      false,
    );
  });

  it('takes a sign with or without the Shift that some keyboards need for it', () => {
    const slash = { key: '/', ctrl: true } as const;
    expect(isPressed(slash, event('/', { ctrlKey: true }))).toBe(true);
    expect(isPressed(slash, event('/', { ctrlKey: true, shiftKey: true }))).toBe(true);
  });

  it('is written as it is read', () => {
    expect(chordText(redo)).toBe('Ctrl+Shift+Z');
    expect(chordText({ key: 'F6', shift: true })).toBe('Shift+F6');
    expect(chordAria(redo)).toBe('Control+Shift+Z');
  });
});
