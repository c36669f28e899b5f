/** Project files of older versions: each step of the way here, and what version 1 has been so far. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { projectSteps, raiseProject, type Step } from '../../src/shared/older-projects.ts';
import { PROJECT_VERSION } from '../../src/shared/project.ts';
import { openProjectText, readAnyVersion, readProject } from '../../src/shared/read-project.ts';
import { lapwright } from '../cli/lapwright.ts';

const folder = join(import.meta.dirname, 'older');
const older = readdirSync(folder);

describe('the steps from older versions', () => {
  it('are one for each version before this one, in order', () => {
    expect(projectSteps.map(({ from }) => from)).toEqual(
      Array.from({ length: PROJECT_VERSION - 1 }, (_step, index) => index + 1),
    );
  });

  it('have a file of each version to be tried on', () => {
    const versions = new Set(
      older.map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')).version),
    );
    expect([...versions].sort()).toEqual(
      Array.from({ length: PROJECT_VERSION }, (_version, index) => index + 1),
    );
  });
});

describe('a project file of the past', () => {
  it.each(older)('is read and computed as it was written: %s', async (name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const read = openProjectText(text);
    if (!read.ok) throw new Error(read.error.message);
    // The same, for these are of the present version: fields may have been added, none was renamed.
    expect(read.value).toEqual({ document: JSON.parse(text) });
    const { code, err } = await lapwright(['check', join(folder, name)]);
    expect(err).toBe('');
    expect([0, 1]).toContain(code);
  });
});

/** As if version 1 had been preceded by two others: names of old, and lengths in metres. */
const titled: Step = {
  from: -1,
  raise: ({ title, ...rest }) => ({ ...rest, name: title }),
};
const inMetres: Step = {
  from: 0,
  raise: (document) => ({
    ...document,
    joints: (document.joints as { overlap: number }[]).map((joint) => ({
      ...joint,
      overlap: joint.overlap * 1000,
    })),
  }),
};
const steps = [titled, inMetres];
const { name, ...nameless } = curlew;
const metres = {
  ...nameless,
  joints: curlew.joints.map((joint) => ({ ...joint, overlap: joint.overlap / 1000 })),
};
const oldest = { ...metres, title: name, version: -1 };
const expected = readProject({
  ...curlew,
  joints: curlew.joints.map((joint) => ({ ...joint, overlap: (joint.overlap / 1000) * 1000 })),
});

describe('a step', () => {
  it('raises a document of its version, and the next step goes on from there', () => {
    if (!expected.ok) throw new Error(expected.error.message);
    const before = structuredClone(oldest);
    expect(readAnyVersion(oldest, steps)).toEqual({
      ok: true,
      value: { document: expected.value, olderVersion: -1 },
    });
    expect(oldest).toEqual(before);
    expect(openProjectText(JSON.stringify({ ...metres, name, version: 0 }), steps)).toEqual({
      ok: true,
      value: { document: expected.value, olderVersion: 0 },
    });
  });

  it('is not taken by a document of the present version', () => {
    expect(readAnyVersion(curlew, steps)).toEqual({
      ok: true,
      value: { document: curlew },
    });
  });

  it('that cannot be taken says so, and leaves what is wrong afterwards to the reader', () => {
    const reply = readAnyVersion({ ...oldest, joints: 7 }, steps);
    expect(reply).toMatchObject({ ok: false, error: { code: 'bad-input', field: 'version' } });
    expect(!reply.ok && reply.error.message).toMatch(/of version -1, .* brought to version 1\./);
    expect(readAnyVersion({ ...oldest, title: '' }, steps)).toMatchObject({
      ok: false,
      error: { field: 'name' },
    });
  });

  it('is missing for a version that never was', () => {
    for (const version of [-7, 0, 1.5, '1', null, undefined]) {
      const reply = readAnyVersion({ ...curlew, version });
      expect(reply).toMatchObject({ ok: false, error: { field: 'version' } });
      expect(!reply.ok && reply.error.message).toMatch(/must be 1/);
    }
    for (const document of [null, [], 'text', {}, { format: 'other', version: 0 }]) {
      expect(raiseProject(document, steps)).toEqual({ ok: true, value: { document } });
    }
  });

  it('cannot bring a newer version back', () => {
    const reply = readAnyVersion({ ...curlew, version: 3 }, steps);
    expect(!reply.ok && reply.error.message).toMatch(
      /of version 3, from a newer Lapwright; this one reads versions up to 1/,
    );
  });
});
