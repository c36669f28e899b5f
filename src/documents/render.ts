/**
 * A document as the program shows it: plain HTML without styles, scripts or addresses of the world, its
 * links leading to pages of the guide, its text by headings for the search. Done when the program is built.
 */
import { posix } from 'node:path';
import { Marked, type Token, type Tokens } from 'marked';
import { guidePages } from './pages.ts';

export interface Section {
  /** Empty for what stands before the first heading. */
  readonly anchor: string;
  readonly heading: string;
  readonly level: number;
  readonly text: string;
}

export interface Rendered {
  readonly title: string;
  /** Pictures stand in it as `picture:PATH`, under `docs`. */
  readonly html: string;
  readonly sections: readonly Section[];
  /** Under `docs`, each once. */
  readonly pictures: readonly string[];
}

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** The same at night, where there is one. */
  readonly dark: string | null;
}

/** Of a picture under `docs`; null where it is not made yet: its words stand for it then. */
export type PictureAt = (path: string) => Picture | null;

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** As forges make them, so that a link works there and here. */
export const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replaceAll(/\s/g, '-');

/** `&lt;` and the like, which text tokens carry. */
const unescaped = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', '’')
    .replaceAll('&amp;', '&');

/** The words of a piece of the document, without its marks. */
function plain(token: Token): string {
  switch (token.type) {
    case 'html':
    case 'image':
    case 'space':
    case 'hr':
      return '';
    case 'table': {
      const { header, rows } = token as Tokens.Table;
      const line = (cells: readonly Tokens.TableCell[]): string =>
        cells.map(({ tokens }) => tokens.map(plain).join('')).join(' ');
      return [header, ...rows].map(line).join(' ');
    }
    case 'list':
      return (token as Tokens.List).items.map((item) => item.tokens.map(plain).join(' ')).join(' ');
    case 'br':
      return ' ';
    default: {
      const inner = 'tokens' in token ? token.tokens : undefined;
      return inner ? inner.map(plain).join('') : unescaped('text' in token ? token.text : '');
    }
  }
}

const tidy = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

interface Anchored {
  readonly anchors: ReadonlyMap<Token, string>;
  readonly sections: readonly Section[];
}

function sectionsOf(tokens: readonly Token[]): Anchored {
  const anchors = new Map<Token, string>();
  const taken = new Map<string, number>();
  const sections: { anchor: string; heading: string; level: number; text: string }[] = [];
  for (const token of tokens) {
    if (token.type === 'heading') {
      const heading = tidy((token.tokens ?? []).map(plain).join(''));
      const own = slug(heading);
      const times = taken.get(own) ?? 0;
      taken.set(own, times + 1);
      const anchor = times === 0 ? own : `${own}-${times}`;
      anchors.set(token, anchor);
      sections.push({ anchor, heading, level: (token as Tokens.Heading).depth, text: '' });
    } else {
      if (sections.length === 0) sections.push({ anchor: '', heading: '', level: 1, text: '' });
      const last = sections.at(-1)!;
      last.text = tidy(`${last.text} ${plain(token)}`);
    }
  }
  return { anchors, sections };
}

/** A path as it stands in a document to one under `docs`. */
const under = (file: string, path: string): string =>
  posix.normalize(posix.join(posix.dirname(file), path));

export function render(file: string, text: string, pictureAt: PictureAt): Rendered {
  const pictures = new Set<string>();
  const marked = new Marked();
  const tokens = marked.lexer(text);
  const { anchors, sections } = sectionsOf(tokens);
  const img = (path: string, kind: string, { width, height }: Picture, alt: string): string => {
    pictures.add(path);
    return `<img class="${kind}" src="picture:${path}" alt="${alt}" width="${width}" height="${height}" loading="lazy">`;
  };
  marked.use({
    renderer: {
      heading(token) {
        const anchor = anchors.get(token) ?? '';
        const inner = this.parser.parseInline(token.tokens);
        return `<h${token.depth} id="guide-${anchor}" tabindex="-1">${inner}</h${token.depth}>\n`;
      },
      link({ href, tokens: inner }) {
        const words = this.parser.parseInline(inner);
        // Nothing leaves the program: an address is there to be read.
        if (/^[a-z]+:/i.test(href)) return `${words} (${escaped(href)})`;
        const [path = '', anchor = ''] = href.split('#');
        const target = path === '' ? file : under(file, path);
        const page = guidePages.find((one) => one.file === target);
        if (!page) return `<span class="not-carried">${words}</span>`;
        return `<a href="#${page.id}/${escaped(anchor)}" data-page="${page.id}" data-anchor="${escaped(anchor)}">${words}</a>`;
      },
      image({ href, text: said }) {
        const path = under(file, href);
        const picture = pictureAt(path);
        const alt = escaped(said.replaceAll(/\s+/g, ' '));
        if (picture === null) return `<span class="not-carried">${alt}</span>`;
        if (picture.dark === null) return img(path, 'picture', picture, alt);
        return `${img(path, 'picture is-day', picture, alt)}${img(picture.dark, 'picture is-night', picture, alt)}`;
      },
      codespan({ text: said }) {
        // A formula is read, a name is typed: each in its own face.
        const kind = /[=·√−²³∫Σ]/.test(said) ? ' class="formula"' : '';
        return `<code${kind}>${escaped(said)}</code>`;
      },
      code({ text: lines, lang }) {
        const kind = lang ? 'listing' : 'equation';
        return `<pre class="${kind}" tabindex="0"><code>${escaped(lines)}</code></pre>\n`;
      },
      table({ header, rows }) {
        const cell = ({ tokens: inner }: Tokens.TableCell, tag: string): string =>
          `<${tag}>${this.parser.parseInline(inner)}</${tag.split(' ')[0]}>`;
        const head = header.map((one) => cell(one, 'th scope="col"')).join('');
        const body = rows.map((row) => `<tr>${row.map((one) => cell(one, 'td')).join('')}</tr>`);
        return `<div class="wide" tabindex="0"><table><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table></div>\n`;
      },
      html({ text: raw }) {
        if (/^\s*<!--[\s\S]*-->\s*$/.test(raw)) return '';
        throw new Error(`${file}: HTML is not taken over: ${raw}`);
      },
    },
  });
  const html = marked.parser(tokens);
  const title = sections.find(({ level }) => level === 1)?.heading ?? '';
  if (title === '') throw new Error(`${file} has no title.`);
  return { title, html, sections, pictures: [...pictures] };
}
