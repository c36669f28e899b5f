/** From anything to a project, or to one sentence that says what is wrong and where. */
import type { z } from 'zod';
import { PROJECT_FORMAT, type Project, projectShape } from './project.ts';
import { brokenRule } from './project-rules.ts';
import { ok, type Reply, refuse } from './reply.ts';

/** What stands at a path of a document, shortened for a message. */
function valueAt(document: unknown, path: readonly PropertyKey[]): string | null {
  let value: unknown = document;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return null;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') {
    return value.length > 40 ? `"${value.slice(0, 40)}…"` : `"${value}"`;
  }
  return null;
}

function explain(document: unknown, issue: z.core.$ZodIssue): { field: string; message: string } {
  const path = [...issue.path];
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    return {
      field: [...path, key].join('.'),
      message: `"${key.slice(0, 60)}" is not a field here: remove it or correct its name`,
    };
  }
  const found = valueAt(document, path);
  const missing = issue.code === 'invalid_type' && found === null && issue.input === undefined;
  const said = issue.message.charAt(0).toLowerCase() + issue.message.slice(1);
  return {
    field: path.join('.'),
    message: found === null ? (missing ? `missing: ${said}` : said) : `${said}; it is ${found}`,
  };
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

/** Checks the text of a project file. */
export function readProjectText(text: string): Reply<Project> {
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.trim() === '') return refuse('bad-input', '', 'The file is empty.');
  let document: unknown;
  try {
    document = JSON.parse(bare);
  } catch (error) {
    return refuse('bad-input', '', `The file is not JSON: ${whereInText(bare, error)}.`);
  }
  return readProject(document);
}

const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`;

/** The parser's complaint with line and column in place of a character count. */
function whereInText(text: string, error: unknown): string {
  const said = error instanceof Error ? error.message : '';
  const at = /position (\d+)/.exec(said);
  if (!at) return /end of JSON/i.test(said) ? 'it stops in the middle' : 'it cannot be read';
  const before = text.slice(0, Number(at[1])).split('\n');
  return `something is wrong at line ${before.length}, column ${before[before.length - 1]!.length + 1}`;
}
