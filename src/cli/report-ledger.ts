/** The answer of `ledger`: a table for each adhesive, then what must be said of it, then its sources. */
import {
  allowableText,
  gapsText,
  ledgerLines,
  ledgerOthers,
  ledgerSentence,
  lineText,
  offerText,
  rowsText,
  setText,
  sourceWords,
} from '../shared/ledger-words.ts';
import type {
  AdhesiveLedger,
  LedgerEnvironment,
  LedgerReport,
  LedgerUse,
} from '../shared/reports-ledger.ts';
import { environment, sentence } from '../shared/words.ts';
import { significant } from './figures.ts';
import { type Cell, type Column, paragraph, table } from './layout.ts';
import { caution, type Paper, parts } from './report.ts';

const right = (title: string): Column => ({ title, align: 'right' });
const cell = (text: string): Cell => ({ text });
const figure = (value: number | null | undefined): string =>
  value == null ? '–' : significant(value);

const columns: readonly Column[] = [
  { title: 'Environment' },
  right('Rows'),
  right('×env.'),
  right('×age'),
  right('×scatter'),
  right('Gap, mm'),
  right('×gap'),
  right('=Yield'),
  right('Peel'),
  right('Joints'),
  { title: 'Rests on', least: 16 },
];

const placeOf = ({ temperature, moisture }: LedgerEnvironment): string =>
  environment(temperature, moisture);

function rows(one: LedgerEnvironment, isWhole: boolean): Cell[][] {
  const [allowable] = one.allowables;
  return ledgerLines(one.gaps).map((line, i) => {
    const { factors, strength } = line;
    const scatter = `${figure(factors?.scatter)}${allowable ? ` ${allowable.taken.basis}` : ''}`;
    const first = [
      placeOf(one),
      figure(one.table?.shearYield),
      figure(factors?.environment),
      figure(factors?.ageing),
      scatter,
    ];
    return [
      ...(i === 0 ? first : first.map(() => '')),
      gapsText(line.gaps, isWhole),
      figure(factors?.gap),
      figure(strength?.shearYield),
      figure(strength?.peelStrength),
      line.joints.length === 0 ? '–' : String(line.joints.length),
      [...(i === 0 ? [one.restsOn || one.why] : []), lineText(line)].filter(Boolean).join('; '),
    ].map(cell);
  });
}

const usesText = (uses: readonly LedgerUse[]): string =>
  uses.map(({ name, cases }) => `${name} (${cases.length})`).join(', ');

/** What else is to be said of an environment, a line for each. */
function remarks(one: LedgerEnvironment): readonly string[] {
  const said = [
    ...[rowsText(one)].filter(Boolean).map(sentence),
    ...one.allowables.map((each) =>
      `${each.taken.setName}: ${allowableText(each)}. ${setText(each)}`.trim(),
    ),
    ...one.offers.map((offer) => `Not taken: ${offer.name}, ${offerText(offer)}`),
    ...(one.uses.length === 0 ? [] : [`Used by ${usesText(one.uses)}.`]),
  ];
  return said.map((words) => `${placeOf(one)}: ${words}`);
}

function sources(adhesive: AdhesiveLedger, width: number): string {
  const heads: readonly Column[] = [
    { title: 'Of the adhesive' },
    { title: 'Value', least: 20 },
    { title: 'What it is', least: 14 },
    { title: 'Source', least: 20 },
  ];
  return table(
    heads,
    ledgerOthers(adhesive).map((other) =>
      [other.what, other.value, sourceWords(other), other.source?.text ?? ''].map(cell),
    ),
    width,
  );
}

function adhesiveText(adhesive: AdhesiveLedger, { width }: Paper): string {
  const { name, joints, environments, leftOut } = adhesive;
  const used =
    joints === 0 ? 'no joint is bonded with it' : `${joints} joint${joints === 1 ? '' : 's'}`;
  const isWhole = leftOut === 0;
  return parts(
    paragraph(`${name}: ${used}. Stresses in MPa.`, width),
    table(
      columns,
      environments.flatMap((one) => rows(one, isWhole)),
      width,
    ),
    isWhole
      ? ''
      : paragraph(`${leftOut} lines that no joint uses are left out: there are too many.`, width),
    environments
      .flatMap(remarks)
      .map((words) => paragraph(words, width, '  '))
      .join('\n'),
    sources(adhesive, width),
  );
}

export const ledgerText = (report: LedgerReport, paper: Paper): string =>
  parts(
    paragraph(ledgerSentence(report.adhesives), paper.width),
    ...report.adhesives.map((adhesive) => adhesiveText(adhesive, paper)),
    report.refused
      .map(({ name, error }) =>
        paragraph(`${name} cannot be computed: ${sentence(error.message)}`, paper.width, '! '),
      )
      .join('\n'),
    paragraph(
      'Yield and peel as margins use them, before the fitting factor. In brackets the number of cases.',
      paper.width,
    ),
    caution(paper.width),
  );
