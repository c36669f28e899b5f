/** docs/performance.md out of the figures of a run. */

import { browserAims, browserSection } from './browser-page.mjs';
import { bytes, time } from './units.mjs';

/** What is aimed at, ms, by the task's name. */
const AIMS = [
  ['analysis, double-lap sleeve under force', 1],
  ['sweep of 200 overlaps', 40],
  ['scatter of 100000', 10_000],
];

/** @param {any} figures as bench.mjs writes them */
export function performancePage({ machine, tasks, growths, scipy, calculix, large, browser }) {
  const named = (name) => tasks.find((task) => task.name === name);
  const ours = named('elastic-plastic shear lag of one bond, 400 stations').median;
  const floor = named('400 exponentials alone').median;
  const aims = AIMS.flatMap(([name, aim]) => {
    const task = named(name);
    if (!task) return [];
    const short =
      task.median <= aim
        ? 'met'
        : `missed: ${aim < task.median / 10 ? Math.round(task.median / aim) : (task.median / aim).toFixed(1)} times as long`;
    return [`| ${name} | ${time(aim)} | ${time(task.median)} | ${short} |`];
  });
  if (scipy) {
    const ratio = scipy.median / ours;
    aims.push(
      `| shear lag of one bond against scipy's boundary-value solver | 100 times as fast | ${ratio.toFixed(0)} times | ${ratio >= 100 ? 'met' : 'missed'} |`,
    );
  }
  const shells = named('analysis, double-lap sleeve of the finite elements').median;
  if (calculix) {
    const ratio = calculix.median / shells;
    aims.push(
      `| analysis of the finite elements' joint against CalculiX | 500 times as fast | ${ratio.toFixed(0)} times | ${ratio >= 500 ? 'met' : 'missed'} |`,
    );
  }
  if (large) {
    aims.push(
      `| ${large.joints} joints, ${large.cases} load cases, all corners: ${large.states} states on ${large.threads} threads | 60 s | ${time(large.time)} | ${large.time <= 60_000 ? 'met' : 'missed'} |`,
    );
  }
  if (browser) aims.push(...browserAims(browser));
  return `# How long it takes

Written by \`npm run bench -- --page\`, on ${machine.processor}, ${machine.threads} threads, ${machine.memory}, ${machine.system}, Node ${machine.node}.
Times are medians of runs in one process, warmed up; no test depends on them. An analysis is one load case in one gap
state: every mode, and the curves of both models at 400 stations. Inputs are those of the demonstration project.
A machine that shares its processor with others takes up to twice as long on one day as on another: what was measured
beside ours in the same run (exponentials, scipy, finite elements) tells which day this was.

| task | median | 95th percentile | a run allocates, at least |
| --- | --- | --- | --- |
${tasks.map(({ name, median, p95, allocated }) => `| ${name} | ${time(median)} | ${time(p95)} | ${bytes(allocated)} |`).join('\n')}

Time grows with a power of the size:

| of | power | medians |
| --- | --- | --- |
${growths.map(({ name, points, exponent }) => `| ${name} | ${exponent.toFixed(2)} | ${points.map(([size, median]) => `${size}: ${time(median)}`).join(', ')} |`).join('\n')}

## What is aimed at

| | aim | now | |
| --- | --- | --- | --- |
${aims.join('\n')}

${
  scipy
    ? `The one bond is solved at 400 stations by both; scipy ${scipy.scipy} takes ${time(scipy.median)}, is asked for 1e-6, and its shear differs from ours by ${scipy.difference.toExponential(1)} of yield at most.`
    : 'scipy was not there to be compared with.'
} The same bond takes ${(ours / floor).toFixed(1)} times as long as 400 exponentials alone. ${
    calculix
      ? `The finite elements are the double-lap sleeve of reference/finite-elements under force, in ${calculix.elements} eight-node elements, the coarsest mesh it can have there: ${time(calculix.median)} from deck to result. Against the finest mesh the layered shells stand in docs/verification.md.`
      : 'The finite-element model was not compared: its solver was not installed.'
  }

## In the browser

${browserSection(browser)}
`;
}
