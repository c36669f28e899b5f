/** The answer of `springs`: one row for each spring at each temperature and moisture. */
import type { SpringsReport } from '../shared/reports-springs.ts';
import {
  conventionWords,
  makingWords,
  springUnits,
  springWords,
  stateWords,
  stiffnessFigure,
  typicalWords,
} from '../shared/springs-text.ts';
import { lengthText } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { caution, flagLines, type Paper, parts } from './report.ts';

const right = (title: string): Column => ({ title, align: 'right' });
const cell = (text: string): Cell => ({ text });

const columns = (part: string): readonly Column[] => [
  { title: 'State' },
  { title: 'Cases', least: 8 },
  { title: 'Spring' },
  right('At the mouth'),
  right('At the root'),
  right(`${part} mm`),
  { title: 'Unit' },
];

function rows({ states }: SpringsReport): Cell[][] {
  return states.flatMap((state) => {
    const springs = state.springs.map(({ kind, stiffness, atRoot, tubeLength }, i) => [
      cell(i === 0 ? stateWords(state) : ''),
      cell(i === 0 ? state.names.join(', ') : ''),
      cell(springWords[kind]),
      cell(stiffnessFigure(stiffness)),
      cell(atRoot === null ? 'none' : stiffnessFigure(atRoot)),
      cell(significant(tubeLength)),
      cell(springUnits[kind].stiffness),
    ]);
    const across = ['', '', 'across', stiffnessFigure(state.shear), '', '', 'N/mm'];
    return [...springs, across.map(cell)];
  });
}

export function springsText(report: SpringsReport, paper: Paper): string {
  const { width } = paper;
  const part = report.flat ? 'Strip' : 'Tube';
  const [state] = report.states;
  const bare = (state?.springs ?? []).map(
    ({ kind, tube }) =>
      `${springUnits[kind].name} ${stiffnessFigure(tube)} ${springUnits[kind].tube}`,
  );
  return parts(
    paragraph(
      `${report.name}: ${report.description}, overlap ${lengthText(report.overlap)}.`,
      width,
    ),
    table(columns(part), rows(report), width),
    paragraph(`Bare ${part.toLowerCase()}: ${bare.join(', ')}.`, width),
    conventionWords(report)
      .map((text) => paragraph(text, width))
      .join('\n'),
    paragraph(makingWords(report), width),
    report.typical ? paragraph(typicalWords(report), width) : '',
    flagLines(report.flags, width),
    caution(width),
  );
}
