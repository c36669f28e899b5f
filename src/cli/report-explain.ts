/** The answer of `explain`: the working of a figure, card by card. */
import type { Joint } from '../shared/project.ts';
import type { Card, CardValue, Working } from '../shared/reports.ts';
import { sentence, signed } from '../shared/words.ts';
import { paragraph, table } from './layout.ts';
import { marked, painter } from './paint.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const DIGITS = 5;

/** Powers of ten only where a plain figure would be long. */
function written(value: number): string {
  const size = Math.abs(value);
  const plain = size === 0 || (size >= 1e-4 && size < 1e7);
  const text = plain
    ? String(Number(value.toPrecision(DIGITS)))
    : value.toExponential(DIGITS - 1).replace('e+', 'e');
  return text.replace('-', '−').replace('e-', 'e−');
}

const quantity = ({ value, unit }: CardValue): string =>
  unit === '' ? written(value) : `${written(value)} ${unit}`;

function cardText(card: Card, number: number, width: number): string {
  const { title, statement, formula, filled, values, result, source, domain } = card;
  const indent = '   ';
  const line = (text: string, mark = ''): string => paragraph(text, width, indent + mark);
  const rows = values.map((value) => [
    { text: value.symbol },
    { text: quantity(value) },
    { text: value.label },
  ]);
  const columns = [{ title: '' }, { title: '' }, { title: '', least: 20 }];
  // Title and rule of the table have nothing to say here.
  const listed = table(columns, rows, width - indent.length)
    .split('\n')
    .slice(2)
    .map((row) => indent + row)
    .join('\n');
  return [
    paragraph(title, width, `${number}. `),
    line(statement),
    line(formula),
    line(filled),
    line(`${result.symbol} = ${quantity(result)}, ${result.label}`),
    ...(values.length > 0 ? [listed] : []),
    line(source, 'Source: '),
    ...domain.map(({ text, inside }) => line(text, inside ? 'inside:  ' : 'OUTSIDE: ')),
  ].join('\n');
}

export function explainText(working: Working, joint: Joint, paper: Paper): string {
  const { width } = paper;
  const { title, where, margin, cards } = working;
  const paint = painter(paper.colour);
  return parts(
    [
      paragraph(`${joint.name}: ${title}.`, width),
      paragraph(sentence(where), width),
      ...(margin
        ? [
            `${paint(margin.state)(marked(margin.state))} ${signed(margin.margin)}${margin.remark === '' ? '' : `: ${margin.remark}`}`,
          ]
        : []),
    ].join('\n'),
    ...cards.map((card, i) => cardText(card, i + 1, width)),
    margin?.typical
      ? paragraph('Typical properties stand behind it: replace them by your own.', width, '* ')
      : '',
    margin ? flagLines(margin.flags, width) : '',
    caution(width),
  );
}
