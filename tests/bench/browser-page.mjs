/** What docs/performance.md and the terminal say of the browser. */
import { bytes, met, time } from './units.mjs';

/** Things that grow by less than this for each move do not leak: a picture alone is thousands of times as much. */
const LEVEL = 1;

/** @param {any} browser as browser.mjs writes it */
export const browserLines = ({ browser, start, drags, typing, memory, size }) => [
  `${browser}, drawn by software`,
  `first margin: ${time(start.median)} after the process starts (it listens after ${time(start.up)}), those of all joints ${time(start.all)}`,
  ...drags.map(
    ({ joint, median, p95, count, asked }) =>
      `${joint} dragged: a move is painted after ${time(median)}, 95 of 100 within ${time(p95)} (${count} moves, ${asked} questions)`,
  ),
  `a key is shown after ${time(typing.during.median)}, 95 of 100 within ${time(typing.during.p95)}, while a scatter runs${typing.ranToTheEnd ? '' : ' (it ended before)'}; ${time(typing.before.median)} and ${time(typing.before.p95)} without`,
  `renderer, gzipped: ${bytes(size.first)} at once, ${bytes(size.all)} with all of its pages and the guide`,
  ...(memory
    ? [
        `${memory.drags} moves: the heap grows by ${memory.heapSlope.toFixed(1)} bytes a move; what the program holds by ${memory.programSlope.toFixed(1)}, code that the engine compiles by ${memory.compiledSlope.toFixed(1)}, nodes by ${memory.nodeSlope.toFixed(4)}`,
      ]
    : []),
];

/** Rows of the table of aims. */
export const browserAims = ({ start, drags, typing, memory, size }) => [
  ...drags.map(
    ({ joint, p95 }) =>
      `| ${joint} dragged: move to painted stress, 95th percentile | 25 ms | ${time(p95)} | ${met(p95, 25)} |`,
  ),
  `| key to painted field while a scatter runs, 95th percentile | 30 ms | ${time(typing.during.p95)} | ${met(typing.during.p95, 30)} |`,
  `| first margin after the process starts, browser open | 1.00 s | ${time(start.median)} | ${met(start.median, 1000)} |`,
  `| renderer that the page loads at once, gzipped | 200 kB | ${bytes(size.first)} | ${met(size.first, 200_000)} |`,
  ...(memory
    ? [
        `| what the program holds after ${memory.drags} moves | level | ${memory.programSlope.toFixed(1)} bytes a move | ${memory.programSlope < LEVEL ? 'met' : 'missed'} |`,
      ]
    : []),
];

/** @param {any} browser null where nothing was measured in one */
export function browserSection(browser) {
  if (!browser)
    return 'Nothing was measured in a browser: drag, typing beside a scatter, start, memory.';
  const { drags, memory } = browser;
  const rows = drags.map(
    ({ joint, moved, every, count, asked, median, p95, margins, settled }) =>
      `| ${joint} | ${moved} | ${time(every)} | ${count} | ${asked} | ${time(median)} | ${time(p95)} | ${margins} times | ${time(settled)} |`,
  );
  return `The built program over the loopback host, its page in ${browser.browser} at 1280 × 800, drawn by software on the same
processor. A move is painted when the shear and the peel of an overlap are on the screen that was asked for after it;
pointer events come as fast as the browser takes them, one in a frame at most, to and fro at one speed so that each
changes the overlap, and one picture may stand for several. Before the first move the page has been at rest for four
seconds. Margins are computed all the while, over and over: how often they came, and how long after the last move those
of the last overlap were there, stands beside.

| joint dragged | moves | one every | painted for | questions | median | 95th percentile | margins came | the last after |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}

${browserLines(browser)
  .filter((line) => !line.includes('dragged') && !line.includes('drawn by'))
  .map((line) => `- ${line[0].toUpperCase()}${line.slice(1)}.`)
  .join('\n')}${
  memory
    ? `\n- Heap, nodes and the host while dragging: ${memory.points
        .filter((_point, i) => i % 2 === 0)
        .map(
          ({ count, heap, nodes, host }) =>
            `${count}: ${bytes(heap)}, ${nodes}${host ? `, ${bytes(host)}` : ''}`,
        )
        .join('; ')}.`
    : ''
}`;
}
