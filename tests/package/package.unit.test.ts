/** Packing, as far as it can be tried without Electron's program: configuration, icons, notices, refusals. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { root } from '../../src/launch/root.mjs';
import builderConfig from '../../src/package/builder-config.mjs';
import { fuses } from '../../src/package/fuses.mjs';
import { icnsOf, icoOf, sizeOfPng } from '../../src/package/icon-files.mjs';
import { allowed, NOTICES, noticesOf, noticesText } from '../../src/package/notices.mjs';
import { BUILDER, planOf } from '../../src/package/package.mjs';

const at = (...place: string[]): string => join(root, ...place);
const schemaFile = at('tests', 'package', `electron-builder-${BUILDER}.schema.json`);
const jsonSchema = JSON.parse(readFileSync(schemaFile, 'utf8'));
const schema = z.fromJSONSchema(jsonSchema);

describe('the configuration', () => {
  it("is one by the builder's own schema, which tells mistakes", () => {
    expect(schema.safeParse(builderConfig).error).toBeUndefined();
    expect(schema.safeParse({ ...builderConfig, asarr: true }).success).toBe(false);
    const { linux } = builderConfig;
    expect(schema.safeParse({ ...builderConfig, linux: { ...linux, target: [5] } }).success).toBe(
      false,
    );
  });

  it('sets every fuse that the builder knows', () => {
    const known = Object.keys(jsonSchema.definitions.FuseOptionsV1.properties).sort();
    expect(known.length).toBeGreaterThan(7);
    expect(Object.keys(fuses).sort()).toEqual(known);
    expect(builderConfig.electronFuses).toBe(fuses);
    expect(fuses.runAsNode).toBe(false);
    expect(fuses.onlyLoadAppFromAsar).toBe(true);
  });

  it('names only files that are here', () => {
    const { extraResources, linux, win, mac, nsis } = builderConfig;
    const named = [
      ...extraResources.map(({ from }) => from),
      linux.icon,
      win.icon,
      mac.icon,
      nsis.license,
    ];
    expect(named.filter((file) => !existsSync(at(file)))).toEqual([]);
  });
});

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

  it('write equal texts once', () => {
    const one = { name: 'a', version: '1.0.0', licence: 'MIT', text: 'The text.' };
    const text = noticesText([one, { ...one, name: 'b' }, { ...one, name: 'c', text: 'Other.' }]);
    expect(text).toContain('## a 1.0.0 (MIT), b 1.0.0 (MIT)');
    expect(text.split('The text.')).toHaveLength(2);
  });
});

describe('npm run package', () => {
  const here = { platform: 'linux', node: '22.12.0', electron: true } as const;
  const refusal = (argv: string[], other: object = {}): string => {
    const plan = planOf(argv, { ...here, ...other });
    return 'refusal' in plan ? plan.refusal : '';
  };

  it('packs for the system that it stands on, or another', () => {
    expect(planOf([], here)).toMatchObject({
      args: expect.arrayContaining([`electron-builder@${BUILDER}`, '--linux', 'never']),
    });
    expect(planOf(['win', '--dir'], here)).toMatchObject({
      args: expect.arrayContaining(['--win', '--dir']),
    });
  });

  it('says why it does not', () => {
    expect(refusal([], { electron: false })).toContain('--fetch');
    expect(refusal(['--fetch'], { electron: false })).toBe('');
    expect(refusal(['mac'])).toContain('only be made on macOS');
    expect(refusal([], { node: '20.20.2' })).toContain('Node 22.12');
    expect(refusal([], { node: '22.9.0' })).toContain('Node 22.12');
    expect(refusal(['solaris'])).toContain('linux, win, mac');
    expect(refusal(['--cloud'])).not.toBe('');
  });
});
