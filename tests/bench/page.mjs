/** docs/performance.md out of the figures of a run. */

import { browserAims, browserSection } from './browser-page.mjs';
import { bytes, met, percentile, time } from './units.mjs';

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
  const alone = named('sweep of 200 overlaps, strength of one bond alone').median;
  const floor = named('400 exponentials alone').median;
  const aims = AIMS.flatMap(([name, aim]) => {
    const task = named(name);
    if (!task) return [];
    return [`| ${name} | ${time(aim)} | ${time(task.median)} | ${met(task.median, aim)} |`];
  });
  if (scipy) {
    const ratio = scipy.median / ours;
    aims.push(
      `| shear lag of one bond against scipy's boundary-value solver | 100 times as fast | ${ratio.toFixed(0)} times | ${met(100, ratio)} |`,
    );
  }
  const shells = named('analysis, double-lap sleeve of the finite elements').median;
  if (calculix) {
    const ratio = calculix.median / shells;
    aims.push(
      `| analysis of the finite elements' joint against CalculiX | 500 times as fast | ${ratio.toFixed(0)} times | ${met(500, ratio)} |`,
    );
  }
  if (large) {
    aims.push(
      `| ${large.joints} joints, ${large.cases} load cases, all corners: ${large.states} states on ${large.threads} threads | 60 s | ${time(large.time)} | ${met(large.time, 60_000)} |`,
    );
  }
  if (browser) aims.push(...browserAims(browser));
  return `# How long it takes

Written by \`npm run bench -- --page\`, on ${machine.processor}, ${machine.threads} threads, ${machine.memory}, ${machine.system}, Node ${machine.node}.
Times are medians of runs in one process, warmed up; no test depends on them. An analysis is one load case in one gap
state: every mode, and the curves of both models at 400 stations. Inputs are those of the demonstration project.
A machine that shares its processor with others takes up to twice as long on one day as on another: what was measured
beside ours in the same run (exponentials, scipy, finite elements) tells which day this was.

| task | median | 95th percentile | runs | a run allocates |
| --- | --- | --- | --- | --- |
${tasks.map(({ name, runs, median, p95, allocated }) => `| ${name} | ${time(median)} | ${percentile(runs, p95)} | ${runs} | ${bytes(allocated)} |`).join('\n')}

What a run allocates is estimated from samples of the engine's heap: objects, dead or alive, without the memory of typed
arrays. A sweep is every margin of every load case and gap state at each overlap. A scatter judges its samples on
surfaces through solved joints, and solves anew those on which its verdict hangs (docs/method.md).

Time grows with a power of the size:

| of | power | medians |
| --- | --- | --- |
${growths.map(({ name, points, exponent }) => `| ${name} | ${exponent.toFixed(2)} | ${points.map(([size, median]) => `${size}: ${time(median)}`).join(', ')} |`).join('\n')}

The load cases of the last row act at one temperature, and share what hangs on it: that is the best case.

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

${
  large
    ? `500 joints under 20 load cases in 12 corners each would be 120 000 states. This project has ${large.states}: a case that does\nnot load a joint is none, a case acts in its own surroundings, and a joint has the gap states that its offset and\ntolerance make, five at most. Each state is every mode at every clocking.\n\n`
    : ''
}## What bounds what is missed

- **An analysis in a double lap**: eight solutions of 18 unknowns in up to five zones of flow, each of them matrix
  exponentials first; a single lap under force alone has two. Laps are shared between load cases, readings taken from
  series, and squarings made only as many as a length asks for. Looking for fronts of the flow in fewer places was
  quicker by a seventh and missed some of them, and was taken back; climbing from the elastic factor was slower.
- **A sweep**: it is not one state but all margins, at each of 200 overlaps from nothing: ten states of the leg, each
  with its elastic shells, under force and under bending. The strength of one bond alone, without walls, peel and
  clockings, takes ${time(alone)} at 200 overlaps.
- **500 joints**: those with tapered walls take most of it, a chain of equations for each clocking.
- **The finite elements' joint**: the same analysis as above; the coarsest mesh takes the finite elements little more
  than a second.
- **A drag**: a picture takes two frames of a page that is drawn by the processor, one for the move and one for its
  answer, and both processors are busy: the page and its compositor with one, the margins and the host with the other.
  Without any margins a picture takes a quarter to a third less, still twice what is aimed at. Two or three questions in
  flight at once changed nothing, nor did workers at a low priority or other settings of the engine's collector. A
  question that goes before the frame of its move, and a host that is warm before the first one, were the gains.

## In the browser

${browserSection(browser)}
`;
}
