/** The guide: its links and anchors lead somewhere, its pictures are there, its examples are true. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { renderPage } from '../../src/documents/guide-plugin.ts';
import { guidePages } from '../../src/documents/pages.ts';
import { render, slug } from '../../src/documents/render.ts';
import { cautionShort, cautions } from '../../src/shared/cautions.ts';
import { lapwright } from '../cli/lapwright.ts';

vi.setConfig({ testTimeout: 600_000 });

const docs = resolve(import.meta.dirname, '..', '..', 'docs');
const read = (file: string): string =>
  readFileSync(join(docs, file), 'utf8').replaceAll('\r\n', '\n');
const pages = guidePages.map(({ id, file }) => ({ id, file, ...renderPage(docs, file) }));
const own = pages.filter(({ file }) => file.startsWith('guide/'));

const place = mkdtempSync(join(tmpdir(), 'lapwright-'));
afterAll(() => rmSync(place, { recursive: true }));

describe('the guide', () => {
  it('has every page of its folder, and each once', () => {
    const files = readdirSync(join(docs, 'guide')).map((name) => `guide/${name}`);
    expect(own.map(({ file }) => file).toSorted()).toEqual(files.toSorted());
    expect(new Set(pages.map(({ id }) => id)).size).toBe(pages.length);
  });

  it.each(guidePages)('links only to what is there: $file', ({ file }) => {
    const links = [...read(file).matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target!);
    if (file.startsWith('guide/')) {
      expect(links.filter((target) => /^[a-z]+:/i.test(target))).toEqual([]);
    }
    for (const target of links.filter((one) => !/^[a-z]+:/i.test(one))) {
      const [path = '', anchor] = target.split('#');
      const led = path === '' ? join(docs, file) : join(dirname(join(docs, file)), path);
      expect(existsSync(led), `${file}: ${target}`).toBe(true);
      if (anchor === undefined) continue;
      const page = pages.find((one) => one.file === relative(docs, led).replaceAll('\\', '/'));
      expect(
        page?.sections.map((section) => section.anchor),
        `${file}: ${target}`,
      ).toContain(anchor);
    }
  });

  it.each(pages)(
    'leads inside the program to pages and headings that it has: $file',
    ({ html }) => {
      const led = [...html.matchAll(/<a [^>]*data-page="([^"]*)" data-anchor="([^"]*)"/g)];
      expect(led).toHaveLength([...html.matchAll(/<a /g)].length);
      for (const [, id, anchor] of led) {
        const page = pages.find((one) => one.id === id);
        expect(page).toBeDefined();
        if (anchor !== '') expect(page!.html).toContain(`id="guide-${anchor}"`);
      }
    },
  );

  it.each(pages)('carries nothing that the policy of the page forbids: $file', ({ html }) => {
    expect(html).not.toMatch(/\sstyle=|<script|<style|\son\w+=|<!--|https?:\/\/[^<\s]*"/i);
  });

  it('has all of its pictures, with words for those who do not see them', () => {
    const shown = own.flatMap(({ html }) => [...html.matchAll(/<img [^>]*>/g)].map(([tag]) => tag));
    expect(shown.length).toBeGreaterThan(15);
    for (const tag of shown) {
      expect(existsSync(join(docs, /picture:([^"]+)/.exec(tag)?.[1] ?? '?'))).toBe(true);
      expect(/alt="([^"]*)"/.exec(tag)?.[1]?.length ?? 0).toBeGreaterThan(15);
      expect(tag).toMatch(/width="\d{3,4}" height="\d{3,4}"/);
    }
    expect(own.filter(({ html }) => html.includes('not-carried')).map(({ id }) => id)).toEqual([]);
    const wanted = own.flatMap(({ file }) => [...read(file).matchAll(/!\[/g)]);
    const days = shown.filter((tag) => !tag.includes('is-night'));
    expect(days).toHaveLength(wanted.length);
  });

  it('states the caution, and nowhere calls a typical value or a mean an allowable', () => {
    const all = own.map(({ sections }) => sections.map(({ text }) => text).join(' ')).join(' ');
    expect(all).toContain(cautionShort);
    expect(cautions.length).toBeGreaterThan(0);
    expect(all).toContain('a calibration, no allowable');
    expect(all).not.toMatch(/typical (values? )?allowable/i);
  });

  const consoles = own.flatMap(({ file }) =>
    [...read(file).matchAll(/```console\n\$ npm run -s lapwright -- (.*)\n([\s\S]*?)```/g)].map(
      ([, argv, output]) => [argv!, output!] as const,
    ),
  );
  it('shows output', () => expect(consoles.length).toBeGreaterThan(0));
  // When one fails because figures or words have changed: paste what the command prints now.
  it.each(consoles)('shows what is printed by %s', async (argv, output) => {
    writeFileSync(join(place, 'curlew.lapwright'), (await lapwright(['demo'])).out);
    const { out, err } = await lapwright(argv.split(' '), { cwd: place });
    expect(err).toBe('');
    expect(output).toBe(out);
  });

  it('names only commands that there are', async () => {
    const { out } = await lapwright(['help']);
    const rows = read('guide/terminal.md').match(/^\| `.*/gm) ?? [];
    const named = rows.flatMap((row) =>
      [...row.split('|')[1]!.matchAll(/`(\w+)`/g)].map(([, command]) => command!),
    );
    expect(named.length).toBeGreaterThan(10);
    for (const command of named) expect(out).toMatch(new RegExp(`^  ${command} `, 'm'));
  });
});

describe('a document as the program shows it', () => {
  const shown = (text: string): string => render('guide/start.md', text, () => null).html;

  it('makes anchors as forges do, a second of the same name another', () => {
    expect(slug('11. Flat single lap: edge moment')).toBe('11-flat-single-lap-edge-moment');
    const html = shown('# A\n\n## Same one\n\n## Same one\n');
    expect(html).toContain('id="guide-same-one"');
    expect(html).toContain('id="guide-same-one-1"');
  });

  it('leaves no way out: addresses are words, files that are not carried as well', () => {
    const html = shown('# A\n\n[out](https://example.org/a) [file](../project.schema.json)\n');
    expect(html).toContain('out (https://example.org/a)');
    expect(html).toContain('<span class="not-carried">file</span>');
    expect(html).not.toContain('<a ');
  });

  it('takes over no HTML, but leaves remarks out', () => {
    expect(shown('# A\n\n<!-- check: files -->\n\nText\n')).not.toContain('check');
    expect(() => shown('# A\n\n<img src=x onerror=alert(1)>\n')).toThrow(/HTML/);
  });

  it('says in words what a picture shows that is not made yet', () => {
    expect(shown('# A\n\n![What it shows](../none-light.png)\n')).toContain('What it shows');
  });
});
