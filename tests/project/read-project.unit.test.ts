import { describe, expect, it } from 'vitest';
import curlew from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { readProject, readProjectText } from '../../src/shared/read-project.ts';
import { type Path, withAt } from './numbers.ts';

/** The refusal of the demonstration project with one thing changed. */
function refusal(path: Path, value: unknown): { field: string; message: string } {
  const read = readProject(withAt(curlew, path, value));
  if (read.ok) throw new Error('was not refused');
  const { code, field, message } = read.error;
  expect(code).toBe('bad-input');
  // One sentence.
  expect(message).toMatch(/^[A-Z“"].*[.!?]$/);
  return { field, message };
}

function textRefusal(text: string): { field: string; message: string } {
  const read = readProjectText(text);
  if (read.ok) throw new Error('was not refused');
  return { field: read.error.field, message: read.error.message };
}

const text = JSON.stringify(curlew, null, 2);

describe('a project document', () => {
  it('is taken as it is', () => {
    expect(readProject(curlew)).toEqual({ ok: true, value: curlew });
  });

  it.each([[null], [undefined], [7], ['text'], [true], [[curlew]]])('is not %j', (document) => {
    expect(readProject(document)).toMatchObject({
      ok: false,
      error: { code: 'bad-input', field: '', message: expect.stringContaining('JSON object') },
    });
  });

  it('has the format of a project, which is looked at first', () => {
    expect(refusal(['format'], 'drawing')).toMatchObject({ field: 'format' });
    expect(refusal(['format'], undefined).message).toContain('not a Lapwright project');
    expect(readProject({ a: 1 })).toMatchObject({ ok: false, error: { field: 'format' } });
  });

  it('has the version that is read here', () => {
    const { field, message } = refusal(['version'], 2);
    expect(field).toBe('version');
    expect(message).toContain('must be 1');
    expect(message).toContain('it is 2');
  });

  it('has no field that is not known, at any depth', () => {
    for (const path of [
      ['colour'],
      ['settings', 'factors', 'environment'],
      ['adherends', 0, 'weight'],
      ['adhesives', 0, 'states', 2, 'peel'],
      ['joints', 1, 'tube', 'lenght'],
      ['joints', 3, 'loads', 0, 'moment'],
    ]) {
      const { field, message } = refusal(path, 1);
      expect(field).toBe(path.join('.'));
      expect(message).toContain(`"${path.at(-1)}" is not a field here`);
    }
  });

  it('cannot be given a prototype', () => {
    const read = readProjectText(text.replace('{', '{"__proto__": {"admin": true},'));
    expect(({} as Record<string, unknown>).admin).toBeUndefined();
    expect(read.ok && Object.getPrototypeOf(read.value)).not.toHaveProperty('admin');
  });

  it.each([
    [['name'], 'a name is a text'],
    [['settings'], 'missing: this must be a group of fields in { }'],
    [['joints'], 'missing: this must be a list in [ ]'],
    [['adherends', 0, 'kind'], 'missing: an adherend is of kind'],
    [['joints', 0, 'id'], 'an id is'],
    [['joints', 0, 'tube'], ''],
    [['joints', 1, 'side'], 'side is "socket"'],
    [['adhesives', 0, 'states', 0, 'moisture'], 'moisture is "dry" or "wet"'],
  ] as const)('has %j', (path, said) => {
    const { field, message } = refusal(path, undefined);
    expect(field).toBe(path.join('.'));
    expect(message.toLowerCase()).toContain(said);
  });

  it.each([
    [['joints', 0, 'type'], 'scarf', 'a joint is of type "sleeve-single"'],
    [['joints', 0, 'type'], undefined, 'a joint is of type "sleeve-single"'],
    [
      ['adherends', 0, 'kind'],
      'wood',
      'an adherend is of kind "isotropic", "orthotropic" or "laminate"',
    ],
    [['loadCases', 0, 'kind'], 'proof', 'a load case is of kind "limit", "ultimate" or "cyclic"'],
    [['joints', 1, 'side'], 'left', 'side is "socket"'],
    [['joints', 0, 'id'], 'Boom Root', 'lower-case letters, digits and hyphens; it is "Boom Root"'],
    [['joints', 0, 'id'], 7, 'an id is a short text'],
    [['joints', 0, 'name'], '', 'a name cannot be empty'],
    [['joints', 0, 'name'], 'x'.repeat(121), 'at most 120 characters'],
    [['note'], 'x'.repeat(4001), 'at most 4000 characters'],
    [['adhesives', 0, 'states'], [], 'at least one state'],
    [
      ['settings', 'adherendShear'],
      'yes',
      'this must be true or false, without quotes; it is "yes"',
    ],
    [
      ['adherends', 0, 'source', 'kind'],
      'mine',
      'one of "typical", "memory", "published", "tested"',
    ],
    [['adherends', 0, 'source', 'text'], 'x'.repeat(401), 'too long: it may have 400 characters'],
    [['note'], 7, 'this must be a text in quotes; it is 7'],
    [['joints', 0, 'overlap'], Number.NaN, 'overlap must be a number from 1 to 500 mm'],
    [['joints', 0, 'overlap'], Number.POSITIVE_INFINITY, 'from 1 to 500 mm'],
    [['joints', 0, 'overlap'], 0.5, 'from 1 to 500 mm; it is 0.5'],
    [['joints', 0, 'overlap'], 501, 'from 1 to 500 mm; it is 501'],
    [['joints', 0, 'overlap'], '45', 'from 1 to 500 mm; it is "45"'],
    [['joints', 0, 'tube'], [], 'this must be a group of fields in { }'],
    [['joints', 0, 'loads'], {}, 'this must be a list in [ ]'],
  ] as const)('is refused with %j = %j', (path, value, said) => {
    const { field, message } = refusal(path, value);
    expect(field).toBe(path.join('.'));
    expect(message.toLowerCase()).toContain(said.toLowerCase());
  });

  it('may leave out what is optional', () => {
    expect(readProject(withAt(curlew, ['note'], undefined)).ok).toBe(true);
    expect(readProject(withAt(curlew, ['adhesives', 0, 'fatigue'], undefined)).ok).toBe(true);
    expect(readProject({ ...curlew, joints: [], loadCases: [] }).ok).toBe(true);
  });
});

describe('what must hold between the fields of a project', () => {
  it.each([
    [['joints', 1, 'tube', 'adherend'], 'no adherend with the id "gone"'],
    [['joints', 0, 'spigot', 'adherend'], 'no adherend with the id "gone"'],
    [['joints', 3, 'upperStrap', 'adherend'], 'no adherend with the id "gone"'],
    [['joints', 2, 'adhesive'], 'no adhesive with the id "gone"'],
    [['joints', 2, 'loads', 1, 'case'], 'no load case with the id "gone"'],
  ] as const)('what %j names exists', (path, said) => {
    const { field, message } = refusal(path, 'gone');
    expect(field).toBe(path.join('.'));
    expect(message).toContain(said);
  });

  it.each(['adherends', 'adhesives', 'loadCases', 'joints'] as const)(
    'ids of %s differ',
    (list) => {
      const items = curlew[list];
      const { field, message } = refusal([list], [...items, items[0]]);
      expect(field).toBe(`${list}.${items.length}.id`);
      expect(message).toContain(`"${items[0]!.id}" is used twice: choose another`);
    },
  );

  it('a joint names each load case once', () => {
    const { field, message } = refusal(['joints', 2, 'loads', 1, 'case'], 'gust-cold');
    expect(field).toBe('joints.2.loads.1.case');
    expect(message).toContain('stands twice');
  });

  it('has sizes and variants that name what is there, once', () => {
    const size = { id: 'small', name: 'Small' };
    expect(refusal(['joints', 0, 'sizes'], [size, size]).field).toBe('joints.0.sizes.1.id');
    const load = { case: 'gust', force: 1, moment: 0, torque: 0, shear: 0 };
    expect(refusal(['joints', 0, 'sizes'], [{ ...size, loads: [load, load] }])).toEqual({
      field: 'joints.0.sizes.0.loads.1.case',
      message: 'The load case "gust" stands twice in this size.',
    });
    const elsewhere = { ...load, case: 'nowhere' };
    expect(refusal(['joints', 0, 'sizes'], [{ ...size, loads: [elsewhere] }]).field).toBe(
      'joints.0.sizes.0.loads.0.case',
    );
    // A flat joint has no diameter.
    expect(refusal(['joints', 3, 'sizes'], [{ ...size, outsideDiameter: 30 }]).field).toBe(
      'joints.3.sizes.0.outsideDiameter',
    );
    const joint = { ...curlew.joints[1], id: 'boom-tip-long' };
    expect(refusal(['variants'], [{ of: 'nowhere', joint }]).field).toBe('variants.0.of');
    expect(refusal(['variants'], [{ of: 'boom-tip', joint: curlew.joints[1] }]).field).toBe(
      'variants.0.joint.id',
    );
    const without = { ...joint, adhesive: 'nowhere' };
    expect(refusal(['variants'], [{ of: 'boom-tip', joint: without }]).field).toBe(
      'variants.0.joint.adhesive',
    );
  });

  it('has one tolerance for each input, in its own range', () => {
    const gap = { input: 'gap', distribution: 'uniform', spread: 0.05 };
    const at = ['settings', 'tolerances'];
    expect(refusal(at, [gap, gap]).field).toBe('settings.tolerances.1.input');
    expect(refusal(at, [{ ...gap, input: 'load', spread: 1.5 }]).field).toBe(
      'settings.tolerances.0.spread',
    );
    expect(refusal(at, [{ ...gap, input: 'colour' }])).toEqual({
      field: 'settings.tolerances.0.input',
      message: expect.stringContaining('tube-wall, sleeve-wall'),
    });
  });

  it('has wet properties where a case is judged in a wet condition', () => {
    const wet = { id: 'wet', name: 'Wet', temperature: 30, moisture: 'wet' };
    const dry = curlew.adhesives.map((adhesive) => ({
      ...adhesive,
      states: adhesive.states.filter(({ moisture }) => moisture === 'dry'),
    }));
    const project = {
      ...curlew,
      adhesives: dry,
      conditions: [wet],
      loadCases: [{ ...curlew.loadCases[0], everyCondition: true }],
      joints: [{ ...curlew.joints[0], loads: curlew.joints[0]!.loads.slice(0, 1) }],
    };
    const read = readProject(project);
    expect(read.ok || read.error).toMatchObject({
      field: 'joints.0.adhesive',
      message: expect.stringContaining('The condition "Wet" is wet'),
    });
    expect(readProject({ ...project, loadCases: [curlew.loadCases[0]] }).ok).toBe(true);
  });

  it('an adhesive has one state at one temperature and moisture', () => {
    const { field, message } = refusal(['adhesives', 0, 'states', 2, 'temperature'], 23);
    expect(field).toBe('adhesives.0.states.2.temperature');
    expect(message).toContain('two dry states at 23 °C: keep one');
  });

  it('a gap stands once in the table of strength against gap, in any order', () => {
    const knockdowns = (...gap: { gap: number; factor: number }[]) => ({
      environment: 1,
      ageing: 1,
      scatter: 1,
      gap,
      source: { kind: 'tested', text: 'coupons' },
    });
    const [a, b, c] = [
      { gap: 0.2, factor: 1 },
      { gap: 0.5, factor: 0.8 },
      { gap: 0.3, factor: 0.9 },
    ] as const;
    const at = ['adhesives', 0, 'knockdowns'];
    expect(readProject(withAt(curlew, at, knockdowns(a, b, c))).ok).toBe(true);
    for (const again of [{ gap: 0.2, factor: 0.7 }, a]) {
      const { field, message } = refusal(at, knockdowns(a, b, again));
      expect(field).toBe('adhesives.0.knockdowns.gap.2.gap');
      expect(message).toMatch(/has two rows of strength at a gap of 0\.2 mm: keep one/);
    }
  });

  it('a metal is not weaker when it breaks than when it yields', () => {
    const { field, message } = refusal(['adherends', 2, 'ultimateStrength'], 829);
    expect(field).toBe('adherends.2.ultimateStrength');
    expect(message).toContain('below its yield strength');
  });

  it('a wet case finds wet properties of the adhesive', () => {
    const dry = curlew.adhesives[0]!.states.filter(({ moisture }) => moisture === 'dry');
    const { field, message } = refusal(['adhesives', 0, 'states'], dry);
    expect(field).toBe('joints.0.adhesive');
    expect(message).toContain('"Gust, hot deck" is wet');
    expect(message).toContain('add a wet state to it or choose another adhesive');
  });

  it('a dry case finds dry properties of the adhesive', () => {
    const wet = curlew.adhesives[0]!.states.filter(({ moisture }) => moisture === 'wet');
    expect(refusal(['adhesives', 0, 'states'], wet).message).toContain('add a dry state to it');
  });
});

describe('the text of a project file', () => {
  it('may begin with a byte order mark and use any line ends', () => {
    const value = { ok: true, value: curlew };
    expect(readProjectText(`\uFEFF${text}`)).toEqual(value);
    expect(readProjectText(text.replaceAll('\n', '\r\n'))).toEqual(value);
  });

  it.each([[''], [' \n\t'], ['\uFEFF']])('is not empty like %j', (empty) => {
    expect(textRefusal(empty)).toEqual({ field: '', message: 'The file is empty.' });
  });

  it('names line and column of what is no JSON', () => {
    const lines = text.split('\n');
    const at = lines.findIndex((line) => line.includes('"targetMargin"'));
    const broken = lines.with(at, '    "targetMargin" 0.25,').join('\n');
    expect(textRefusal(broken).message).toBe(
      `The file is not JSON: something is wrong at line ${at + 1}, column 20.`,
    );
    expect(textRefusal('{"a": 1,}').message).toContain('line 1, column 9');
  });

  it('names line and column also after a byte order mark and with two-byte line ends', () => {
    expect(textRefusal('\uFEFF{\r\n  "a": nope\r\n}').message).toMatch(/line 2, column 8/);
  });

  it.each([['{"format": "lapwright-project"'], [text.slice(0, -3)], ['{'], ['[1, 2'], ['"open']])(
    'says that it stops in the middle: %#',
    (cut) => {
      expect(textRefusal(cut).message).toMatch(
        /not JSON: (it stops in the middle, at|something is wrong at) line \d+, column \d+\.$/,
      );
    },
  );

  it.each([['NaN'], ['Infinity'], ['-Infinity'], ['1,5'], ['0x10'], ['.5']])(
    'has no number written %s',
    (number) => {
      const line = text.split('\n').findIndex((one) => one.includes('"targetMargin"')) + 1;
      const { message } = textRefusal(text.replace('0.25', number));
      expect(message).toContain(`line ${line}`);
    },
  );

  it('refuses a number too large for a number, at its place', () => {
    const { field } = textRefusal(text.replace('"targetMargin": 0.25', '"targetMargin": 1e999'));
    expect(field).toBe('settings.targetMargin');
  });
});
