/**
 * The licence and the notices of the packages that are built in, as modules of the page: `virtual:legal/licence`
 * and `virtual:legal/notices`, loaded when they are opened. So both carriers show them without a network.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Marked } from 'marked';
import type { Plugin } from 'vite';

export interface LegalText {
  readonly title: string;
  /** Before the first part; empty where there is nothing before it. */
  readonly before: string;
  readonly parts: readonly { readonly heading: string; readonly text: string }[];
}

const NAME = 'virtual:legal/';
const own = (id: string): string => `\0${id}`;
const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

export function licenceText(text: string): LegalText {
  const [heading = '', ...lines] = text.trim().split('\n');
  return { title: 'Licence', before: '', parts: [{ heading, text: lines.join('\n').trim() }] };
}

/** As `src/package/notices.mjs` writes them: a heading with the packages, their licence as it stands. */
export function noticesOf(markdown: string): LegalText {
  let title = '';
  const before: string[] = [];
  const parts: { heading: string; text: string }[] = [];
  for (const token of new Marked().lexer(markdown)) {
    if (token.type === 'space') continue;
    if (token.type === 'heading' && token.depth === 1) title = token.text;
    else if (token.type === 'heading') parts.push({ heading: token.text, text: '' });
    else if (token.type === 'code' && parts.length > 0) parts.at(-1)!.text = token.text;
    else if (token.type === 'paragraph' && parts.length === 0) before.push(oneLine(token.text));
    else throw new Error(`The notices hold what is not shown: ${token.raw}`);
  }
  return { title, before: before.join(' ').replaceAll('`', ''), parts };
}

/** @param root of the project */
export function legalPlugin(root: string): Plugin {
  const texts: Readonly<Record<string, readonly [string, (text: string) => LegalText]>> = {
    licence: [join(root, 'LICENSE'), licenceText],
    notices: [join(root, 'docs', 'third-party-notices.md'), noticesOf],
  };
  return {
    name: 'legal',
    resolveId: (id) =>
      id.startsWith(NAME) && id.slice(NAME.length) in texts ? own(id) : undefined,
    load(id) {
      const found = id.startsWith(own(NAME)) ? texts[id.slice(own(NAME).length)] : undefined;
      if (!found) return undefined;
      const [file, read] = found;
      this.addWatchFile(file);
      const text = readFileSync(file, 'utf8').replaceAll('\r\n', '\n');
      return `export const legal = ${JSON.stringify(read(text))};`;
    },
  };
}
