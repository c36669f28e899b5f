/**
 * npm run bench: how long the calculation takes, on this machine. Prints a table, writes all figures as JSON.
 *
 *   npm run bench -- [--samples 100000] [--large] [--browser] [--drags 10000] [--json FILE] [--page]
 *
 * `--large` adds 500 joints under 20 load cases on all cores, which takes minutes; `--browser` the built program in
 * Chromium (build it before), `--drags` how often the overlap is moved there for what memory does; `--page` writes
 * docs/performance.md.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, totalmem } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { browserLines } from './browser-page.mjs';
import { performancePage } from './page.mjs';
import { bytes, percentile, time } from './units.mjs';

const root = join(import.meta.dirname, '..', '..');
const cache = join(root, 'node_modules', '.cache', 'lapwright', 'bench');
const { values } = parseArgs({
  options: {
    samples: { type: 'string', default: '100000' },
    large: { type: 'boolean', default: false },
    browser: { type: 'boolean', default: false },
    drags: { type: 'string', default: '10000' },
    page: { type: 'boolean', default: false },
    json: { type: 'string', default: join(cache, 'bench.json') },
  },
});

/** As the program is built, so that what is measured is what runs. */
async function bundle(name) {
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    // Fixtures are found from where the file that reads them stood.
    define: {
      'import.meta.dirname': JSON.stringify(join(root, 'tests', 'support')),
      'import.meta.url': JSON.stringify(
        pathToFileURL(join(root, 'reference', 'big-project', 'x')).href,
      ),
    },
    build: {
      ssr: join(import.meta.dirname, `${name}.ts`),
      target: 'node20.19',
      outDir: cache,
      emptyOutDir: false,
      minify: true,
      rolldownOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
    ssr: { noExternal: true },
  });
  return join(cache, `${name}.mjs`);
}

/** One line of JSON from a program; null where it is not here. */
function jsonFrom(program, args, input) {
  const { status, stdout, error } = spawnSync(program, args, {
    cwd: root,
    encoding: 'utf8',
    input,
    maxBuffer: 1 << 28,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  if (error || status !== 0) return null;
  return JSON.parse(stdout);
}

const print = (...cells) => process.stdout.write(`${cells.join('')}\n`);

const machine = {
  processor: cpus()[0]?.model.trim() ?? 'not known',
  threads: availableParallelism(),
  memory: `${Math.round(totalmem() / 2 ** 30)} GB`,
  system: `${process.platform} ${process.arch}`,
  node: process.version,
};
print(Object.values(machine).join(', '));

const core = jsonFrom(process.execPath, [await bundle('core'), `--samples=${values.samples}`]);
if (!core) {
  process.stderr.write('The benchmark of the core failed.\n');
  process.exit(1);
}
const widest = Math.max(...core.tasks.map(({ name }) => name.length));
print('\n', 'task'.padEnd(widest), '    median       p95   runs   allocates');
for (const { name, runs, median, p95, allocated } of core.tasks) {
  print(
    name.padEnd(widest),
    time(median).padStart(10),
    percentile(runs, p95).padStart(10),
    String(runs).padStart(7),
    bytes(allocated).padStart(12),
  );
}
print('\ntime grows with');
for (const { name, points, exponent } of core.growths) {
  const all = points.map(([size, median]) => `${size}: ${time(median)}`).join(', ');
  print(`${name} to the power ${exponent.toFixed(2)}  (${all})`);
}

const medianOf = (part) => core.tasks.find(({ name }) => name.includes(part))?.median;
const scipy = jsonFrom('python3', ['reference/shear_lag_time.py'], JSON.stringify(core.oneBond));
const ours = medianOf('shear lag of one bond');
if (scipy) {
  print(
    `\nscipy ${scipy.scipy}, boundary-value solver, the same bond: ${time(scipy.median)}, ` +
      `${(scipy.median / ours).toFixed(0)} times as long; shear differs by ${scipy.difference.toExponential(1)} of yield at most`,
  );
} else print('\nscipy is not here: no comparison with its boundary-value solver.');
print(`over 400 exponentials alone: ${(ours / medianOf('exponentials')).toFixed(1)} times as long`);

const calculix = jsonFrom('python3', ['reference/finite_element_time.py']);
const byShells = medianOf('of the finite elements');
if (calculix) {
  print(
    `CalculiX ${calculix.calculix}, ${calculix.elements} elements, the same joint: ${time(calculix.median)}, ` +
      `${(calculix.median / byShells).toFixed(0)} times as long`,
  );
} else print('CalculiX is not here: no comparison with finite elements.');

let large = null;
if (values.large) {
  large = jsonFrom(process.execPath, [await bundle('large')]);
  if (large)
    print(
      `\n${large.states} states (${large.joints} joints, ${large.cases} load cases, all corners that there are) on ${large.threads} threads: ${time(large.time)}`,
    );
}

let inBrowser = null;
if (values.browser) {
  inBrowser = jsonFrom(process.execPath, ['tests/bench/browser.mjs', '--drags', values.drags]);
  if (inBrowser) print(`\n${browserLines(inBrowser).join('\n')}`);
}

const file = resolve(values.json);
mkdirSync(dirname(file), { recursive: true });
const figures = { machine, ...core, scipy, calculix, large, browser: inBrowser };
writeFileSync(file, `${JSON.stringify(figures, null, 1)}\n`);
if (values.page) writeFileSync(join(root, 'docs', 'performance.md'), performancePage(figures));
print(`\nAll figures: ${file}`);
