import { describe, expect, it } from 'vitest';
import { fileArgument, fileOfSecondStart } from '../../src/main/shell/file-argument.ts';

describe('the file that a start names', () => {
  it('follows its switch, wherever that stands', () => {
    expect(fileArgument(['electron', '.', '--file=/a folder/b=c.json'])).toBe('/a folder/b=c.json');
    expect(fileArgument(['electron', '--file=x.json', '--inspect', '.'])).toBe('x.json');
  });

  it('may stand alone, as the system names it for a file of the program', () => {
    expect(fileArgument(['Lapwright', '/a folder/x.lapwright.json'])).toBe(
      '/a folder/x.lapwright.json',
    );
    expect(fileArgument(['Lapwright', '--flag', 'C:\\a\\X.LAPWRIGHT.JSON'])).toBe(
      'C:\\a\\X.LAPWRIGHT.JSON',
    );
    expect(fileArgument(['electron', '.', 'x.json'])).toBe('x.json');
    expect(fileArgument(['electron', '.', 'x.json', '--file=y.json'])).toBe('y.json');
  });

  it('is none without one', () => {
    expect(fileArgument(['electron', '.', '--file='])).toBeNull();
    expect(fileArgument(['/there/electron.json', '.'])).toBeNull();
    expect(
      fileArgument(['electron', '/a/folder', '--config=x.json', '--json', '-x.json']),
    ).toBeNull();
    expect(fileArgument([])).toBeNull();
  });

  it('comes from a second start only as text', () => {
    expect(fileOfSecondStart({ file: 'x.json' })).toBe('x.json');
    for (const data of [null, undefined, 'x', {}, { file: null }, { file: 7 }, { file: '' }]) {
      expect(fileOfSecondStart(data)).toBeNull();
    }
  });
});
