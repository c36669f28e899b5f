/** ∫ of a smooth f from a to b: Gauss-Legendre on equal panels, none of the closed forms. */
export function integrate(f: (x: number) => number, a: number, b: number, panels = 64): number {
  const points = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
  const weights = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];
  const half = (b - a) / panels / 2;
  let sum = 0;
  for (let i = 0; i < panels; i++) {
    const middle = a + (2 * i + 1) * half;
    points.forEach((point, j) => {
      sum += weights[j]! * (f(middle - half * point) + f(middle + half * point));
    });
  }
  return sum * half;
}
