import { mkdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changed, file, folder, lapwright, linesOf, mastProject } from './lapwright.ts';

/** One line that names the file, exit code 2, nothing else; the same as JSON where that is asked for. */
async function refused(path: string, ...parts: readonly (string | RegExp)[]): Promise<void> {
  const { code, out, err } = await lapwright(['check', path]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(linesOf(err)).toHaveLength(1);
  expect(err).toMatch(/^lapwright: \S+: /);
  expect(err).not.toMatch(/\n\s+at /);
  for (const part of parts) expect(err).toMatch(part);
  const json = await lapwright(['check', path, '--json']);
  expect({ code: json.code, err: json.err }).toEqual({ code: 2, err: '' });
  const { error } = JSON.parse(json.out);
  expect(Object.keys(JSON.parse(json.out))).toEqual(['error']);
  expect(err).toBe(`lapwright: ${error.message}\n`);
}

const text = JSON.stringify(mastProject(), null, 2);

describe('a file that is no project is refused in one line', () => {
  it('missing', () => refused(join(folder(), 'gone.json'), /gone\.json: there is no such file/));

  it('a folder', () => refused(folder(), /it is a folder/));

  it('in a folder that is a file', () =>
    refused(join(file('a.json', ''), 'b.json'), /b\.json: (part of its path|there is no such)/));

  it('empty', () => refused(file('empty.json', ''), /empty\.json: The file is empty/));
  it('blank', () => refused(file('blank.json', '\uFEFF \n\n'), /The file is empty/));

  it('binary', () =>
    refused(file('photo.json', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16])), /not UTF-8 text/));

  it('text of another encoding', () =>
    refused(file('wide.json', Buffer.from(text, 'utf16le')), /wide\.json: /));

  it('not JSON, with line and column', () => {
    const broken = text.replace('"overlap": 50,', '"overlap": 50;');
    const line = broken.split('\n').findIndex((one) => one.includes(';')) + 1;
    return refused(file('broken.json', broken), new RegExp(`line ${line}, column \\d+`));
  });

  it('cut off', () => refused(file('cut.json', text.slice(0, 500)), /cut\.json: .*not JSON/));

  it('JSON of another format', () =>
    refused(file('other.json', { format: 'drawing', version: 1 }), /not a Lapwright project/));
  it('JSON that is no object', () => refused(file('list.json', '[1, 2]'), /JSON object/));

  it('of a newer version', () =>
    refused(
      file('newer.json', { ...mastProject(), version: 2 }),
      /newer\.json: version: .*version 2, from a newer Lapwright; .*up to 1/,
    ));

  it('with a value out of range, naming the place', () =>
    refused(file('far.json', changed({ overlap: 900 })), /far\.json: joints\.0\.overlap: .*900/));

  it('100 MB large, without reading it', async () => {
    const path = file('large.json', '');
    truncateSync(path, 100 * 1024 * 1024);
    // Once before, so that both are measured warm.
    await refused(path, /large\.json: 100 MB is too large/);
    const start = performance.now();
    await lapwright(['check', path]);
    const refusing = performance.now() - start;
    new TextDecoder().decode(readFileSync(path));
    const reading = performance.now() - start - refusing;
    expect(refusing).toBeLessThan(reading / 2);
  });

  it('with a name that would move the cursor', async () => {
    const path = join(folder(), 'a');
    mkdirSync(path);
    const bad = 'x'.repeat(4);
    writeFileSync(join(path, bad), `{"format":"lapwright-project","\\u001b[2J\\n":1}`);
    const { err } = await lapwright(['check', join(path, bad)]);
    expect(err).not.toContain('\u001B');
    expect(linesOf(err)).toHaveLength(1);
  });
});
