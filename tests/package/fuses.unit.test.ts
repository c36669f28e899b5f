/** Electron's fuses: all are decided about, and all are set in the file that holds them. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  afterPack,
  burnFuses,
  fuseFile,
  fusesIn,
  SENTINEL,
} from '../../src/package/burn-fuses.mjs';
import { builderFuses, fuses } from '../../src/package/fuses.mjs';
import { BUILDER } from '../../src/package/package.mjs';
import electronFuses from './electron-fuses-2.1.3.json' with { type: 'json' };

const schema = JSON.parse(
  readFileSync(join(import.meta.dirname, `electron-builder-${BUILDER}.schema.json`), 'utf8'),
);
const WANTED = '010011001';
const wire = (letters: string, version = 1): Buffer =>
  Buffer.concat([
    Buffer.from(SENTINEL),
    Buffer.from([version, letters.length]),
    Buffer.from(letters),
  ]);
const program = (...wires: Buffer[]): Buffer =>
  Buffer.concat([Buffer.from('before'), ...wires.flatMap((one) => [one, Buffer.from('00111')])]);

describe('the list', () => {
  it("has each that Electron's own tool names, in its order", () => {
    const small = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
    expect(electronFuses).toHaveLength(9);
    expect(Object.keys(fuses)).toEqual(electronFuses.map(small));
  });

  it('hands the builder all that it knows', () => {
    const known = Object.keys(schema.definitions.FuseOptionsV1.properties).sort();
    expect(Object.keys(builderFuses).sort()).toEqual(known);
    const { resetAdHocDarwinSignature: _, ...handed } = builderFuses;
    expect(fuses).toMatchObject(handed);
  });

  it('makes the program this application alone', () => {
    expect(fuses).toMatchObject({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      grantFileProtocolExtraPrivileges: false,
    });
  });
});

describe('the program', () => {
  let place: string;
  beforeEach(() => {
    place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
  });
  afterEach(() => rmSync(place, { recursive: true }));

  it('has them set where they are, once for each processor, and nothing else', () => {
    const file = join(place, 'electron');
    writeFileSync(file, program(wire('101100011'), wire('000000000')));
    expect(burnFuses(file)).toBe(9);
    expect(readFileSync(file).equals(program(wire(WANTED), wire(WANTED)))).toBe(true);
  });

  it('keeps one that is no more, and may have fewer than are known', () => {
    const [found] = fusesIn(program(wire('1r1100r1')));
    expect(found!.letters.toString()).toBe('0r0011r0');
  });

  it('is not packed with a fuse that nobody decided about, nor without any', () => {
    expect(() => fusesIn(program(wire('1011000111')))).toThrow('10 fuses, of which 9');
    expect(() => fusesIn(program(wire('101100011', 2)))).toThrow('version 2');
    expect(() => fusesIn(program())).toThrow('no fuses');
  });

  it.each([
    ['linux', 'lapwright'],
    ['win32', 'Lapwright.exe'],
    ['darwin', 'Lapwright.app/Contents/Frameworks/Electron Framework.framework/Electron Framework'],
  ])('is found on %s', (electronPlatformName, name) => {
    const packed = {
      appOutDir: place,
      electronPlatformName,
      packager: { executableName: 'lapwright', appInfo: { productFilename: 'Lapwright' } },
    };
    const file = join(place, name);
    expect(fuseFile(packed)).toBe(file);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, program(wire('101100011')));
    afterPack(packed);
    expect(readFileSync(file).equals(program(wire(WANTED)))).toBe(true);
  });
});
