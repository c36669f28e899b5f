/** Gauss-Legendre, eight points: half of them, and their weights. */
const POINTS = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

function panel(f: (x: number) => number, from: number, to: number): number {
  const [half, middle] = [(to - from) / 2, (to + from) / 2];
  let sum = 0;
  POINTS.forEach((point, i) => {
    sum += WEIGHTS[i]! * (f(middle - half * point) + f(middle + half * point));
  });
  return sum * half;
}

/** ∫ of a smooth f from a to b on equal panels, none of the closed forms. */
export function integrate(f: (x: number) => number, a: number, b: number, panels = 64): number {
  const width = (b - a) / panels;
  let sum = 0;
  for (let i = 0; i < panels; i++) sum += panel(f, a + i * width, a + (i + 1) * width);
  return sum;
}

/** ∫ of f over 0 … length, where f changes like exp(−ωx) beside both ends: panels grow away from them. */
export function integrateFromEnds(f: (x: number) => number, length: number, omega: number): number {
  let sum = 0;
  let x = 0;
  let step = Math.min(0.3 / omega, length / 8);
  while (x < length / 2) {
    const to = Math.min(x + step, length / 2);
    sum += panel(f, x, to) + panel(f, length - to, length - x);
    x = to;
    step *= 1.3;
  }
  return sum;
}
