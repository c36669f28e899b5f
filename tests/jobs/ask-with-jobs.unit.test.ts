import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/main/ask.ts';
import { type Jobs, withJobs } from '../../src/main/jobs/ask-with-jobs.ts';
import type { JobLine } from '../../src/main/jobs/job-line.ts';
import { requestNames } from '../../src/shared/contract.ts';
import { ok } from '../../src/shared/reply.ts';

const lineCalled = (name: string): JobLine => ({
  run: async (asked) => ok(`${name} line: ${asked}`),
  warm() {},
  close: async () => {},
});
const jobs: Jobs = {
  lines: new Map([
    ['joint.sweep', lineCalled('sweep')],
    ['project.check', lineCalled('check')],
  ]),
  warm() {},
  close: async () => {},
};
const here: Ask = async (name) => ok(`here: ${name}`);

describe('asking with jobs', () => {
  const ask = withJobs(here, jobs);

  it('sends the long requests to lines of their own', async () => {
    expect(await ask('joint.sweep', {})).toEqual(ok('sweep line: joint.sweep'));
    expect(await ask('project.check', {})).toEqual(ok('check line: project.check'));
  });

  it.each([...requestNames.filter((name) => !jobs.lines.has(name)), 'no.such', 7, undefined])(
    'answers %s at once',
    async (name) => {
      expect(await ask(name, {})).toEqual(ok(`here: ${name}`));
    },
  );
});
