/**
 * node src/package/notices.mjs
 * Writes docs/third-party-notices.md: the licence of every package that is bundled into what is shipped, from the
 * lock file's production packages and what they need. Electron brings the notices of itself and of Chromium.
 */
import { readdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root as projectRoot, say } from '../launch/root.mjs';

export const NOTICES = 'docs/third-party-notices.md';
/** Licences that let their work travel inside an MIT program when their text goes with it. */
export const allowed = [
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'OFL-1.1',
  '0BSD',
];

/**
 * @typedef {object} Notice
 * @property {string} name
 * @property {string} version
 * @property {string} licence as an SPDX expression
 * @property {string} text
 */

/** A choice of licences is taken at the first that is allowed. */
const licenceOf = (/** @type {string} */ expression) =>
  expression
    .replace(/[()]/g, '')
    .split(/ OR /)
    .map((one) => one.trim())
    .find((one) => allowed.includes(one)) ?? expression;

/** Between a licence and a notice beside it. */
const LINE = '-'.repeat(72);

const textIn = (/** @type {string} */ folder, /** @type {string} */ file) =>
  readFileSync(join(folder, file), 'utf8').replace(/\r\n/g, '\n').trim();

/**
 * @param {string} root of the project, its packages installed
 * @returns {Notice[]} by name
 */
export function noticesOf(root) {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  return Object.entries(lock.packages)
    .filter(([place, entry]) => place !== '' && !entry.dev && !entry.optional && !entry.peer)
    .map(([place, entry]) => {
      const name = place.split('node_modules/').at(-1) ?? place;
      const folder = join(root, place);
      const files = readdirSync(folder).sort();
      const file = files.find((one) => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(one));
      const { author = '' } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
      const by = typeof author === 'string' ? author : `${author.name ?? ''}`;
      const licence = file
        ? textIn(folder, file)
        : `No licence text comes with the package. It names ${entry.license}${by && `, by ${by}`}.`;
      // Apache-2.0 wants what the package says of itself to go along.
      const notices = files.filter((one) => /^notice(\.(md|txt))?$/i.test(one));
      const text = [licence, ...notices.map((one) => textIn(folder, one))].join(`\n\n${LINE}\n\n`);
      return {
        name,
        version: String(entry.version),
        licence: licenceOf(String(entry.license ?? '')),
        text,
      };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/**
 * Equal texts are written once, below all packages that have them.
 * @param {readonly Notice[]} notices
 * @returns {string} Markdown
 */
export function noticesText(notices) {
  /** @type {Map<string, Notice[]>} */
  const byText = new Map();
  for (const notice of notices) {
    byText.set(notice.text, [...(byText.get(notice.text) ?? []), notice]);
  }
  const parts = [...byText].map(([text, group]) => {
    const names = group.map(({ name, version, licence }) => `${name} ${version} (${licence})`);
    return `## ${names.join(', ')}\n\n\`\`\`\`text\n${text}\n\`\`\`\`\n`;
  });
  return [
    '# Third-party notices\n',
    'Lapwright is shipped with the packages below, each under its own licence. This file is made by',
    '`node src/package/notices.mjs`. A packed desktop version also carries Electron and Chromium, whose',
    'own notices lie beside the program.\n',
    ...parts,
  ].join('\n');
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const notices = noticesOf(projectRoot);
  writeFileSync(join(projectRoot, NOTICES), noticesText(notices));
  say(`${notices.length} packages: ${NOTICES}`);
}
