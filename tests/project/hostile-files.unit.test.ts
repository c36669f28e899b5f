/** Files that are wrong on purpose, one by one: what the fuzzer found among them, and what each is told. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { projectOf } from '../../src/main/files/read-project-file.ts';
import { lostInText } from '../../src/shared/json-keys.ts';

const text = JSON.stringify(curlew, null, 2);
const close = JSON.stringify(curlew);

const refusal = (file: string | Uint8Array): { field: string; message: string } => {
  const read = projectOf('x.lapwright', typeof file === 'string' ? Buffer.from(file) : file);
  if (read.ok) throw new Error('was not refused');
  return { field: read.error.field, message: read.error.message };
};
const lineOf = (part: string): number => text.slice(0, text.indexOf(part)).split('\n').length;

describe('a key that stands twice', () => {
  it('is refused at its second place, for the parser would take the last and say nothing', () => {
    const line = lineOf('"targetMargin"');
    const twice = text.replace('"targetMargin"', '"targetMargin": 0.5,\n    "targetMargin"');
    expect(refusal(twice)).toEqual({
      field: 'settings.targetMargin',
      message: `x.lapwright: settings, target margin: "targetMargin" stands twice here, the second time at line ${line + 1}, column 5: keep one.`,
    });
  });

  it.each([
    ['with the same value', '"version":1,', '"version":1,"version":1,', 'version'],
    ['in other letters', '"version":1,', '"version":1,"\\u0076ersion":1,', 'version'],
    ['far from the first', /}$/, ',"name":"Kestrel"}', 'name'],
    [
      'in a list',
      '"kind":"isotropic",',
      '"kind":"isotropic","kind":"isotropic",',
      'adherends.2.kind',
    ],
    ['deep inside', '"gap":0.2,', '"gap":0.2,"gap":0.2,', 'joints.0.innerBond.gap'],
  ])('is refused %s', (_how, one, two, field) => {
    const changed = close.replace(one, two);
    expect(changed).not.toBe(close);
    expect(refusal(changed)).toMatchObject({
      field,
      message: expect.stringContaining('stands twice here, the second time at line 1, column '),
    });
  });

  it('is found in any document, and in none that has each once', () => {
    const key = fc.constantFrom('a', 'b', '"', '\\', '{', '[', ',', ':', '\\"', '\u2028', '');
    const values = fc.letrec((tie) => ({
      value: fc.oneof(
        { depthSize: 'small' },
        fc.constantFrom(1, 'a', '"a": 1, "a": 1', '\\', '{"b":', null, true),
        fc.array(tie('value'), { maxLength: 3 }),
        fc.dictionary(key, tie('value'), { maxKeys: 3 }),
      ),
    })).value;
    fc.assert(
      fc.property(values, fc.constantFrom(0, 1), (value, indent) => {
        const written = JSON.stringify(value, null, indent);
        expect(lostInText(written)).toEqual({ twice: null, number: null });
        const wrapped = `[7, {"x": ${written}, "y": ${written}, "\\u0078": 1}]`;
        const at = wrapped.lastIndexOf('"\\u0078"');
        expect(lostInText(wrapped).twice).toEqual({ at, path: [1, 'x'] });
        expect(lostInText(`{"c": ["c", ${written}], "d": {"c": 1}}`).twice).toBeNull();
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a number that is lost in reading', () => {
  const torque = /"torque": -?[\d.]+/;
  const withTorque = (written: string): string => text.replace(torque, `"torque": ${written}`);
  const line = text.slice(0, text.search(torque)).split('\n').length;

  it.each([
    '1e-400',
    '-1e-400',
    '1E-330',
    '0.1e-999999999999',
    '-0.01e-323',
    `0.${'0'.repeat(400)}1`,
  ])('is refused at its place, for it would be saved as 0: %s', (written) => {
    const { field, message } = refusal(withTorque(written));
    expect(field).toMatch(/^joints\.0\.loads\.\d+\.torque$/);
    const shown = written.length > 40 ? `${written.slice(0, 40)}…` : written;
    expect(message).toContain(`“${shown}” is too small`);
    expect(message).toContain(`line ${line}, column `);
  });

  it.each(['0', '-0', '0.000', '0e5', '0.0e-400', '5e-324', '-4.9406564584124654e-324', '3e-320'])(
    'is none where it is zero or can be held: %s',
    (written) => {
      const read = projectOf('x', Buffer.from(withTorque(written)));
      expect(read.ok).toBe(true);
      expect(JSON.stringify(read)).toContain(`"torque":${JSON.stringify(Number(written))}`);
    },
  );

  it('is none within a text or a key, nor is what is too large let in', () => {
    const named = close.replace('"name":"Curlew"', '"name":"1e-400, \\"torque\\": 1e-400"');
    expect(projectOf('x', Buffer.from(named)).ok).toBe(true);
    expect(refusal(withTorque('1e400')).field).toMatch(/torque$/);
    expect(refusal(withTorque('-1e400')).field).toMatch(/torque$/);
  });
});

describe('a key that is no field', () => {
  it.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])(
    'is refused as any other: %s',
    (key) => {
      for (const before of ['{', '"settings":{', '"joints":[{']) {
        const wrong = close.replace(before, `${before}"${key}":{"polluted":true},`);
        expect(refusal(wrong)).toMatchObject({
          field: expect.stringMatching(new RegExp(`${key}$`)),
          message: expect.stringContaining(`"${key}" is not a field here`),
        });
      }
      expect('polluted' in {}).toBe(false);
    },
  );

  it('has a place even where it has no name', () => {
    expect(refusal(close.replace('{', '{"":1,'))).toEqual({
      field: '',
      message: 'x.lapwright: A field at the top has no name, "": remove it or give it its name.',
    });
    expect(refusal(close.replace('"settings":{', '"settings":{"":1,')).field).toBe('settings');
  });

  it('is told in short, however long it is', () => {
    const { message } = refusal(close.replace('{', `{"${'k'.repeat(1_000_000)}":1,`));
    expect(message.length).toBeLessThan(300);
  });
});

describe('a file in other letters', () => {
  const mark = '\ufeff';
  it.each([
    ['UTF-16', Buffer.from(mark + text, 'utf16le'), 'it is UTF-16; save it as UTF-8'],
    [
      'UTF-16, the other way round',
      Buffer.from(mark + text, 'utf16le').swap16(),
      'it is UTF-16; save it as UTF-8',
    ],
    [
      'UTF-16 without its mark',
      Buffer.from('{"a": 1}', 'utf16le'),
      'it is not UTF-8 text: it is UTF-16; save it as UTF-8',
    ],
    [
      'UTF-16 without its mark, the other way round, with a letter that is none of UTF-8',
      Buffer.from('{"a": "\ud800é"}', 'utf16le').swap16(),
      'it is not UTF-8 text: it is UTF-16; save it as UTF-8',
    ],
    ['two marks', Buffer.from(mark + mark + text), 'line 1 begins with two byte order marks'],
    ['three marks', Buffer.from(mark.repeat(3)), 'line 1 begins with two byte order marks'],
    [
      'Latin-1',
      Buffer.from('{\n"format": "caf\u00e9"}', 'latin1'),
      'something else stands in line 2',
    ],
    [
      'a surrogate in bytes',
      Buffer.from([0x7b, 0x0a, 0x0a, 0xed, 0xa0, 0x80]),
      'something else stands in line 3',
    ],
    [
      'a zero written long',
      Buffer.from([0x22, 0xc0, 0x80, 0x22]),
      'something else stands in line 1',
    ],
    [
      'one that stops within a letter',
      Buffer.from([0x22, 0xe2, 0x82]),
      'something else stands in line 1',
    ],
  ])('is refused with what it is and where: %s', (_what, bytes, said) => {
    expect(refusal(bytes).message).toContain(said);
  });

  it('may begin with one mark', () => {
    expect(projectOf('x', Buffer.from(mark + text))).toMatchObject({ ok: true });
    const wrong = refusal(mark + text.replace(/"targetMargin": [\d.]+/, '"targetMargin": "x"'));
    expect(wrong.field).toBe('settings.targetMargin');
  });

  it('keeps half a letter that is written as JSON writes it', () => {
    const read = projectOf('x', Buffer.from(close.replace('"name":"Curlew"', '"name":"\\ud800"')));
    expect(read).toMatchObject({ ok: true, value: { document: { name: '\ud800' } } });
  });
});

describe('a file that is deep or long', () => {
  it.each(['[', '{"a":'])('is refused where %s is written a hundred thousand times', (open) => {
    const end = open === '[' ? ']' : '}';
    const deep = open.repeat(100_000) + 1 + end.repeat(100_000);
    expect(refusal(close.replace('{', `{"deep":${deep},`)).field).toBe('deep');
    expect(refusal(close.replace('"note":', `"note":${deep},"else":`)).field).toBe('note');
    expect(refusal(deep).message).toMatch(/JSON object|"format"/);
    expect(refusal(open.repeat(100_000)).message).toContain('it stops in the middle, at line 1');
  });

  it('is refused where a list has more than it may', () => {
    const joints = `[${'{},'.repeat(300_000)}{}]`;
    expect(
      refusal(JSON.stringify({ ...curlew, joints: 0 }).replace('"joints":0', `"joints":${joints}`)),
    ).toEqual({
      field: 'joints',
      message: 'x.lapwright: joints: This list is too long: it may have 2000 items.',
    });
  });
});
