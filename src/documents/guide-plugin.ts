/**
 * The guide as modules of the page: `virtual:guide` lists its pages, `virtual:guide/ID` is one of them,
 * loaded when it is looked at. Pictures become files of the page as any other picture does.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { guidePages } from './pages.ts';
import { type Picture, type Rendered, render } from './render.ts';

const LIST = 'virtual:guide';
const own = (id: string): string => `\0${id}`;

/** Width and height stand at a fixed place of every PNG. */
export function pictureIn(docs: string, path: string): Picture | null {
  if (!existsSync(join(docs, path))) return null;
  const file = readFileSync(join(docs, path));
  const dark = path.replace(/-light\.png$/, '-dark.png');
  return {
    width: file.readUInt32BE(16),
    height: file.readUInt32BE(20),
    dark: dark !== path && existsSync(join(docs, dark)) ? dark : null,
  };
}

/** The document of a page, whatever line ends the checkout has. */
export function renderPage(docs: string, file: string): Rendered {
  const text = readFileSync(join(docs, file), 'utf8').replaceAll('\r\n', '\n');
  return render(file, text, (path) => pictureIn(docs, path));
}

function listModule(docs: string): string {
  const pages = guidePages.map(({ id, file }) => {
    const { title, sections } = renderPage(docs, file);
    const headings = sections
      .filter(({ level }) => level === 2)
      .map(({ anchor, heading }) => ({ anchor, heading }));
    const data = JSON.stringify({ id, title, headings });
    return `{ ...${data}, load: () => import(${JSON.stringify(`${LIST}/${id}`)}) }`;
  });
  return `export const pages = [${pages.join(',\n')}];`;
}

function pageModule(docs: string, file: string): string {
  const { html, sections, pictures } = renderPage(docs, file);
  const imports = pictures.map(
    (path, i) => `import p${i} from ${JSON.stringify(`${join(docs, path)}?url`)};`,
  );
  const filled = pictures.reduce(
    (text, path, i) =>
      text.replaceAll(
        JSON.stringify(`src="picture:${path}"`).slice(1, -1),
        `src=\\"" + p${i} + "\\"`,
      ),
    JSON.stringify(html),
  );
  return `${imports.join('\n')}
export const html = ${filled};
export const sections = ${JSON.stringify(sections)};`;
}

/** @param docs folder of the documents */
export function guidePlugin(docs: string): Plugin {
  return {
    name: 'guide',
    resolveId: (id) => (id === LIST || id.startsWith(`${LIST}/`) ? own(id) : undefined),
    load(id) {
      if (id === own(LIST)) {
        for (const { file } of guidePages) this.addWatchFile(join(docs, file));
        return listModule(docs);
      }
      const page = guidePages.find((one) => id === own(`${LIST}/${one.id}`));
      return page ? pageModule(docs, page.file) : undefined;
    },
  };
}
