/** Nothing is kept that nobody uses: what a file of the program gives out is used there or in another of its files. */
import { expect, it } from 'vitest';
import { allFiles, read } from './sources.ts';

const code = allFiles().filter((file) => /\.(ts|tsx|mjs)$/.test(file));
const words = new Map(code.map((file) => [file, new Set(read(file).match(/[A-Za-z_$][\w$]*/g))]));

const DECLARED =
  /^export (?:default )?(?:declare |abstract |async )*(?:const|let|function\*?|class|interface|type|enum) ([\w$]+)/gm;
const LISTED = /^export (?:type )?\{([^}]*)\}/gm;

/** Names that a file gives out, as they are called outside. */
function exportsOf(text: string): string[] {
  const listed = [...text.matchAll(LISTED)].flatMap(([, list]) =>
    list!.split(',').map(
      (one) =>
        one
          .trim()
          .replace(/^type /, '')
          .split(' as ')
          .at(-1)!,
    ),
  );
  return [...[...text.matchAll(DECLARED)].map(([, name]) => name!), ...listed].filter(Boolean);
}

it('reads what a file gives out', () => {
  expect(
    exportsOf(
      'export const a = 1;\nexport async function b() {}\nexport type { C, D as E } from "x";\nconst f = 1;\nexport interface G {}',
    ),
  ).toEqual(['a', 'b', 'G', 'C', 'E']);
});

/** Used by tests alone, and why they are kept. */
const forTests: Readonly<Record<string, string>> = {
  'src/launch/build.mjs: buildIsCurrent': 'asks what a build would ask itself, without building',
  'src/model/coupons/life-line.ts: stressAtLife': 'the inverse of the line, which leads back',
  'src/model/coupons/noncentral-t.ts: noncentralTChance':
    'what the tolerance factor is solved from',
  'src/model/coupons/student.ts: fisherTail': 'held against printed tables',
  'src/model/coupons/tolerance-factor.ts: QUANTILE': 'held against the reference',
  'src/model/flat-lap/adherend.ts: homogeneousAdherend': 'a strip of one material, of the books',
  'src/model/flat-lap/goland-reissner.ts: transverseFactor': 'a figure of the original paper',
  'src/model/flat-lap/goland-reissner.ts: slopeTransverseForce': 'a figure of the original paper',
  'src/model/flat-lap/goland-reissner.ts: balancedTransverseForce':
    'a figure of the original paper',
  'src/model/laminate/stack.ts: inverseAbd': 'held against the matrices of books',
  'src/model/laminate/stack.ts: respondWithoutCurvature': 'held against the matrices of books',
  'src/package/icon-files.mjs: icoOf': 'makes the icons anew and compares them',
  'src/package/icon-files.mjs: icnsOf': 'makes the icons anew and compares them',
  'src/renderer/actions/chord.ts: chordAria': 'reads a chord as a screen reader would',
  'src/shared/contract.ts: requestNames': 'goes through every request that there is',
  'src/shared/read-project.ts: readProjectText': 'reads a project in one line',
};

it('gives out nothing that nobody uses, and what only tests use is listed', () => {
  const own = code.filter((file) => file.startsWith('src/') && !file.endsWith('.d.ts'));
  expect(own.length).toBeGreaterThan(400);
  const program = code.filter((file) => !file.startsWith('tests/'));
  const dead = own.flatMap((file) => {
    const text = read(file);
    return exportsOf(text)
      .filter((name) => text.split(new RegExp(`(?<![\\w$])${name}(?![\\w$])`)).length === 2)
      .filter((name) => !program.some((other) => other !== file && words.get(other)!.has(name)))
      .map((name) => `${file}: ${name}`);
  });
  expect(dead.sort()).toEqual(Object.keys(forTests).sort());
});

it('keeps for the tests only what they use', () => {
  const tests = code.filter((file) => file.startsWith('tests/') && !file.includes('dead-code'));
  const unused = Object.keys(forTests).filter((one) => {
    const name = one.split(': ').at(-1)!;
    return !tests.some((file) => words.get(file)!.has(name));
  });
  expect(unused).toEqual([]);
});

it('has no file that nothing leads to', () => {
  const named = new Set(
    code.flatMap((file) =>
      [...read(file).matchAll(/([\w.-]+)\.(?:ts|tsx|mjs|css)\b/g)].map(([whole]) => whole),
    ),
  );
  const scripts = read('package.json') + read('electron.vite.config.ts');
  const lost = allFiles()
    .filter((file) => /^src\/.*\.(ts|tsx|mjs|css)$/.test(file) && !file.endsWith('.d.ts'))
    .filter((file) => {
      const name = file.split('/').at(-1)!;
      return (
        !named.has(name) &&
        !scripts.includes(name) &&
        !read('src/renderer/index.html').includes(name)
      );
    });
  expect(lost).toEqual([]);
});
