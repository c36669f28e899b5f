/** Icons and notices that travel with the packages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { icnsOf, icoOf, sizeOfPng } from '../../src/package/icon-files.mjs';
import { allowed, NOTICES, noticesOf, noticesText } from '../../src/package/notices.mjs';

const at = (...place: string[]): string => join(root, ...place);

describe('the icons', () => {
  const folder = at('src', 'package', 'icons');
  const pngs = readdirSync(folder).filter((name) => name.endsWith('.png'));
  const byName = (name: string): Buffer => readFileSync(join(folder, name));

  it('have the sizes that their names say', () => {
    expect(pngs.length).toBeGreaterThan(7);
    for (const name of pngs) {
      const { width, height } = sizeOfPng(byName(name));
      expect(`${width}x${height}.png`).toBe(name);
    }
  });

  it('are on the window as they are on the program', () => {
    expect(readFileSync(at('src', 'main', 'shell', 'icon.png')).equals(byName('256x256.png'))).toBe(
      true,
    );
  });

  it('stand in the containers of Windows and macOS, byte for byte', () => {
    const png = (size: number): Buffer => byName(`${size}x${size}.png`);
    const ico = byName('icon.ico');
    const count = ico.readUInt16LE(4);
    const sizes = Array.from({ length: count }, (_, i) => {
      const entry = 6 + 16 * i;
      const from = ico.readUInt32LE(entry + 12);
      const picture = ico.subarray(from, from + ico.readUInt32LE(entry + 8));
      const { width } = sizeOfPng(picture);
      expect(ico.readUInt8(entry)).toBe(width % 256);
      expect(picture.equals(png(width))).toBe(true);
      return width;
    });
    expect(sizes).toEqual([16, 24, 32, 48, 64, 128, 256]);
    expect(ico.equals(icoOf(sizes.map(png)))).toBe(true);

    const icns = byName('icon.icns');
    expect(icns.toString('ascii', 0, 4)).toBe('icns');
    expect(icns.readUInt32BE(4)).toBe(icns.length);
    const widths: number[] = [];
    for (let place = 8; place < icns.length; place += icns.readUInt32BE(place + 4)) {
      widths.push(sizeOfPng(icns.subarray(place + 8)).width);
    }
    expect(widths).toEqual([16, 32, 32, 64, 128, 256, 256, 512, 512, 1024]);
    expect(() => icnsOf(new Map([[16, png(16)]]))).toThrow(RangeError);
    expect(() => icoOf([png(512)])).toThrow(RangeError);
  });
});

describe('the notices', () => {
  it('are those of the packages that are installed', () => {
    expect(readFileSync(at(NOTICES), 'utf8')).toBe(noticesText(noticesOf(root)));
  });

  it('cover what is shipped, under licences that allow it', () => {
    const notices = noticesOf(root);
    const { dependencies } = JSON.parse(readFileSync(at('package.json'), 'utf8'));
    const names = notices.map(({ name }) => name);
    expect(Object.keys(dependencies).filter((name) => !names.includes(name))).toEqual([]);
    expect(names).not.toContain('vitest');
    expect(notices.filter(({ licence }) => !allowed.includes(licence))).toEqual([]);
    expect(notices.every(({ text }) => text.length > 50)).toBe(true);
  });

  it('take along what a package says of itself beside its licence', () => {
    const beside = noticesOf(root).filter(({ name, text }) => {
      const file = at('node_modules', name, 'NOTICE');
      if (!existsSync(file)) return false;
      expect(text).toContain(readFileSync(at('node_modules', name, 'LICENSE'), 'utf8').trim());
      expect(text).toContain(readFileSync(file, 'utf8').trim());
      return true;
    });
    expect(beside.map(({ name }) => name)).toEqual(['mathjs']);
  });

  it('write equal texts once', () => {
    const one = { name: 'a', version: '1.0.0', licence: 'MIT', text: 'The text.' };
    const text = noticesText([one, { ...one, name: 'b' }, { ...one, name: 'c', text: 'Other.' }]);
    expect(text).toContain('## a 1.0.0 (MIT), b 1.0.0 (MIT)');
    expect(text.split('The text.')).toHaveLength(2);
  });
});
