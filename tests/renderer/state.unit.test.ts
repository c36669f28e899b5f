import { describe, expect, it } from 'vitest';
import { fileName, fileText } from '../../src/renderer/files.ts';
import {
  askedFactor,
  focusOf,
  governing,
  isOfMargin,
  ofMargin,
} from '../../src/renderer/state/drawn-state.ts';
import { fieldFor } from '../../src/renderer/state/issues.ts';
import {
  inWholeProject,
  jointIndex,
  valueAt,
  withOneJoint,
} from '../../src/renderer/state/project.ts';
import { projectShape } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { makeProject, socket } from './support/project.ts';
import { makeMargin, makeReport, makeStress } from './support/reports.ts';

describe('a project with one joint', () => {
  const project = makeProject();

  it('is a project still, with that joint alone', () => {
    const one = withOneJoint(project, 1);
    expect(one?.joints.map(({ id }) => id)).toEqual(['root']);
    expect(projectShape.safeParse(one).success).toBe(true);
    expect(withOneJoint(project, 9)).toBeNull();
    expect(jointIndex(project, 'lug')).toBe(2);
  });

  it('leaves out the variants, whose joints are not there any more', () => {
    const variants = [{ of: 'tip', joint: { ...socket, id: 'tip-long' } }];
    const one = withOneJoint(makeProject({ variants }), 1);
    expect(readProject(one).ok).toBe(true);
    expect(one).not.toHaveProperty('variants');
  });

  it.each([
    ['joints.0.overlap', 'joints.7.overlap'],
    ['joints.0', 'joints.7'],
    ['joints', 'joints'],
    ['joints.01', 'joints.01'],
    ['adherends.0.modulus', 'adherends.0.modulus'],
    ['', ''],
  ])('has its errors told as places in the whole: %s', (field, whole) => {
    expect(inWholeProject(field, 7)).toBe(whole);
  });

  it('is read by paths', () => {
    expect(valueAt(project, ['joints', 0, 'tube', 'wall'])).toBe(1.6);
    expect(valueAt(project, ['joints', 9, 'tube'])).toBeUndefined();
  });
});

describe('the field that a refusal is about', () => {
  const mounted = [
    'joints.2.overlap',
    'joints.2.tube.wall',
    'joints.2.bond.gap',
    'adherends.1',
    'adherends.1.source',
  ];
  it.each([
    ['joints.2.tube.wall', 'joints.2.tube.wall'],
    ['joints.2.bond', 'joints.2.bond.gap'],
    ['joints.2', 'joints.2.overlap'],
    ['joints.2.overlap.x', 'joints.2.overlap'],
    ['joints.2.tub', undefined],
    ['adhesives.0.states', undefined],
    ['', undefined],
    // Of two that hold it the closer one, whichever came first.
    ['adherends.1.poisson', 'adherends.1'],
    ['adherends.1.source.text', 'adherends.1.source'],
  ])('%s', (place, field) => {
    expect(fieldFor(place, mounted)).toBe(field);
  });
});

describe('what is drawn', () => {
  const margin = makeMargin(0.1, { theta: 12, gapState: 'min', caseId: 'landing' });

  it('is left to the model until somebody chooses', () => {
    const { stations, ...rest } = focusOf(governing, null);
    expect(rest).toEqual({});
    expect(stations).toBeGreaterThan(100);
  });

  it('is the state of a margin that was taken, and of no other', () => {
    const choice = ofMargin(margin, true);
    expect(focusOf(choice, 1.725)).toMatchObject({
      caseId: 'landing',
      gapState: 'min',
      theta: 12,
      loadFactor: 1.725,
    });
    expect(isOfMargin(choice, margin)).toBe(true);
    expect(isOfMargin(choice, { ...margin, part: 'tube' })).toBe(false);
    expect(isOfMargin(governing, margin)).toBe(false);
  });

  it("takes the factor from the drawn case's margins, or from the settings when it has none", () => {
    const project = makeProject();
    const report = makeReport(socket);
    expect(askedFactor(report, project)).toBe(1.725);
    const drawn = { ...report, stress: makeStress(30, { caseId: 'landing' }) };
    expect(askedFactor(drawn, project)).toBe(1.15);
    const none = { ...drawn, margins: [] };
    expect(askedFactor(none, project)).toBe(1.15);
    const rotor = { ...none, stress: makeStress(30, { caseId: 'rotor' }) };
    expect(askedFactor(rotor, project)).toBeCloseTo(1.725, 12);
  });
});

describe('the file that is saved', () => {
  it.each([
    ['Curlew', 'Curlew.lapwright'],
    ['Frame A/B: 2nd', 'Frame-A-B-2nd.lapwright'],
    ['..', 'project.lapwright'],
    ['  trailing. ', 'trailing.lapwright'],
    ['Øre å', 'Øre-å.lapwright'],
  ])('of %s is called %s', (name, file) => {
    expect(fileName(makeProject({ name }))).toBe(file);
  });

  it('holds the document, for people to read too', () => {
    const project = makeProject();
    expect(JSON.parse(fileText(project))).toEqual(project);
    expect(fileText(project)).toContain('\n  "name": "Test frame"');
  });
});
