/** From anything to a project, or to one sentence that says what is wrong and where. */
import type { z } from 'zod';
import { lostInText } from './json-keys.ts';
import { jsonErrorAt } from './json-place.ts';
import { projectSteps, raiseProject, type Step } from './older-projects.ts';
import { PROJECT_FORMAT, type Project, projectShape } from './project.ts';
import { brokenRule } from './project-rules.ts';
import { ok, type Reply, refuse } from './reply.ts';
import { shortened } from './shortened.ts';

/** What stands at a path of a document; undefined when nothing does. */
function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = document;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** A key of a file may be as long as the file. */
const shortKey = (key: string): string => (key.length > 60 ? `${key.slice(0, 60)}…` : key);

/** The same, shortened for a message; null when it is not worth showing. */
function shown(value: unknown): string | null {
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (value === null) return 'null';
  if (typeof value !== 'string') return null;
  return `"${shortened(value)}"`;
}

const kinds: Readonly<Record<string, string>> = {
  object: 'a group of fields in { }',
  array: 'a list in [ ]',
  string: 'a text in quotes',
  boolean: 'true or false, without quotes',
  number: 'a number, without quotes',
};

/** What is wanted in place of what stands there: our own words where the schema has them. */
function wanted(issue: z.core.$ZodIssue): string {
  const ours = !/^(Invalid|Too (big|small)|Unrecognized)/.test(issue.message);
  if (ours) return issue.message.charAt(0).toLowerCase() + issue.message.slice(1);
  switch (issue.code) {
    case 'invalid_type':
      return `this must be ${kinds[issue.expected] ?? issue.expected}`;
    case 'invalid_value':
      return `this must be one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`;
    case 'too_big':
      return issue.origin === 'array'
        ? `this list is too long: it may have ${issue.maximum} items`
        : `this is too long: it may have ${issue.maximum} characters`;
    default:
      return 'this cannot stand here';
  }
}

function explain(document: unknown, issue: z.core.$ZodIssue): { field: string; message: string } {
  const path = [...issue.path];
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    if (key === '') {
      const where = path.length === 0 ? ' at the top' : '';
      return {
        field: path.join('.'),
        message: `a field${where} has no name, "": remove it or give it its name`,
      };
    }
    return {
      field: [...path, shortKey(key)].join('.'),
      message: `"${shortKey(key)}" is not a field here: remove it or correct its name`,
    };
  }
  const value = valueAt(document, path);
  const field = path.join('.');
  if (value === undefined) return { field, message: `missing: ${wanted(issue)}` };
  const found = shown(value);
  return { field, message: found === null ? wanted(issue) : `${wanted(issue)}; it is ${found}` };
}

/** Checks a document that has already been parsed. */
export function readProject(document: unknown): Reply<Project> {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return refuse('bad-input', '', 'A project is a JSON object; this is something else.');
  }
  if ((document as { format?: unknown }).format !== PROJECT_FORMAT) {
    return refuse(
      'bad-input',
      'format',
      `This is not a Lapwright project: its "format" is not "${PROJECT_FORMAT}".`,
    );
  }
  const parsed = projectShape.safeParse(document, { reportInput: true });
  if (!parsed.success) {
    const { field, message } = explain(document, parsed.error.issues[0]!);
    return refuse('bad-input', field, sentence(message));
  }
  const broken = brokenRule(parsed.data);
  if (broken) return refuse('bad-input', broken.field, sentence(broken.message));
  return ok(parsed.data);
}

/** No typing leads there: only a number may be missing while one is at work. */
function isDamage(document: unknown, issue: z.core.$ZodIssue): boolean {
  if (issue.code === 'invalid_union') return true;
  if (issue.code !== 'invalid_type') return false;
  return issue.expected !== 'number' || (valueAt(document, issue.path) ?? null) !== null;
}

/**
 * Unfinished work as it was kept, which need not be right: its values may be outside of their ranges and name what
 * is not there. Refused where it is no document that a page could show.
 */
export function readUnfinished(document: unknown): Reply<Project> {
  const read = readAnyVersion(document);
  if (read.ok) return ok(read.value.document);
  // Of another version it cannot be shown.
  if (read.error.field === 'version') return read;
  if (typeof document !== 'object' || document === null) return read;
  const { error } = projectShape.safeParse(document, { reportInput: true });
  const damage = error?.issues.find((issue) => isDamage(document, issue));
  if (damage === undefined) return ok(document as Project);
  const { field, message } = explain(document, damage);
  return refuse('bad-input', field, sentence(message));
}

/** A project out of the text of a file. */
export interface ReadText {
  readonly document: Project;
  /** Version that the text is of, where that is an older one. */
  readonly olderVersion?: number;
}

/** Checks the text of a project file, of this version or an older one. */
export function openProjectText(
  text: string,
  steps: readonly Step[] = projectSteps,
): Reply<ReadText> {
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.startsWith('\uFEFF')) {
    return refuse(
      'bad-input',
      '',
      'The file is not JSON: line 1 begins with two byte order marks; save it with one or none.',
    );
  }
  if (bare.trim() === '') return refuse('bad-input', '', 'The file is empty.');
  let document: unknown;
  try {
    document = JSON.parse(bare);
  } catch {
    return refuse('bad-input', '', `The file is not JSON: ${whereInText(bare)}.`);
  }
  const read = readAnyVersion(document, steps);
  // Last: what is refused anyway is refused for what is wrong with it, and nothing but a project has paths.
  if (!read.ok) return read;
  const { twice, number } = lostInText(bare);
  if (twice) {
    return refuse(
      'bad-input',
      twice.path.join('.'),
      `"${twice.path.at(-1)}" stands twice here, the second time at ${placeIn(bare, twice.at)}: keep one.`,
    );
  }
  if (number) {
    const place = placeIn(bare, number.at);
    return refuse(
      'bad-input',
      number.path.join('.'),
      `“${shortened(number.written)}” is too small: a computer takes it for 0. It stands at ${place}.`,
    );
  }
  return read;
}

/** The same, where only the project counts. */
export function readProjectText(text: string): Reply<Project> {
  const read = openProjectText(text);
  return read.ok ? ok(read.value.document) : read;
}

/** Checks a document that may be of an older version than those that the page sends. */
export function readAnyVersion(
  document: unknown,
  steps: readonly Step[] = projectSteps,
): Reply<ReadText> {
  const raised = raiseProject(document, steps);
  if (!raised.ok) return raised;
  const { olderVersion } = raised.value;
  const project = readProject(raised.value.document);
  if (!project.ok) return project;
  return ok({ document: project.value, ...(olderVersion === undefined ? {} : { olderVersion }) });
}

const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`;

function placeIn(text: string, at: number): string {
  const before = text.slice(0, at).split('\n');
  return `line ${before.length}, column ${before[before.length - 1]!.length + 1}`;
}

function whereInText(text: string): string {
  const at = jsonErrorAt(text);
  const place = placeIn(text, at);
  return at >= text.length
    ? `it stops in the middle, at ${place}`
    : `something is wrong at ${place}`;
}
