/** A value of a card: as many figures as mean something, powers of ten only where they are needed. */
import { type JSX, Show } from 'solid-js';

export interface Written {
  readonly text: string;
  /** Of ten; null for a plain figure. */
  readonly power: number | null;
}

const DIGITS = 4;

export function written(value: number): Written {
  const size = Math.abs(value);
  const sign = value < 0 ? '−' : '';
  if (size === 0) return { text: '0', power: null };
  if (size >= 1e-3 && size < 1e6) {
    const decimals = Math.max(0, DIGITS - 1 - Math.floor(Math.log10(size)));
    return { text: sign + String(Number(size.toFixed(decimals))), power: null };
  }
  const [mantissa = '', power = '0'] = size.toExponential(DIGITS - 1).split('e');
  return { text: sign + String(Number(mantissa)), power: Number(power) };
}

const raised: Readonly<Record<string, string>> = { 2: '²', 3: '³', 4: '⁴' };

/** `N/mm^2` as `N/mm²`. */
export const unitText = (unit: string): string =>
  unit.replace(/\^([234])/g, (_, power: string) => raised[power] ?? '');

export function Quantity(props: { readonly value: number; readonly unit: string }): JSX.Element {
  const parts = (): Written => written(props.value);
  return (
    <span class="quantity">
      {parts().text}
      <Show when={parts().power !== null}>
        {' × 10'}
        <sup>{String(parts().power).replace('-', '−')}</sup>
      </Show>
      <Show when={props.unit}>{(unit) => <span class="unit"> {unitText(unit())}</span>}</Show>
    </span>
  );
}
