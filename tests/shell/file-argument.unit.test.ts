import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fileArgument, fileOfSecondStart } from '../../src/main/shell/file-argument.ts';

describe('the file that a start names', () => {
  it('follows its switch, wherever that stands', () => {
    expect(fileArgument(['electron', '.', '--file=/a folder/b=c.json'])).toBe('/a folder/b=c.json');
    expect(fileArgument(['electron', '--file=x.json', '--inspect', '.'])).toBe('x.json');
  });

  it('may stand alone, as the system names it for a file of the program', () => {
    for (const file of ['/a folder/x.lapwright', '/a/x.lapwright.json', '/x.lapwright.previous']) {
      expect(fileArgument(['Lapwright', file])).toBe(file);
    }
    expect(fileArgument(['Lapwright', '--flag', 'C:\\a\\X.LAPWRIGHT'])).toBe('C:\\a\\X.LAPWRIGHT');
    expect(fileArgument(['Lapwright', '--flag', 'C:\\a\\X.LAPWRIGHT.JSON'])).toBe(
      'C:\\a\\X.LAPWRIGHT.JSON',
    );
    expect(fileArgument(['electron', '.', 'x.json'])).toBe('x.json');
    expect(fileArgument(['electron', '.', 'x.json', '--file=y.json'])).toBe('y.json');
  });

  it('may be told by its address, where it is one of this machine', () => {
    const path = process.platform === 'win32' ? 'C:\\a b\\x.lapwright' : '/a b/ö/x.lapwright';
    expect(fileArgument(['Lapwright', pathToFileURL(path).href])).toBe(path);
    expect(fileArgument(['Lapwright', pathToFileURL(path).href.replace('file:', 'FILE:')])).toBe(
      path,
    );
    for (const address of [
      'file:///a%2Fb.lapwright',
      'file:///a/x.txt',
      'file:',
      'https://lapwright.invalid/x.txt',
    ]) {
      expect(fileArgument(['Lapwright', address]), address).toBeNull();
    }
    expect(fileArgument(['Lapwright', 'file:///a%2Fb.lapwright', 'y.lapwright'])).toBe(
      'y.lapwright',
    );
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
