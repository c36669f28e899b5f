import { describe, expect, it } from 'vitest';
import { fileArgument, fileOfSecondStart } from '../../src/main/shell/file-argument.ts';

describe('the file that a start names', () => {
  it('follows its switch, wherever that stands', () => {
    expect(fileArgument(['electron', '.', '--file=/a folder/b=c.json'])).toBe('/a folder/b=c.json');
    expect(fileArgument(['electron', '--file=x.json', '--inspect', '.'])).toBe('x.json');
  });

  it('is none without it', () => {
    expect(fileArgument(['electron', '.', 'x.json'])).toBeNull();
    expect(fileArgument(['electron', '.', '--file='])).toBeNull();
  });

  it('comes from a second start only as text', () => {
    expect(fileOfSecondStart({ file: 'x.json' })).toBe('x.json');
    for (const data of [null, undefined, 'x', {}, { file: null }, { file: 7 }, { file: '' }]) {
      expect(fileOfSecondStart(data)).toBeNull();
    }
  });
});
