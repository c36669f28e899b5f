/** How the names in a formula are written: Greek letters, and what follows an underscore set lower. */
const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Gamma: 'Γ',
  Delta: 'Δ',
  Theta: 'Θ',
  Lambda: 'Λ',
  Pi: 'Π',
  Sigma: 'Σ',
  Phi: 'Φ',
  Psi: 'Ψ',
  Omega: 'Ω',
};

export interface SymbolParts {
  readonly base: string;
  readonly sub: string;
  /** One letter stands for a quantity and slants; a word does not. */
  readonly isLetter: boolean;
}

/** A letter with its index written behind it, `E1` or `G13`, and a difference, `DeltaT`. */
const INDEXED = /^(?<letter>\p{L})(?<index>\p{N}+)$/u;
const DIFFERENCE = /^(?:Delta|delta|d)(?<of>\p{Lu}\p{N}?)$/u;

function baseOf(name: string): { base: string; index: string } {
  const whole = greek[name];
  if (whole) return { base: whole, index: '' };
  const { letter, index } = INDEXED.exec(name)?.groups ?? {};
  if (letter && index) return { base: letter, index };
  const withIndex = /^(?<word>\p{L}+?)(?<index>\p{N}+)$/u.exec(name)?.groups;
  const letterNamed = greek[withIndex?.word ?? ''];
  if (letterNamed) return { base: letterNamed, index: withIndex?.index ?? '' };
  const of = DIFFERENCE.exec(name)?.groups?.of;
  if (of) {
    const sign = name.startsWith('Delta') ? 'Δ' : name.startsWith('delta') ? 'δ' : 'd';
    return { base: sign + of, index: '' };
  }
  return { base: name, index: '' };
}

export function symbolParts(name: string): SymbolParts {
  const [first = '', ...rest] = name.split('_');
  const { base, index } = baseOf(first);
  const below = rest.map((part) => greek[part] ?? part).filter((part) => part !== '');
  return {
    base,
    sub: [index, ...below].filter((part) => part !== '').join(','),
    isLetter: [...base].length === 1 || /^[Δδd]\p{Lu}$/u.test(base),
  };
}

/** The symbol in a line of plain text: `τ max`. */
export const symbolText = (name: string): string => {
  const { base, sub } = symbolParts(name);
  return sub === '' ? base : `${base} ${sub.replaceAll(',', ' ')}`;
};
