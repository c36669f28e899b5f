/** What comes from others: the same bytes everywhere, no script of theirs runs, each with a licence and a reason. */
import { describe, expect, it } from 'vitest';
import { allowed } from '../../src/package/notices.mjs';
import { allFiles, importsOf, read } from './sources.ts';

interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly hasInstallScript?: boolean;
  readonly link?: boolean;
  readonly dev?: boolean;
  readonly optional?: boolean;
}
const lock: {
  readonly lockfileVersion: number;
  readonly packages: Readonly<Record<string, Locked>>;
} = JSON.parse(read('package-lock.json'));
const locked = Object.entries(lock.packages).filter(([place]) => place !== '');
const manifest: {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
} = JSON.parse(read('package.json'));
const direct = { ...manifest.dependencies, ...manifest.devDependencies };

const placesWhere = (test: (one: Locked) => boolean): string[] =>
  locked.filter(([, one]) => test(one)).map(([place]) => place);

describe('the lock file', () => {
  it('has a digest for every package, and takes none from elsewhere', () => {
    expect(locked.length).toBeGreaterThan(100);
    expect(placesWhere(({ integrity }) => !/^sha512-[\w+/]{86}==$/.test(integrity ?? ''))).toEqual(
      [],
    );
    expect(placesWhere(({ link }) => link === true)).toEqual([]);
  });

  it('agrees with the packages that are asked for', () => {
    const top = lock.packages[''] as typeof manifest;
    expect(top.dependencies).toEqual(manifest.dependencies);
    expect(top.devDependencies).toEqual(manifest.devDependencies);
    for (const [name, version] of Object.entries(direct)) {
      expect([name, lock.packages[`node_modules/${name}`]?.version]).toEqual([name, version]);
    }
  });

  it('names no package that would run a script when it is installed, and npm is told to run none', () => {
    expect(placesWhere(({ hasInstallScript }) => hasInstallScript === true)).toEqual([]);
    expect(read('.npmrc').split(/\r?\n/)).toContain('ignore-scripts=true');
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    // With that set npm runs what is asked for, and nothing before or after it.
    const around = Object.keys(scripts).filter((name) => /^(pre|post|install|prepare)/.test(name));
    expect(around).toEqual([]);
  });
});

/** For what is only built and tested with: it travels with nothing. */
const forTools = [...allowed, 'MIT-0', 'MPL-2.0', 'BlueOak-1.0.0', 'CC-BY-4.0'];

describe('the licences', () => {
  const choices = (expression = ''): string[] =>
    expression
      .replace(/[()]/g, '')
      .split(' OR ')
      .map((one) => one.trim());
  const isIn = (list: readonly string[], { license }: Locked): boolean =>
    choices(license).some((one) => list.includes(one));

  it('of all that is shipped let it travel inside an MIT program', () => {
    const shipped = locked.filter(([, one]) => !one.dev && !one.optional);
    expect(shipped.length).toBeGreaterThan(5);
    expect(shipped.filter(([, one]) => !isIn(allowed, one)).map(([place]) => place)).toEqual([]);
  });

  it('of all that is built and tested with are known ones', () => {
    expect(placesWhere((one) => !isIn(forTools, one))).toEqual([]);
  });
});

describe('every package that is asked for', () => {
  it('has its reason in the list of dependencies, and nothing else stands there', () => {
    const [, section = ''] = read('DEVELOPERS.md').split('\n## Dependencies\n');
    const rows = [...section.matchAll(/^\| (`[^|]+) \| ([^|]+) \|$/gm)];
    const listed = rows.flatMap(([, names]) =>
      [...names!.matchAll(/`([^`]+)`/g)].map(([, name]) => name!),
    );
    expect(listed.sort()).toEqual(Object.keys(direct).sort());
    for (const [, names, reason] of rows)
      expect([names, reason!.trim().length > 8]).toEqual([names, true]);
  });

  /** Used by name in a command or by another tool, not by an import. */
  const byName: Readonly<Record<string, string>> = {
    '@biomejs/biome': 'package.json',
    typescript: 'package.json',
    'electron-vite': 'src/launch/build.mjs',
    '@types/node': 'tsconfig.json',
    jsdom: 'tests/vitest.config.ts',
    '@sparticuz/chromium': 'tests/e2e/support/unpack-chromium.mjs',
    '@types/papaparse': 'src/shared/csv.ts',
    '@fontsource-variable/source-sans-3': 'src/renderer/styles/fonts.css',
  };
  const commands: Readonly<Record<string, RegExp>> = {
    '@biomejs/biome': /"biome /,
    typescript: /"tsc /,
    'electron-vite': /'electron-vite'/,
    '@types/node': /"node"/,
    jsdom: /environment: 'jsdom'/,
    '@sparticuz/chromium': /@sparticuz/,
    '@types/papaparse': /'papaparse'/,
    '@fontsource-variable/source-sans-3': /@fontsource-variable\/source-sans-3/,
  };

  it('is used', () => {
    const code = allFiles().filter((file) => /\.(ts|tsx|mjs)$/.test(file));
    const imported = new Set(
      code.flatMap(importsOf).map((name) =>
        name
          .split('/')
          .slice(0, name.startsWith('@') ? 2 : 1)
          .join('/'),
      ),
    );
    const unused = Object.keys(direct).filter((name) => {
      const file = byName[name];
      return file === undefined ? !imported.has(name) : !commands[name]!.test(read(file));
    });
    expect(unused).toEqual([]);
  });

  it('that is imported is asked for', () => {
    const code = allFiles().filter((file) => /^(src|tests)\/.*\.(ts|tsx|mjs)$/.test(file));
    const ownModules = /^(\.|node:|virtual:|\/)/;
    const strangers = code.flatMap((file) =>
      [...read(file).matchAll(/^(?:import|export)[^'"\n]* from '([^']+)'/gm)]
        .map(([, name]) => name!)
        .filter((name) => !ownModules.test(name))
        .map((name) =>
          name
            .split('/')
            .slice(0, name.startsWith('@') ? 2 : 1)
            .join('/'),
        )
        .filter((name) => !(name in direct))
        .map((name) => `${file}: ${name}`),
    );
    expect(strangers).toEqual([]);
  });
});
