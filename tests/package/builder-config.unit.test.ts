/** What the builder is told: by its own schema, and what each system needs beyond that. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { root } from '../../src/launch/root.mjs';
import builderConfig, { configFor } from '../../src/package/builder-config.mjs';
import { afterPack } from '../../src/package/burn-fuses.mjs';
import { builderFuses } from '../../src/package/fuses.mjs';
import { BUILDER } from '../../src/package/package.mjs';
import { withSuffix } from '../../src/shared/project-text.ts';

const at = (...place: string[]): string => join(root, ...place);
const schemaFile = at('tests', 'package', `electron-builder-${BUILDER}.schema.json`);
const schema = z.fromJSONSchema(JSON.parse(readFileSync(schemaFile, 'utf8')));
const bare = configFor({});
const signed = configFor({ CSC_LINK: '/there/certificate.p12' });

describe('the configuration', () => {
  it.each([
    ['as it is read here', builderConfig],
    ['without a certificate', bare],
    ['with one', signed],
  ])("is one by the builder's own schema, %s", (_name, config) => {
    expect(schema.safeParse(config).error).toBeUndefined();
  });

  it('is held against a schema that tells mistakes', () => {
    const { linux, deb, appImage, mac } = bare;
    for (const wrong of [
      { asarr: true },
      { linux: { ...linux, target: [5] } },
      { linux: { ...linux, homepage: 'https://lapwright.invalid' } },
      { deb: { ...deb, executableArgs: '%f' } },
      { appImage: { ...appImage, exec: [] } },
      { mac: { ...mac, hardened: true } },
      { electronFuses: { ...builderFuses, wasmTrapHandlers: true } },
    ]) {
      expect(schema.safeParse({ ...bare, ...wrong }).success, JSON.stringify(wrong)).toBe(false);
    }
  });

  it('names only files that are here', () => {
    const { extraResources, linux, win, mac, nsis } = bare;
    const named = [
      ...extraResources.map(({ from }) => from),
      linux.icon,
      win.icon,
      mac.icon,
      mac.entitlements,
      mac.entitlementsInherit,
      nsis.license,
    ];
    expect(named.filter((file) => !existsSync(at(file)))).toEqual([]);
  });

  it('sets the fuses before the builder signs the program', () => {
    expect(bare.afterPack).toBe(afterPack);
    expect(bare.electronFuses).toBe(builderFuses);
  });

  it('claims what the program saves, and on Linux what it saved before', () => {
    const kinds = bare.fileAssociations.map(({ ext }) => ext);
    expect(kinds.map((kind) => `x.${kind}`)).toEqual([withSuffix('x')]);
    // On the other systems the last suffix alone counts: that would be all JSON.
    expect(kinds.filter((kind) => kind.includes('.'))).toEqual([]);
    expect(bare.linux.fileAssociations.map(({ ext }) => `x.${ext}`)).toEqual([
      withSuffix('x.json'),
    ]);
    expect(bare.win).not.toHaveProperty('fileAssociations');
    expect(bare.mac).not.toHaveProperty('fileAssociations');
  });
});

describe('on Linux', () => {
  it('names whom a deb wants to know, which may be another', () => {
    const { homepage, author } = bare.extraMetadata;
    expect(new URL(homepage).hostname).toBe('lapwright.invalid');
    expect(author.email).toMatch(/^\S+@lapwright\.invalid$/);
    expect(bare.linux.maintainer).toBe(`${author.name} <${author.email}>`);
    const other = configFor({
      LAPWRIGHT_HOMEPAGE: 'https://example.org/lapwright',
      LAPWRIGHT_ADDRESS: 'someone@example.org',
    });
    expect(other.extraMetadata).toMatchObject({
      homepage: 'https://example.org/lapwright',
      author: { email: 'someone@example.org' },
    });
    expect(other.linux.maintainer).toBe('Lapwright <someone@example.org>');
  });

  it('stands in a menu that there is', () => {
    // Of the desktop menu specification: the main categories that a program may be in.
    const main = ['AudioVideo', 'Development', 'Education', 'Game', 'Graphics', 'Network'];
    main.push('Office', 'Science', 'Settings', 'System', 'Utility');
    const [first, ...others] = bare.linux.category.split(';');
    expect(main).toContain(first);
    expect(others).toEqual(['Engineering']);
  });

  it('has one name for program, desktop entry and window', () => {
    const { executableName, syncDesktopName } = bare.linux;
    expect(executableName).toBe('lapwright');
    expect(syncDesktopName).toBe(true);
    expect(bare.extraMetadata.desktopName).toBe(`${executableName}.desktop`);
  });

  it('is handed a path, once, and keeps its sandbox', () => {
    expect(bare.deb.executableArgs).toEqual(['%f']);
    // The builder puts a code of its own behind these: a second one would be none by the standard.
    expect(bare.appImage.executableArgs).toEqual([]);
    expect(bare.linux).not.toHaveProperty('executableArgs');
  });
});

describe('on macOS', () => {
  it('is signed for this machine alone where there is no certificate', () => {
    for (const config of [bare, configFor({ CSC_LINK: '', CSC_NAME: '' })]) {
      expect(config.mac).toMatchObject({ identity: '-', hardenedRuntime: false });
    }
  });

  it('is hardened where there is one, whichever way it is told', () => {
    for (const config of [signed, configFor({ CSC_NAME: 'Somebody' })]) {
      expect(config.mac.hardenedRuntime).toBe(true);
      expect(config.mac).not.toHaveProperty('identity');
    }
  });

  it('may compile while it runs, and no more', () => {
    const text = readFileSync(at(bare.mac.entitlements), 'utf8');
    const keys = [...text.matchAll(/<key>([^<]+)<\/key>\s*<(\w+)\/>/g)].map(
      ([, key, value]) => `${key} ${value}`,
    );
    expect(keys).toEqual(['com.apple.security.cs.allow-jit true']);
  });
});
