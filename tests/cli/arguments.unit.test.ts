import { describe, expect, it, vi } from 'vitest';
import { commands } from '../../src/cli/commands.ts';
import { file, lapwright, linesOf, mastProject } from './lapwright.ts';

// A busy machine computes a joint in seconds, not in a tenth of one.
vi.setConfig({ testTimeout: 600_000 });

const complains = async (argv: readonly string[], ...parts: readonly string[]): Promise<void> => {
  const { code, out, err } = await lapwright(argv);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(linesOf(err)).toHaveLength(1);
  for (const part of ['lapwright: ', ...parts]) expect(err).toContain(part);
};

describe('the words of a command', () => {
  it('asks for a command when there is none', () =>
    complains([], 'A command is missing', 'lapwright help'));

  it('suggests the nearest command', async () => {
    await complains(['chekc', 'x'], 'no command "chekc"', 'Did you mean "check"?');
    await complains(['swep'], 'Did you mean "sweep"?');
    await complains(['help', 'strees'], 'Did you mean "stress"?');
  });

  it('suggests nothing where nothing is near', async () => {
    const { err } = await lapwright(['print']);
    expect(err).toContain('no command "print"');
    expect(err).not.toContain('Did you mean');
  });

  it('suggests the nearest option and names the command', () =>
    complains(
      ['stress', 'x', '--jiont', 'a'],
      'no option "--jiont"',
      'Did you mean "--joint"?',
      'lapwright help stress',
    ));

  it('refuses the options of another command', () =>
    complains(['check', 'x', '--theta', '3'], 'no option "--theta"'));

  it('asks for the file', () => complains(['check', '--json=no'], '--json takes no value'));
  it('asks for one file', async () => {
    await complains(['check'], 'A project file is missing');
    await complains(['check', ''], 'A project file is missing');
    await complains(['check', 'a', 'b'], '"b" is one word too many');
    await complains(['demo', 'a'], '"a" is one word too many');
  });

  it('asks for what a command cannot do without', async () => {
    await complains(['stress', 'x', '--case', 'c'], '--joint ID is missing');
    await complains(['stress', 'x', '--joint', 'j'], '--case ID is missing');
    await complains(['sweep', 'x'], '--joint ID is missing');
  });

  it('asks for the value of an option, and does not take the next option for it', async () => {
    await complains(['sweep', 'x', '--joint'], '--joint needs a value');
    await complains(['stress', 'x', '--joint', '--case', 'c'], '--joint needs a value');
  });

  it('refuses an option that is given twice', () =>
    complains(['sweep', 'x', '--joint', 'a', '--joint', 'b'], '--joint stands twice'));

  it.each([
    ['--theta', '361', 'a number from −360 to 360'],
    ['--theta', '-361', 'a number from −360 to 360'],
    ['--factor', '-1', 'a number from 0 to 100'],
    ['--factor', '1,5', 'write 1.5'],
    ['--factor', 'NaN', 'is not a number'],
    ['--factor', 'Infinity', 'is not a number'],
    ['--factor', '1e999', 'too large'],
    ['--stations', '1', 'a whole number from 2 to 2000'],
    ['--stations', '2.5', 'a whole number from 2 to 2000'],
    ['--gap', 'maximum', 'not one of min, nominal, max'],
    ['--joint', 'a'.repeat(65), '1 to 64 characters'],
  ])('refuses %s %s', (option, value, said) =>
    complains(['stress', 'x', option, value], `${option}: `, said),
  );

  it.each([
    ['--from', '0.5', 'a number from 1 to 500'],
    ['--to', '501', 'a number from 1 to 500'],
    ['--points', '501', 'a whole number from 2 to 500'],
  ])('refuses %s %s', (option, value, said) =>
    complains(['sweep', 'x', option, value], `${option}: `, said),
  );

  it('takes a file whose name begins with a hyphen after --', () =>
    complains(['check', '--', '-x.json'], '-x.json: there is no such file'));

  it('puts every complaint into JSON where JSON is asked for', async () => {
    const { code, out, err } = await lapwright(['stress', 'x', '--json', '--jiont', 'a']);
    expect({ code, err }).toEqual({ code: 2, err: '' });
    expect(JSON.parse(out)).toEqual({
      error: {
        code: 'bad-request',
        field: '',
        message: 'There is no option "--jiont" here. Did you mean "--joint"?',
      },
    });
  });

  it('takes numbers with either minus sign', async () => {
    const path = file('mast.json', mastProject());
    const stress = (...theta: string[]) =>
      lapwright(['stress', path, '--joint', 'mast-foot', '--case', 'wind-hot', ...theta, '--json']);
    const plain = await stress('--theta', '-30');
    expect(plain.code).toBe(0);
    expect(await stress('--theta=-30')).toEqual(plain);
    expect(await stress('--theta', '−30')).toEqual(plain);
  });
});

describe('help and version', () => {
  it('lists every command', async () => {
    const { code, out, err } = await lapwright(['help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const { name, brief } of commands) {
      expect(out).toMatch(new RegExp(`^  ${name}( FILE)? +${brief}$`, 'm'));
    }
    expect(await lapwright(['--help'])).toEqual({ code, out, err });
    expect(await lapwright(['-h'])).toEqual({ code, out, err });
  });

  it.each(commands.map(({ name }) => name))('explains %s', async (name) => {
    const { code, out } = await lapwright(['help', name]);
    expect(code).toBe(0);
    for (const option of commands.find((one) => one.name === name)!.options) {
      expect(out).toContain(`  --${option.name}`);
      expect(out).toContain(
        option.takes ? `--${option.name} ${option.takes}` : `[--${option.name}]`,
      );
    }
    expect(await lapwright([name, '--help'])).toMatchObject({ code: 0, out });
    for (const line of linesOf(out)) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('explains a command even where its options are not complete', async () => {
    expect((await lapwright(['stress', '--help', '--joint', 'a'])).code).toBe(0);
  });

  it('says its version and that of the model', async () => {
    const { code, out } = await lapwright(['--version']);
    expect(code).toBe(0);
    expect(out).toMatch(/^lapwright \d+\.\d+\.\d+ \(model \S+\)\n$/);
  });
});
