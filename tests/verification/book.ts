/** The verification book: its topics in order, and every file that it is made of. */
import { type Check, isCurve, type Topic } from './case.ts';
import { coupons } from './cases/coupons.ts';
import { finiteElements } from './cases/finite-elements.ts';
import { flatLaps } from './cases/flat-laps.ts';
import { laminates } from './cases/laminates.ts';
import { lapsCompared } from './cases/laps-compared.ts';
import { layeredAcceptance } from './cases/layered-acceptance.ts';
import { layeredReference } from './cases/layered-reference.ts';
import { layeredShells } from './cases/layered-shells.ts';
import { measuredGaps } from './cases/measured-gap.ts';
import { plastic } from './cases/plastic.ts';
import { scatterTopic } from './cases/scatter.ts';
import { sections } from './cases/sections.ts';
import { shearLag } from './cases/shear-lag.ts';
import { springsTopic } from './cases/springs.ts';
import { tapers } from './cases/tapers.ts';
import { twoBonds } from './cases/two-bonds.ts';
import { wholeJoints } from './cases/whole-joints.ts';
import { intro } from './intro.ts';
import { judge, judgements } from './judge.ts';
import { plotName, renderCase } from './page.ts';
import { drawCurves } from './plot.ts';

export const topics: readonly Topic[] = [
  shearLag,
  plastic,
  twoBonds,
  tapers,
  sections,
  lapsCompared,
  springsTopic,
  scatterTopic,
  measuredGaps,
  coupons,
  wholeJoints,
  laminates,
  flatLaps,
  layeredReference,
  finiteElements,
  layeredAcceptance,
  layeredShells,
];

export const PAGE = 'verification.md';
export const PLOTS = 'verification';

/** How many figures a check compares. */
const figuresOf = (check: Check): number => {
  if (check.kind === 'value') return 1;
  return check.kind === 'group' ? judge(check).count : judge(check).count;
};

/** Held to what is found because it does not meet what was asked. */
const isOutside = (check: Check): boolean =>
  check.kind !== 'same' && check.why.startsWith('OUTSIDE');

const anchor = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\d -]/gu, '')
    .replaceAll(' ', '-');

function contents(): string {
  const rows = topics.map(({ title, cases }) => {
    const checks = cases.flatMap(judgements);
    const figures = checks.reduce((sum, check) => sum + figuresOf(check), 0);
    const failing = checks.filter((check) => judge(check).failure !== null);
    const outside = checks.filter(isOutside).length;
    const apart = outside === 0 ? '' : ` (rows OUTSIDE the specification: ${outside})`;
    const verdict = failing.length === 0 ? `all${apart}` : `not all: ${failing.length} rows fail`;
    return `| [${title}](#${anchor(title)}) | ${cases.length} | ${figures} | ${verdict} |`;
  });
  return [
    '## Contents',
    '',
    '| topic | cases | figures compared | within tolerance |',
    '| --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}

/** Text of every file of the book, by its path under docs. */
export function renderBook(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  const chapters = topics.map(({ title, intro: opening, cases }) =>
    [`## ${title}`, opening, ...cases.map(renderCase)].join('\n\n'),
  );
  files.set(PAGE, `${[intro.trimEnd(), contents(), ...chapters].join('\n\n')}\n`);
  for (const one of topics.flatMap(({ cases }) => cases)) {
    if (isCurve(one)) files.set(`${PLOTS}/${plotName(one)}`, drawCurves(one));
  }
  return files;
}
