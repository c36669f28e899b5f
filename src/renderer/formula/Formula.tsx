/**
 * A formula, typeset. Not in MathML: without a mathematical font on the machine a browser leaves the
 * root sign out and does not stretch brackets, and then the page shows a different formula. Fractions
 * and roots are therefore drawn by the style sheet; `role="math"` says the whole in words.
 */
import { createMemo, For, type JSX, Show } from 'solid-js';
import { bare, parseFormula, type Term } from './parse.ts';
import { joiner, type Ratio as RatioOf, ratiosOf } from './ratios.ts';
import { say } from './say.ts';
import { symbolParts } from './symbols.ts';

const upright: Readonly<Record<string, string>> = { log: 'ln', log10: 'log' };

export function SymbolOf(props: { readonly name: string }): JSX.Element {
  const parts = createMemo(() => symbolParts(props.name));
  return (
    <span class="f-symbol">
      <span class={parts().isLetter ? 'f-letter' : 'f-word'}>{parts().base}</span>
      <Show when={parts().sub}>{(sub) => <sub>{sub()}</sub>}</Show>
    </span>
  );
}

/** Higher than a line: brackets around it must be drawn as high. */
const isTall = (term: Term): boolean => {
  switch (term.kind) {
    case 'binary':
      return term.operator === '/' || isTall(term.left) || isTall(term.right);
    case 'relation':
      return isTall(term.left) || isTall(term.right);
    case 'minus':
    case 'group':
      return isTall(term.of);
    case 'call':
      return term.args.some(isTall);
    default:
      return false;
  }
};

const needsFence = (term: Term): boolean =>
  term.kind === 'binary' || term.kind === 'minus' || term.kind === 'relation';

function Fence(props: { readonly of: Term; readonly children: JSX.Element }): JSX.Element {
  return (
    <Show when={isTall(props.of)} fallback={<>({props.children})</>}>
      <span class="f-fence">{props.children}</span>
    </Show>
  );
}

function Scientific(props: { readonly text: string }): JSX.Element {
  const parts = () => props.text.toLowerCase().split('e');
  return (
    <Show when={parts()[1]} fallback={props.text}>
      {(power) => (
        <span class="f-number">
          {parts()[0]}
          {' · 10'}
          <sup>{power().replace('+', '').replace('-', '−')}</sup>
        </span>
      )}
    </Show>
  );
}

function Call(props: { readonly name: string; readonly args: readonly Term[] }): JSX.Element {
  const [first] = props.args;
  if (first && (props.name === 'sqrt' || props.name === 'cbrt')) {
    return (
      <span class="f-root">
        <Show when={props.name === 'cbrt'}>
          <sup class="f-index">3</sup>
        </Show>
        <svg class="f-radical" viewBox="0 0 10 20" preserveAspectRatio="none" aria-hidden="true">
          <path d="M0.5 12 L2.5 11 L5.5 19.4 L10 0.6" vector-effect="non-scaling-stroke" />
        </svg>
        <span class="f-radicand">
          <Typeset term={bare(first)} />
        </span>
      </span>
    );
  }
  if (first && props.name === 'exp') {
    return (
      <span class="f-symbol">
        <span class="f-word">e</span>
        <sup>
          <Typeset term={bare(first)} small />
        </sup>
      </span>
    );
  }
  if (first && props.name === 'abs') {
    return (
      <span class="f-bars">
        <Typeset term={bare(first)} />
      </span>
    );
  }
  const list = (
    <For each={props.args}>
      {(arg, i) => (
        <>
          {i() > 0 ? ', ' : ''}
          <Typeset term={bare(arg)} />
        </>
      )}
    </For>
  );
  const tall = props.args.find(isTall);
  return (
    <span class="f-call">
      <SymbolOf name={upright[props.name] ?? props.name} />
      <Show when={tall} fallback={<>({list})</>}>
        <span class="f-fence">{list}</span>
      </Show>
    </span>
  );
}

/** Factors beside each other: letters need no sign between them. */
function Factors(props: {
  readonly of: readonly Term[];
  readonly small: boolean;
  /** A lone factor over or under a fraction line needs no brackets. */
  readonly inFraction?: boolean;
}): JSX.Element {
  return (
    <For each={props.of}>
      {(factor, i) => {
        const before = props.of[i() - 1];
        return (
          <>
            {before ? joiner(before, factor) : ''}
            <Typeset
              term={props.inFraction && props.of.length === 1 ? bare(factor) : factor}
              small={props.small}
            />
          </>
        );
      }}
    </For>
  );
}

function Ratio(props: { readonly ratio: RatioOf; readonly small: boolean }): JSX.Element {
  return (
    <Show
      when={props.ratio.under.length > 0}
      fallback={<Factors of={props.ratio.over} small={props.small} />}
    >
      <span class="f-fraction">
        <span>
          <Factors of={props.ratio.over} small={props.small} inFraction />
        </span>
        <span>
          <Factors of={props.ratio.under} small={props.small} inFraction />
        </span>
      </span>
    </Show>
  );
}

function Binary(props: {
  readonly term: Term & { kind: 'binary' };
  readonly small: boolean;
}): JSX.Element {
  const { operator, left, right } = props.term;
  if (operator === '^') {
    const base = needsFence(left) ? <Fence of={left}>{<Typeset term={left} />}</Fence> : null;
    return (
      <span class="f-symbol">
        {base ?? <Typeset term={left} small={props.small} />}
        <sup>
          <Typeset term={bare(right)} small />
        </sup>
      </span>
    );
  }
  if (operator === '/' && props.small) {
    return (
      <>
        <Typeset term={left} small />/<Typeset term={right} small />
      </>
    );
  }
  if (operator === '+' || operator === '-') {
    return (
      <>
        <Typeset term={left} small={props.small} />
        {operator === '+' ? ' + ' : ' − '}
        <Typeset term={right} small={props.small} />
      </>
    );
  }
  const ratios = props.small ? [{ over: [left, right], under: [] }] : ratiosOf(props.term);
  return (
    <For each={ratios}>
      {(ratio, i) => (
        <>
          {i() > 0 ? ' · ' : ''}
          <Ratio ratio={ratio} small={props.small} />
        </>
      )}
    </For>
  );
}

function Typeset(props: { readonly term: Term; readonly small?: boolean }): JSX.Element {
  const { term } = props;
  const small = (): boolean => props.small ?? false;
  switch (term.kind) {
    case 'number':
      return <Scientific text={term.text} />;
    case 'name':
      return <SymbolOf name={term.text} />;
    case 'minus':
      return (
        <>
          −<Typeset term={term.of} small={small()} />
        </>
      );
    case 'group':
      return (
        <Fence of={small() ? { kind: 'number', text: '' } : term.of}>
          {<Typeset term={term.of} small={small()} />}
        </Fence>
      );
    case 'call':
      return <Call name={term.name} args={term.args} />;
    case 'binary':
      return <Binary term={term} small={small()} />;
    case 'relation':
      return (
        <>
          <Typeset term={term.left} />
          {` ${term.relation} `}
          <Typeset term={term.right} />
        </>
      );
  }
}

export function Formula(props: { readonly text: string }): JSX.Element {
  const term = createMemo(() => parseFormula(props.text));
  return (
    <Show when={term()} keyed fallback={<code class="formula is-plain">{props.text}</code>}>
      {(parsed) => (
        <span class="formula" role="math" aria-label={say(parsed)}>
          <Typeset term={parsed} />
        </span>
      )}
    </Show>
  );
}
