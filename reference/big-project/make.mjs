/**
 * Writes a large project: as many joints under as many load cases as asked for, of all four types,
 * sizes and loads from a seeded generator. For trials of time and memory, not of figures.
 *
 *   node reference/big-project/make.mjs big.json [--joints 500] [--cases 20] [--seed 1]
 *
 * Materials are those of the demonstration project. The same counts and seed give the same file on
 * any machine.
 */
import { readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const demo = JSON.parse(
  readFileSync(new URL('../../src/main/demo/curlew.lapwright.json', import.meta.url), 'utf8'),
);

/** Numbers from 0 up to 1: a counter stirred in 32-bit integers, exact on any machine. */
function makeRandom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** What is drawn from the generator: a number in steps, so that the file stays readable; one of a list. */
const makeDraw = (random) => ({
  between(low, high, step) {
    const steps = Math.round((high - low) / step);
    // Rounded once more: a sum of tenths is not the tenth that it looks like.
    return Number((low + Math.floor(random() * (steps + 1)) * step).toFixed(6));
  },
  oneOf: (list) => list[Math.floor(random() * list.length)],
});

const CLIMATES = [
  { temperature: 20, moisture: 'dry', words: 'room' },
  { temperature: -20, moisture: 'dry', words: 'cold soak' },
  { temperature: 45, moisture: 'wet', words: 'warm and wet' },
  { temperature: 60, moisture: 'wet', words: 'hot deck' },
];
const EVENTS = [
  { kind: 'limit', words: 'Gust' },
  { kind: 'ultimate', words: 'Hard landing' },
  { kind: 'limit', words: 'Launch' },
  { kind: 'cyclic', words: 'Vibration' },
  { kind: 'limit', words: 'Turn' },
];

function makeCase(index) {
  const climate = CLIMATES[index % CLIMATES.length];
  const event = EVENTS[index % EVENTS.length];
  return {
    id: `case-${index + 1}`,
    name: `${event.words} ${index + 1}, ${climate.words}`,
    kind: event.kind,
    temperature: climate.temperature,
    moisture: climate.moisture,
    ...(event.kind === 'cyclic' ? { cycles: 10 ** (4 + (index % 4)) } : {}),
  };
}

const TUBE = 'carbon-tube';
const STRIP = 'carbon-strip';
const METAL = 'titanium-printed';

/** Mean shear that a bond of this adhesive bears, MPa, and the overlap beyond which little is gained, mm: guesses. */
const BEARS = 14;
const REACH = 22;

/** Share of what a load may be at most, by the kind of its case. */
const SHARES = { limit: 1, ultimate: 1.4, cyclic: 0.25 };

/**
 * Loads that some joints carry and some do not: each joint is loaded to its own share of a rough
 * strength, and each case to its own share of that.
 */
function makeLoads(draw, cases, strength, diameter) {
  const size = draw.between(0.1, 0.7, 0.05) * strength;
  return cases.map(({ id, kind }) => {
    const most = size * SHARES[kind];
    if (diameter === null) {
      return { case: id, force: Math.round(most * draw.between(-1, 1, 0.05)) };
    }
    const share = () => most * draw.between(-0.5, 0.5, 0.05);
    return {
      case: id,
      force: Math.round(share()),
      // A moment M loads the far side of a ring as the force 4M/d would.
      moment: Math.round((Math.abs(share()) * diameter) / 4),
      torque: Math.round((Math.abs(share()) * diameter) / 4),
      shear: Math.round(Math.abs(share()) / 10),
    };
  });
}

const TYPES = ['sleeve-single', 'sleeve-double', 'flat-single', 'flat-double'];

function makeJoint(draw, cases, index) {
  const type = TYPES[index % TYPES.length];
  const double = type.endsWith('double');
  const overlap = draw.between(12, 60, 1);
  const bond = () => ({ gap: draw.between(0.15, 0.4, 0.05), tolerance: 0.05 });
  const wall = () => {
    const atRoot = draw.between(0.8, 2.4, 0.1);
    // One sleeve in four is tapered.
    const atMouth = draw.oneOf([atRoot, atRoot, atRoot, 0.6]);
    return { adherend: METAL, atRoot, atMouth };
  };
  const common = {
    id: `joint-${index + 1}`,
    name: `Joint ${index + 1}`,
    type,
    overlap,
    adhesive: 'toughened-paste',
  };
  const strength = (width) => BEARS * (double ? 2 : 1) * width * Math.min(overlap, REACH);
  if (type.startsWith('flat')) {
    const width = draw.between(15, 60, 5);
    const strip = { adherend: STRIP, thickness: draw.oneOf([2.5, 3, 3, 3]) };
    // The lap of one side bends: it bears about half of what its width promises.
    const loads = () => makeLoads(draw, cases, strength(width) * (double ? 1 : 0.5), null);
    return double
      ? {
          ...common,
          width,
          strip,
          lowerStrap: wall(),
          upperStrap: wall(),
          lowerBond: bond(),
          upperBond: bond(),
          loads: loads(),
        }
      : { ...common, width, strip, plate: wall(), bond: bond(), loads: loads() };
  }
  const outsideDiameter = draw.between(16, 60, 1);
  const tube = { adherend: TUBE, outsideDiameter, wall: draw.between(1, 2.5, 0.1) };
  const offset = draw.between(0, 0.04, 0.01);
  const loads = () => makeLoads(draw, cases, strength(Math.PI * outsideDiameter), outsideDiameter);
  return double
    ? {
        ...common,
        tube,
        spigot: wall(),
        socket: wall(),
        innerBond: bond(),
        outerBond: bond(),
        offset,
        loads: loads(),
      }
    : {
        ...common,
        side: draw.oneOf(['socket', 'spigot']),
        tube,
        sleeve: wall(),
        bond: bond(),
        offset,
        loads: loads(),
      };
}

/** @param {{ joints?: number, cases?: number, seed?: number }} [asked] */
export function makeBigProject({ joints = 500, cases = 20, seed = 1 } = {}) {
  const draw = makeDraw(makeRandom(seed));
  const loadCases = Array.from({ length: cases }, (_case, index) => makeCase(index));
  const { format, version, settings, plies, adherends, adhesives } = demo;
  return {
    format,
    version,
    name: `Big project, ${joints} joints, ${cases} cases`,
    note: 'Made by a script: sizes and loads are drawn at random, properties are those of the demonstration.',
    settings,
    plies,
    adherends,
    adhesives,
    loadCases,
    joints: Array.from({ length: joints }, (_joint, index) => makeJoint(draw, loadCases, index)),
  };
}

function main(argv) {
  const number = { type: 'string' };
  const { values, positionals } = parseArgs({
    args: argv,
    options: { joints: number, cases: number, seed: number },
    allowPositionals: true,
  });
  const [file] = positionals;
  const counts = Object.entries(values).map(([name, text]) => [name, Number(text)]);
  const wrong = counts.find(([, count]) => !Number.isInteger(count) || count < 1);
  if (file === undefined || positionals.length > 1 || wrong) {
    process.stderr.write('make.mjs FILE [--joints 500] [--cases 20] [--seed 1], whole numbers\n');
    process.exitCode = 2;
    return;
  }
  writeFileSync(file, `${JSON.stringify(makeBigProject(Object.fromEntries(counts)))}\n`);
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  main(process.argv.slice(2));
}
