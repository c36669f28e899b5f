/**
 * Reads the plain formulas of the working cards, such as `tau_max = F / (2 pi R) * sqrt(1 + beta^2)`,
 * into a tree that can be typeset. It reads, it does not compute: figures come with the card.
 */
export type BinaryOperator = '+' | '-' | '*' | '/' | '^';
export type Relation = '=' | '<' | '>' | '≤' | '≥' | '≈';

export type Term =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'minus'; readonly of: Term }
  | { readonly kind: 'group'; readonly of: Term }
  | {
      readonly kind: 'binary';
      readonly operator: BinaryOperator;
      readonly left: Term;
      readonly right: Term;
    }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly Term[] }
  | {
      readonly kind: 'relation';
      readonly relation: Relation;
      readonly left: Term;
      readonly right: Term;
    };

interface Token {
  readonly kind: 'number' | 'name' | 'sign';
  readonly text: string;
}

const spellings: Readonly<Record<string, string>> = {
  '−': '-',
  '·': '*',
  '×': '*',
  '÷': '/',
  '<=': '≤',
  '>=': '≥',
  '==': '=',
  '√': 'sqrt',
};

const TOKEN =
  /\s*(?:(?<number>\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)|(?<name>[\p{L}_][\p{L}\p{Nd}_]*)|(?<sign><=|>=|==|[-−+*/^=<>≤≥≈(),·×÷√²³]))/uy;

function tokensOf(text: string): Token[] | null {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  const end = text.trimEnd().length;
  while (TOKEN.lastIndex < end) {
    const groups = TOKEN.exec(text)?.groups;
    if (!groups) return null;
    const { number, name, sign } = groups;
    if (number !== undefined) tokens.push({ kind: 'number', text: number });
    else if (name !== undefined) tokens.push({ kind: 'name', text: name });
    else if (sign !== undefined) {
      const text = spellings[sign] ?? sign;
      tokens.push({ kind: text === 'sqrt' ? 'name' : 'sign', text });
    }
  }
  return tokens;
}

const isRelation = (text: string): text is Relation => '=<>≤≥≈'.includes(text) && text !== '';

class Reader {
  #at = 0;
  readonly #tokens: readonly Token[];
  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  whole(): Term | null {
    const term = this.#relation();
    return this.#at === this.#tokens.length ? term : null;
  }

  #next(): Token | undefined {
    return this.#tokens[this.#at];
  }
  /** The sign that comes next, empty when none does. */
  #sign(): string {
    const token = this.#next();
    return token?.kind === 'sign' ? token.text : '';
  }
  #take(sign: string): boolean {
    if (this.#sign() !== sign) return false;
    this.#at += 1;
    return true;
  }

  #relation(): Term | null {
    let left = this.#sum();
    for (let sign = this.#sign(); isRelation(sign); sign = this.#sign()) {
      this.#at += 1;
      const right = this.#sum();
      if (!left || !right) return null;
      left = { kind: 'relation', relation: sign, left, right };
    }
    return left;
  }

  #sum(): Term | null {
    let left = this.#product();
    for (let sign = this.#sign(); sign === '+' || sign === '-'; sign = this.#sign()) {
      this.#at += 1;
      const right = this.#product();
      if (!left || !right) return null;
      left = { kind: 'binary', operator: sign, left, right };
    }
    return left;
  }

  #product(): Term | null {
    let left = this.#beside();
    for (let sign = this.#sign(); sign === '*' || sign === '/'; sign = this.#sign()) {
      this.#at += 1;
      // A fraction of two plain figures is a figure: `1/2 m` is half of m.
      const isFigure = sign === '/' && left?.kind === 'number' && this.#next()?.kind === 'number';
      const right: Term | null = isFigure ? this.#power() : this.#beside();
      if (!left || !right) return null;
      left = { kind: 'binary', operator: sign, left, right };
      if (isFigure) left = this.#besides(left);
    }
    return left;
  }

  /** Factors that stand beside each other, `2 pi R`, hold together more than a written `*` or `/`. */
  #beside(): Term | null {
    return this.#besides(this.#signed());
  }

  #besides(first: Term | null): Term | null {
    let left = first;
    while (left) {
      const next = this.#next();
      const opens = next?.kind === 'name' || (next?.kind === 'sign' && next.text === '(');
      if (!opens) return left;
      const right = this.#power();
      left = right && { kind: 'binary', operator: '*', left, right };
    }
    return null;
  }

  #signed(): Term | null {
    if (this.#take('+')) return this.#signed();
    if (!this.#take('-')) return this.#power();
    const of = this.#signed();
    return of && { kind: 'minus', of };
  }

  #power(): Term | null {
    const base = this.#atom();
    if (!base) return null;
    for (const [sign, text] of [
      ['²', '2'],
      ['³', '3'],
    ] as const) {
      if (this.#take(sign)) {
        return { kind: 'binary', operator: '^', left: base, right: { kind: 'number', text } };
      }
    }
    if (!this.#take('^')) return base;
    const right = this.#signed();
    return right && { kind: 'binary', operator: '^', left: base, right };
  }

  #atom(): Term | null {
    const token = this.#next();
    if (!token) return null;
    if (this.#take('(')) {
      const of = this.#relation();
      return of && this.#take(')') ? { kind: 'group', of } : null;
    }
    if (token.kind === 'sign') return null;
    this.#at += 1;
    if (token.kind === 'number') return { kind: 'number', text: token.text };
    return this.#take('(') ? this.#call(token.text) : { kind: 'name', text: token.text };
  }

  #call(name: string): Term | null {
    const args: Term[] = [];
    do {
      const arg = this.#relation();
      if (!arg) return null;
      args.push(arg);
    } while (this.#take(','));
    return this.#take(')') ? { kind: 'call', name, args } : null;
  }
}

/** Null where it is not such a formula: it is then shown as it was written. */
export function parseFormula(text: string): Term | null {
  const tokens = tokensOf(text);
  return tokens && tokens.length > 0 ? new Reader(tokens).whole() : null;
}

/** Without the brackets around the whole: a fraction bar or a root holds things together by itself. */
export const bare = (term: Term): Term => (term.kind === 'group' ? bare(term.of) : term);
