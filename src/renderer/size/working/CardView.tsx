/** One equation with what went into it. The sheet on paper shows the same cards. */
import { For, type JSX, Show } from 'solid-js';
import type { Card } from '../../../shared/reports.ts';
import { Formula, SymbolOf } from '../../formula/Formula.tsx';
import { DomainMark } from '../../parts/DomainMark.tsx';
import { Quantity } from './Quantity.tsx';

/** A symbol may be a formula of its own, such as `F / b`. */
function CardSymbol(props: { readonly symbol: string }): JSX.Element {
  return (
    <Show when={/^[\p{L}_][\p{L}\p{Nd}_]*$/u.test(props.symbol)} fallback={props.symbol}>
      <SymbolOf name={props.symbol} />
    </Show>
  );
}

export function CardView(props: { readonly card: Card }): JSX.Element {
  return (
    <article class="card" data-card={props.card.id}>
      <h3>{props.card.title}</h3>
      <p class="card-statement">{props.card.statement}</p>
      <p class="card-formula">
        <Formula text={props.card.formula} />
      </p>
      <p class="card-formula is-filled">
        <Formula text={props.card.filled} />
      </p>
      <p class="card-result">
        <span class="card-symbol">
          <CardSymbol symbol={props.card.result.symbol} />
        </span>
        {' = '}
        <strong>
          <Quantity value={props.card.result.value} unit={props.card.result.unit} />
        </strong>
        <span class="card-label">{props.card.result.label}</span>
      </p>
      <Show when={props.card.values.length > 0}>
        <table class="card-values">
          <caption class="hidden">Values in {props.card.title}</caption>
          <thead class="hidden">
            <tr>
              <th scope="col">Symbol</th>
              <th scope="col">Meaning</th>
              <th scope="col">Value</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.card.values}>
              {(value) => (
                <tr>
                  <th scope="row">
                    <CardSymbol symbol={value.symbol} />
                  </th>
                  <td>{value.label}</td>
                  <td class="card-value">
                    <Quantity value={value.value} unit={value.unit} />
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
      <Show when={props.card.domain.length > 0}>
        <ul class="card-domain" aria-label={`Where ${props.card.title} holds`}>
          <For each={props.card.domain}>
            {({ text, inside }) => (
              <li classList={{ 'is-outside': !inside }}>
                <DomainMark inside={inside} />
                <span>
                  <span class="domain-word">{inside ? 'inside:' : 'outside:'}</span> {text}
                </span>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <p class="card-source">{props.card.source}</p>
    </article>
  );
}
