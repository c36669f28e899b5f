/** Coupons under cycles, as `basis` tells them. */
import { fewFailures } from '../shared/life-words.ts';
import type { LifeSetReport } from '../shared/reports-coupons.ts';
import { environment } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Column, paragraph, table } from './layout.ts';
import { parts } from './report.ts';

/** 1e7 as 10^7, and what is not a whole power with two figures. */
const cycles = (value: number): string => value.toExponential(1).replace('e+', '·10^');

const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

export function lifeText(set: LifeSetReport, width: number): string {
  const { name, specimen, adhesive, temperature, moisture, gap, ratio, fit, goodman, why } = set;
  const head = `${name}: ${specimen.name}, ${adhesive.name}, ${environment(temperature, moisture)}, gap ${gap} mm, load ratio ${String(ratio).replace('-', '−')}`;
  if (!fit) return parts(paragraph(head, width), paragraph(why, width));
  const columns: readonly Column[] = [
    { title: 'Peak shear over yield', align: 'right' },
    { title: 'Half last, cycles', align: 'right' },
    { title: '90 % last, cycles', align: 'right' },
  ];
  const { curve, bound, deviation, failures, runOuts, longest } = fit;
  const every = Math.max(1, Math.floor((curve.length - 1) / 4));
  const rows = curve.filter((_, i) => i % every === 0);
  const line = bound
    ? `S-N line below the 90 % bound: share = ${bound.coefficient.toPrecision(4)}·n^−${bound.exponent.toPrecision(4)}. Nothing is changed by it; put it in as the adhesive's S-N line if these coupons stand for your joints.`
    : 'Lives do not fall as stress rises: there is no S-N line in these results.';
  const carried = goodman.map(
    ({ ratio: to, factor }) => `${significant(factor)} at ratio ${String(to).replace('-', '−')}`,
  );
  return parts(
    paragraph(head, width),
    paragraph(
      `${some(failures, 'failure')}, ${some(runOuts, 'run-out')}, longest ${cycles(longest)} cycles; scatter of log N ${significant(deviation)}; bound with 95 % confidence.`,
      width,
    ),
    paragraph(fewFailures(fit), width),
    table(
      columns,
      rows.map(({ share, median, bound: allowed }) => [
        { text: significant(share) },
        { text: cycles(median) },
        { text: cycles(allowed) },
      ]),
      width,
    ),
    paragraph(line, width),
    !bound || carried.length === 0
      ? ''
      : paragraph(
          `At other ratios the highest peak shear tested goes with ${carried.join(', ')} of it, as the margins carry it over, an approximation made for metals: test at the ratio of service.`,
          width,
        ),
  );
}
