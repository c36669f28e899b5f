import { describe, expect, it } from 'vitest';
import {
  folderOf,
  inFolder,
  lastPart,
  nameTrouble,
  shortFolder,
  whenText,
} from '../../src/renderer/project-file/file-words.ts';

it('times are as short as their day allows', () => {
  const now = new Date(2026, 2, 9, 18, 0);
  expect(whenText(new Date(2026, 2, 9, 4, 7).toISOString(), now)).toBe('04:07');
  expect(whenText(new Date(2026, 0, 31, 14, 32).toISOString(), now)).toBe('31 Jan, 14:32');
  expect(whenText(new Date(2024, 11, 2, 14, 32).toISOString(), now)).toBe('2 Dec 2024');
  expect(whenText('', now)).toBe('');
});

it('times that are still to come, by a clock that was set back, are said with their day', () => {
  const now = new Date(2026, 2, 9, 18, 0);
  expect(whenText(new Date(2026, 2, 9, 23, 7).toISOString(), now)).toBe('23:07');
  expect(whenText(new Date(2026, 2, 10, 4, 7).toISOString(), now)).toBe('10 Mar, 04:07');
  expect(whenText(new Date(2031, 0, 2, 4, 7).toISOString(), now)).toBe('2 Jan 2031');
});

describe('paths', () => {
  it('are taken apart and put together as their system writes them', () => {
    expect(lastPart('/disk/mira/a.json')).toBe('a.json');
    expect(lastPart('D:\\Data\\mira\\a.json')).toBe('a.json');
    expect(folderOf('/disk/mira/a.json')).toBe('/disk/mira');
    expect(folderOf('D:\\Data\\mira\\a.json')).toBe('D:\\Data\\mira');
    expect(inFolder('D:\\Data', 'a')).toBe('D:\\Data\\a');
    expect(inFolder('D:\\', 'a')).toBe('D:\\a');
    expect(inFolder('/', 'a')).toBe('/a');
    expect(inFolder('/disk', 'a')).toBe('/disk/a');
  });

  it('are told by their end', () => {
    expect(shortFolder('/disk/mira/frames')).toBe('…/mira/frames');
    expect(shortFolder('/disk/mira')).toBe('/disk/mira');
    expect(shortFolder('D:\\Data\\mira\\frames')).toBe('…\\mira\\frames');
  });
});

it('names that no file can have are told', () => {
  expect(nameTrouble('mine')).toBeNull();
  expect(nameTrouble('mine.lapwright')).toBeNull();
  expect(nameTrouble('curlew 2.lapwright.json')).toBeNull();
  for (const typed of ['', '  ', 'a/b', 'a\\b', 'a:b', '.mine', 'mine.', 'a\nb']) {
    expect(nameTrouble(typed), typed).not.toBeNull();
  }
});
