import { describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { openDemo } from '../../src/main/demo/demo.ts';
import { noLoad } from '../../src/renderer/size/form-model.ts';
import { lapOf } from '../../src/shared/convert-lap.ts';
import { laps, newJoint, newProject } from '../../src/shared/new-joint.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';

const demo = (): Project => {
  const opened = openDemo();
  if (!opened.ok) throw new Error(opened.error.message);
  return opened.value.document;
};

describe('a new project', () => {
  it.each([null, ...laps])('with %s for its first joint can be opened', (lap) => {
    const project = newProject(demo(), 'Heron', lap);
    expect(readProject(structuredClone(project))).toEqual({ ok: true, value: project });
    expect(project.joints.map(lapOf)).toEqual(lap === null ? [] : [lap]);
    expect(project.loadCases).toHaveLength(1);
  });

  it('takes no allowable and nothing else that was measured with it', () => {
    const from = demo();
    from.adhesives[0]!.allowables = [{ temperature: 23, moisture: 'dry' } as never];
    from.coupons = { specimens: [], sets: [] };
    const { adhesives, coupons, joints, note } = newProject(from, 'Heron', null);
    expect(adhesives[0]).not.toHaveProperty('allowables');
    expect([coupons, note, joints]).toEqual([undefined, undefined, []]);
  });

  it('shares nothing with the one that its materials are of', () => {
    const from = demo();
    const made = newProject(from, 'Heron', 'socket');
    made.adherends[0]!.name = 'changed';
    expect(from.adherends[0]!.name).not.toBe('changed');
  });
});

describe('a new joint', () => {
  it.each(laps)('as %s can be worked out once a load acts on it', async (lap) => {
    const project = newProject(demo(), 'Heron', lap);
    const [joint] = project.joints;
    joint!.loads = [{ ...noLoad(joint!, 'case-1'), force: 1000 }] as never;
    const ask = createAsk({ carrier: 'terminal' });
    const reply = await ask('joint.analyse', { document: project, jointId: joint!.id, focus: {} });
    expect(reply).toMatchObject({ ok: true });
    const { margins } = (reply as { value: { margins: { margin: number }[] } }).value;
    expect(Math.min(...margins.map(({ margin }) => margin))).toBeGreaterThan(0);
  });

  it('is of the materials that the joints of the project are of', () => {
    const project = newProject(demo(), 'Heron', 'socket');
    project.adherends.push({ ...project.adherends.at(-1)!, id: 'steel', name: 'Steel' });
    project.joints = [{ ...project.joints[0]!, sleeve: { adherend: 'steel' } } as never];
    const made = newJoint(project, 'spigot', { id: 'b', name: 'B' });
    expect(made).toMatchObject({ sleeve: { adherend: 'steel' }, side: 'spigot' });
    expect(newJoint(project, 'sleeve-double', { id: 'b', name: 'B' })).toMatchObject({
      spigot: { adherend: 'steel' },
      socket: { adherend: 'steel' },
    });
  });

  it('is not made of nothing', () => {
    const bare = { joints: [], adherends: [], adhesives: [] };
    expect(() => newJoint(bare, 'socket', { id: 'a', name: 'A' })).toThrow(RangeError);
  });
});
