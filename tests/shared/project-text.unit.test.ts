/** Names of project files: the suffix of new ones, the longer one of older files, and what may be opened. */
import { expect, it } from 'vitest';
import {
  isOpenName,
  isProjectName,
  stemLength,
  withSuffix,
} from '../../src/shared/project-text.ts';

it('projects are saved under either suffix, behind a name', () => {
  for (const name of [
    'x.lapwright',
    'X.LAPWRIGHT',
    'x.lapwright.json',
    '/a/x.lapwright',
    '.x.lapwright',
  ]) {
    expect(isProjectName(name), name).toBe(true);
  }
  for (const name of [
    'x',
    'x.json',
    'xlapwright',
    'x.lapwright.txt',
    'x.lapwright.previous',
    '.lapwright',
    '.lapwright.json',
    '/a/.lapwright',
    'C:\\a\\.lapwright.json',
    'x.lapwright/y',
  ]) {
    expect(isProjectName(name), name).toBe(false);
  }
});

it('projects, all JSON and the copy beside a project may be opened', () => {
  for (const name of [
    'x.lapwright',
    'x.lapwright.json',
    'x.json',
    'X.JSON',
    'x.lapwright.previous',
    'X.Lapwright.Json.Previous',
  ]) {
    expect(isOpenName(name), name).toBe(true);
  }
  for (const name of [
    'x',
    'x.txt',
    'x.json.previous',
    'x.previous',
    '.lapwright',
    '.lapwright.previous',
  ]) {
    expect(isOpenName(name), name).toBe(false);
  }
});

it('a name gets the suffix that it has not, and keeps the one that it has', () => {
  for (const [typed, name] of [
    ['x', 'x.lapwright'],
    ['x.lapwright', 'x.lapwright'],
    ['X.LAPWRIGHT', 'X.LAPWRIGHT'],
    ['x.lapwright.json', 'x.lapwright.json'],
    ['X.LAPWRIGHT.JSON', 'X.LAPWRIGHT.JSON'],
    // Whoever types this ending wants it at the end.
    ['x.json', 'x.lapwright.json'],
    ['x.v2', 'x.v2.lapwright'],
    ['/a.lapwright/x', '/a.lapwright/x.lapwright'],
  ] as const) {
    expect(withSuffix(typed)).toBe(name);
    expect(isProjectName(withSuffix(typed))).toBe(true);
  }
});

it('the part before the suffix is what one would change', () => {
  for (const name of ['mine.lapwright', 'mine.lapwright.json', 'mine.json', 'mine']) {
    expect(stemLength(name), name).toBe(4);
  }
});
