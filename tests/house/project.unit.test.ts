/** What the whole project promises about its own files. */
import { describe, expect, it } from 'vitest';
import { allFiles, read, trackedFiles } from './sources.ts';

const files = allFiles();

describe('the top of the project', () => {
  it('holds only what belongs there', () => {
    const plain = [...new Set(trackedFiles().map((file) => file.split('/')[0]!))]
      .filter((name) => !name.startsWith('.'))
      .sort();
    const belongs = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'docs',
      'electron.vite.config.ts',
      'package-lock.json',
      'package.json',
      'reference',
      'src',
      'tests',
      'tsconfig.json',
    ];
    expect(plain.filter((name) => !belongs.includes(name))).toEqual([]);
  });

  it('pins every package, and names no registry', () => {
    const { dependencies, devDependencies } = JSON.parse(read('package.json'));
    const ranges = Object.entries<string>({ ...dependencies, ...devDependencies }).filter(
      ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
    );
    expect(ranges).toEqual([]);
    expect(read('package-lock.json')).not.toContain('"resolved"');
  });
});

describe('the files', () => {
  const isText = (file: string): boolean =>
    /\.(ts|tsx|mjs|cjs|js|json|md|css|html|svg|py|txt|yml|yaml)$/.test(file) ||
    /^\.[^/]+(\/[^/.]+)?$/.test(file);
  const texts = files.filter((file) => isText(file) && file !== 'package-lock.json');

  // Written in parts, so that this file does not name what it looks for.
  const home = ['home', 'Users', 'root', 'work', 'tmp', 'var/folders'].join('|');
  const machinePath = new RegExp(`(^|[\\s'"\`(=])/(${home})/[\\w.-]`, 'm');
  const userFolder = /[A-Z]:\\+Users\\/i;

  it('are looked at', () => {
    expect(texts.length).toBeGreaterThan(100);
    expect(machinePath.test(`read ${'/tm'}p/x`)).toBe(true);
    expect(machinePath.test(`cd ${'/roo'}t/project`)).toBe(true);
    expect(userFolder.test(`C:${'\\Use'}rs\\someone`)).toBe(true);
    expect(machinePath.test('import x from "../../tmp/x"')).toBe(false);
  });

  it('name no place on a machine', () => {
    const wrong = texts.filter((file) => {
      const text = read(file);
      return machinePath.test(text) || userFolder.test(text);
    });
    expect(wrong).toEqual([]);
  });
});
