/**
 * The benchmark in a browser: the built host and its page in a real Chromium, drawn by software. Prints one line of
 * JSON.
 *
 *   node tests/bench/browser.mjs [--moves 300] [--drags 10000]
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { findBrowser, launchOptions } from '../e2e/support/find-browser.mjs';
import { heapKinds } from './heap-kinds.mjs';
import { watchFirstMargin, watchKeys, watchMoves } from './page-hooks.mjs';
import { slope, summary } from './percentiles.mjs';

const root = join(import.meta.dirname, '..', '..');
const { values: given } = parseArgs({
  options: {
    moves: { type: 'string', default: '300' },
    drags: { type: 'string', default: '10000' },
  },
});
const note = (text) => process.stderr.write(`${text}\n`);

const data = mkdtempSync(join(tmpdir(), 'lapwright-bench-'));
// As if the notes of the first start had been read.
writeFileSync(join(data, 'notes-shown'), '');

/** The built host, from its start to its address. */
async function startHost() {
  const spawned = performance.timeOrigin + performance.now();
  const child = spawn(process.execPath, [join(root, 'out', 'main', 'host.js'), '--no-open'], {
    env: { ...process.env, LAPWRIGHT_DATA: data },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await new Promise((found, failed) => {
    let said = '';
    child.stdout.on('data', (part) => {
      said += part;
      const [line] = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+/.exec(said) ?? [];
      if (line) found(line);
    });
    child.once('exit', () => failed(new Error(`No address was printed:\n${said}`)));
  });
  const up = performance.timeOrigin + performance.now();
  const stop = async () => {
    child.kill();
    if (child.exitCode === null && child.signalCode === null) await once(child, 'exit');
  };
  return { address, pid: child.pid, spawned, up, stop };
}

const choice = await findBrowser(root);
if (!choice) {
  note('There is no browser here.');
  process.exit(1);
}
// Without a graphics card a user's Chromium draws on the processor; it does not imitate a card.
const launch = launchOptions(choice);
const browser = await chromium.launch({
  ...launch,
  args: [...(launch.args ?? []).filter((arg) => !arg.includes('swiftshader')), '--disable-gpu'],
});

async function inPage(hooks, work) {
  const host = await startHost();
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    for (const hook of hooks) await context.addInitScript(hook);
    const page = await context.newPage();
    await page.goto(host.address);
    return await work(page, host);
  } finally {
    await context.close();
    await host.stop();
  }
}

async function openJoint(page, name) {
  await page.getByRole('button', { name, exact: true }).click();
  await page
    .getByRole('list', { name: 'Margins, lowest first' })
    .getByRole('listitem')
    .first()
    .waitFor();
  // What else is asked at the start shall not be measured with the moves.
  await page.waitForTimeout(4000);
}

async function takeHandle(page) {
  const box = await page.getByRole('slider', { name: 'Drag overlap' }).boundingBox();
  const place = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(place.x, place.y);
  await page.mouse.down();
  return place;
}

/** To and fro over 80 pixels at one speed, so that each move changes the overlap: without a change nothing is painted. */
const swing = (i) => {
  const way = (2.1 * i) % 160;
  return way < 40 ? way : way < 120 ? 80 - way : way - 160;
};

/** A joint's overlap dragged by real pointer events, one in every frame where the browser takes as many. */
async function drag(joint, moves) {
  return inPage([watchMoves], async (page) => {
    await openJoint(page, joint);
    const { x, y } = await takeHandle(page);
    await page.evaluate(() => {
      window.benchMoves.on = true;
    });
    for (let i = 1; i <= moves; i++) {
      const next = performance.now() + 16;
      await page.mouse.move(x + swing(i), y);
      await new Promise((done) => setTimeout(done, Math.max(next - performance.now(), 0)));
    }
    await page.waitForTimeout(2000);
    await page.waitForFunction(() => window.benchMoves.waiting === 0);
    const { painted, asked, margins, moves: seen } = await page.evaluate(() => window.benchMoves);
    await page.mouse.up();
    // The next event is sent once the browser has taken the one before: on a busy machine that takes longer.
    const every = (seen.at(-1) - seen[0]) / (seen.length - 1);
    const last = seen.at(-1);
    const meanwhile = margins.filter((at) => at < last).length;
    const settled = margins.at(-1) - last;
    return {
      joint,
      moved: seen.length,
      every,
      asked,
      margins: meanwhile,
      settled,
      ...summary(painted),
    };
  });
}

/** Keys in a number field while a scatter runs, and before it. */
async function typing(keys) {
  return inPage([watchKeys], async (page) => {
    await openJoint(page, 'Boom tip to motor mount');
    await page.getByRole('button', { name: 'Scatter', exact: true }).click();
    const type = async () => {
      const from = await page.evaluate(() => window.benchKeys.length);
      await page.getByRole('textbox', { name: 'Outside diameter', exact: true }).focus();
      for (let i = 0; i < keys; i++) {
        await page.keyboard.press(i % 2 === 0 ? '5' : 'Backspace');
        await page.waitForTimeout(60);
      }
      return page.evaluate((start) => window.benchKeys.slice(start), from);
    };
    const before = summary(await type());
    await page.getByRole('textbox', { name: 'Samples' }).fill('1000000');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    const bar = page.getByRole('progressbar', { name: 'Scatter' });
    await bar.waitFor();
    const during = summary(await type());
    return { before, during, ranToTheEnd: await bar.isVisible() };
  });
}

/** From the start of the process to the first margin on the screen of a browser that is open, and to all of them. */
async function firstMargin() {
  return inPage([watchFirstMargin], async (page, host) => {
    await page.waitForFunction(() => window.benchAll !== null);
    const [shown, all] = await page.evaluate(() => [window.benchFirst, window.benchAll]);
    return {
      up: host.up - host.spawned,
      shown: shown - host.spawned,
      all: all - host.spawned,
    };
  });
}

/**
 * Heap, nodes and the host's memory while the overlap is dragged, an event in each frame.
 * @param asked how many moves, to the nearest ten parts
 */
async function memory(asked) {
  const part = Math.max(Math.round(asked / 10), 1);
  const drags = 10 * part;
  return inPage([], async (page, host) => {
    await openJoint(page, 'Landing leg');
    const { x, y } = await takeHandle(page);
    const client = await page.context().newCDPSession(page);
    const points = [];
    const kinds = [];
    const look = async (count) => {
      await client.send('HeapProfiler.collectGarbage');
      const { usedSize } = await client.send('Runtime.getHeapUsage');
      const { nodes, jsEventListeners } = await client.send('Memory.getDOMCounters');
      points.push({
        count,
        heap: usedSize,
        nodes,
        listeners: jsEventListeners,
        host: residentSize(host.pid),
      });
    };
    const start = performance.now();
    for (let done = 0; done <= drags; done += part) {
      if (done > 0) {
        await page.evaluate(
          ([from, count, at]) =>
            new Promise((finished) => {
              const handle = document.querySelector('[role=slider]');
              let i = from;
              const step = () => {
                if (i >= from + count) return finished();
                i += 1;
                const clientX = at.x + 40 * Math.sin(i / 12);
                const event = { pointerId: 1, bubbles: true, clientX, clientY: at.y };
                handle.dispatchEvent(new PointerEvent('pointermove', event));
                requestAnimationFrame(step);
              };
              step();
            }),
          [done - part, part, { x, y }],
        );
        await page.waitForTimeout(500);
      }
      await look(done);
      // The first tenth fills what is kept for good.
      if (done === part || done === drags) kinds.push(await heapKinds(client));
    }
    const [early, late] = kinds;
    const grown = (kind) => (late[kind] - early[kind]) / (drags - part);
    const frame = (performance.now() - start) / drags;
    await page.mouse.up();
    const later = points.slice(1);
    return {
      drags,
      frame,
      points,
      programSlope: grown('program'),
      compiledSlope: grown('compiled'),
      heapSlope: slope(later.map(({ count, heap }) => [count, heap])),
      nodeSlope: slope(later.map(({ count, nodes }) => [count, nodes])),
    };
  });
}

/** Bytes; null where the system does not tell. */
function residentSize(pid) {
  try {
    const [, kilobytes] = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return kilobytes === undefined ? null : 1024 * Number(kilobytes);
  } catch {
    return null;
  }
}

/** Gzipped bytes: what the page loads at once, and with all that it may load later. */
function sizes() {
  const folder = join(root, 'out', 'renderer');
  const index = readFileSync(join(folder, 'index.html'), 'utf8');
  const packed = (path) => gzipSync(readFileSync(join(folder, path)), { level: 9 }).length;
  const files = readdirSync(folder, { recursive: true }).filter((path) =>
    /\.(js|css|html)$/.test(path),
  );
  const first = files.filter((path) => path === 'index.html' || index.includes(path));
  const sum = (list) => list.reduce((total, path) => total + packed(path), 0);
  return { first: sum(first), all: sum(files) };
}

try {
  const figures = { browser: `Chromium ${browser.version()}`, size: sizes() };
  note('start to the first margin …');
  const starts = [];
  for (let i = 0; i < 7; i++) starts.push(await firstMargin());
  figures.start = {
    up: summary(starts.map(({ up }) => up)).median,
    all: summary(starts.map(({ all }) => all)).median,
    ...summary(starts.map(({ shown }) => shown)),
  };
  note('drags …');
  figures.drags = [];
  for (const joint of ['Landing leg', 'Boom root']) {
    figures.drags.push(await drag(joint, Number(given.moves)));
  }
  note('typing beside a scatter …');
  figures.typing = await typing(120);
  note('memory …');
  if (Number(given.drags) > 0) figures.memory = await memory(Number(given.drags));
  process.stdout.write(`${JSON.stringify(figures)}\n`);
} finally {
  await browser.close();
  rmSync(data, { recursive: true, force: true });
}
