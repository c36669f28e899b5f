/** The licences that the page shows are those of the files, and none is lost on the way. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { licenceText, noticesOf } from '../../src/documents/legal-plugin.ts';
import { root } from '../../src/launch/root.mjs';
import { noticesOf as packagesOf } from '../../src/package/notices.mjs';

const read = (...place: string[]): string =>
  readFileSync(join(root, ...place), 'utf8').replaceAll('\r\n', '\n');
const tidy = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

describe('the licences that the page opens', () => {
  it('are that of the program, whole', () => {
    const { parts } = licenceText(read('LICENSE'));
    const said = parts.map(({ heading, text }) => `${heading} ${text}`).join(' ');
    expect(tidy(said)).toBe(tidy(read('LICENSE')));
  });

  it('are those of every package that is built in, each with its text', () => {
    const { title, before, parts } = noticesOf(read('docs', 'third-party-notices.md'));
    expect(title).toBe('Third-party notices');
    expect(before).toContain('each under its own licence');
    const packages = packagesOf(root);
    expect(packages.length).toBeGreaterThan(4);
    for (const { name, version, licence, text } of packages) {
      const own = parts.find(({ heading }) => heading.includes(`${name} ${version} (${licence})`));
      expect(tidy(own?.text ?? ''), name).toBe(tidy(text));
    }
  });

  it('refuse what would not be seen', () => {
    expect(() => noticesOf('# Notices\n\n## a\n\n````text\nA\n````\n\nLost words.\n')).toThrow(
      'Lost words.',
    );
  });
});
