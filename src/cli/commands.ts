/** Every command of the command line, as data: the parser and the help both read it. */
import * as option from './options.ts';

export interface Command {
  readonly name: string;
  /** Whether it takes a project file. */
  readonly file: boolean;
  readonly options: readonly option.Option[];
  /** One line for the list of commands. */
  readonly brief: string;
  /** What its own help adds. */
  readonly more: string;
}

const exits = {
  gap: 'Exit code: 0 when the parts are accepted, 1 when they are held, rejected or not yet fully measured, 2 when the input is refused.',
  check:
    'Exit code: 0 when every margin reaches the target, 1 when one does not, 2 when the input is refused or a joint cannot be computed.',
  size: 'Exit code: 0 when the target is reached, 1 when it is not, 2 when the input is refused or a size cannot be computed.',
  basis:
    'Exit code: 0 when every set with results has a B value, 1 when one has none, 2 when the input is refused.',
  other: 'Exit code: 0 when computed, 2 when the input is refused.',
};

export const commands: readonly Command[] = [
  {
    name: 'check',
    file: true,
    options: [option.json],
    brief: 'the lowest margin of every joint',
    more: `Prints one row for each joint, the lowest margin first: the mode, the load case and the place that set it. A margin below 0 fails, below the project's target is low, else it holds. A joint without a load case has no margin and is named, but changes no exit code. ${exits.check}`,
  },
  {
    name: 'corners',
    file: true,
    options: [option.anyJoint, option.sort, option.json],
    brief: 'every joint under every load case, the worst of each; every corner of one joint',
    more: `Prints a table of joints against load cases with the lowest margin of each over gap states and conditions; the one that governs a joint has ">" before it and is named underneath: mode, case, place and gap. With --joint it lists every corner of that joint, lowest first. ${exits.check}`,
  },
  {
    name: 'stress',
    file: true,
    options: [
      option.joint,
      option.loadCase,
      option.condition,
      option.gap,
      option.theta,
      option.factor,
      option.stations,
      option.map,
      option.json,
    ],
    brief: 'shear and peel in the bonds of one joint under one load case',
    more: `Prints for each bond its peak shear, the yield shear, the stretches that have yielded, the force it carries and its peak peel, and for each wall its axial stress at both ends. Distances are from the sleeve root. ${exits.other}`,
  },
  {
    name: 'explain',
    file: true,
    options: [
      option.joint,
      option.anyCase,
      option.condition,
      option.gap,
      option.mode,
      option.part,
      option.place,
      option.json,
    ],
    brief: 'how a margin or another figure of one joint came about',
    more: `Prints the working of one figure, equation by equation: what it says, its formula, the same with the values put in, the result, its source and where it holds. ${exits.other}`,
  },
  {
    name: 'sweep',
    file: true,
    options: [option.joint, option.from, option.to, option.points, option.json],
    brief: 'strength of one joint against its overlap',
    more: `Prints for each overlap the strength over the load asked for, the worst over all load cases and gaps, and the overlap past which more of it buys under 2 %. The table has 15 rows when nothing else is asked for; with --json the answer has 49 points. ${exits.other}`,
  },
  {
    name: 'springs',
    file: true,
    options: [option.joint, option.anyCase, option.csv, option.json],
    brief: 'stiffness of one joint as springs for a frame model',
    more: `Prints for each temperature and moisture of its load cases the springs between the tube at the mouth and the metal at the root: pull, bending, torsion, and the walls across; elastic, at the nominal gap. ${exits.other}`,
  },
  {
    name: 'compare',
    file: true,
    options: [option.joint, option.beside, option.lap, option.equal, option.anyCase, option.json],
    brief: 'joints side by side, single against double lap',
    more: `Prints margins, strength, peaks, mass, stiffness and printed layers of two to four joints beside one another, what differs between them, and why one carries more. --lap sets the joint beside itself with the other lap, at equal overlap, equal added mass (walls scaled) or equal lowest margin (overlap found). ${exits.other}`,
  },
  {
    name: 'size',
    file: true,
    options: [
      option.joint,
      option.vary,
      option.target,
      option.step,
      option.least,
      option.most,
      option.json,
    ],
    brief: 'the shortest overlap, thinnest wall or gaps that reach the target margin',
    more: `Prints the size that reaches the target in every mode, load case and gap state, with the full analysis at it and one step outside it. Where none does: which mode stops it, and what would help, each change put through the same sizing first. ${exits.size}`,
  },
  {
    name: 'sizes',
    file: true,
    options: [option.joint, option.each, option.json],
    brief: 'one joint in all its frame sizes, and the overlap that they need',
    more: `Prints for each frame size of the joint its lowest margin and the overlap with which it reaches the target, and one overlap for all of them. ${exits.size}`,
  },
  {
    name: 'matters',
    file: true,
    options: [option.joint, option.json],
    brief: 'which input of one joint moves its lowest margin most',
    more: `Prints the lowest margin with each input at either end of its tolerance, all others in their middle, the largest swing first. Tolerances are those of the project; without any, typical ones. The durability trough is left out. ${exits.other}`,
  },
  {
    name: 'scatter',
    file: true,
    options: [option.joint, option.samples, option.seed, option.method, option.json],
    brief: 'how the lowest margin of one joint scatters over its tolerances',
    more: `Prints the share of random samples whose lowest margin is below zero with its exact binomial confidence limits, percentiles, the histogram, which mode governs how often, and how far the fitted surfaces are off the full model. The same seed gives the same figures. The durability trough is left out. ${exits.other}`,
  },
  {
    name: 'gap',
    file: true,
    options: [option.joint, option.measured, option.limits, option.template, option.json],
    brief: 'may these measured parts be bonded: the gap between them, and the verdict',
    more: `Prints the verdict with its reason first, then the gap on one axis and as held by spacers or jig, each with its uncertainty, the limits, the margins at the gap as measured and the adhesive to mix. Stations count from the mouth of the sleeve, clockings from the mark. ${exits.gap}`,
  },
  {
    name: 'basis',
    file: true,
    options: [option.set, option.json],
    brief: 'what the results of coupons give: statistics and basis values, each decision told',
    more: `Prints for each set of coupons the number, mean and scatter of the results that count, the decisions on the way to a basis value (outliers, batches, distribution), and the A and B value of every method, the one that the way leads to marked. Values are load over bonded area. A basis value is arithmetic on these coupons; whether it may be designed to hangs on how they were made and tested. ${exits.basis}`,
  },
  {
    name: 'correlate',
    file: true,
    options: [option.set, option.json],
    brief: 'coupons measured over coupons predicted by the model of the joints',
    more: `Prints for each coupon the load it broke at, the load and mode that the model gives with mean properties, without knockdowns, and the ratio; for each set and each adhesive its mean, scatter and the 95 % interval of the mean. Nothing is calibrated by it. ${exits.other}`,
  },
  {
    name: 'ledger',
    file: true,
    options: [option.csv, option.json],
    brief: 'what strength margins use in each environment and gap, and what it rests on',
    more: `Prints for each adhesive, temperature, moisture and gap the shear yield of its rows, what each knockdown or an allowable leaves of it, the shear yield and peel strength that margins use, what they rest on (typical, from memory, published, tested as entered, or the A or B value of own coupons) and how many joints use them; gaps at which all is the same stand on one line. Then the sources, coupons that no allowable was taken from, and allowables whose coupons have changed or are gone. With --csv and --json every gap has a row of its own. ${exits.other}`,
  },
  {
    name: 'schema',
    file: false,
    options: [],
    brief: 'the JSON Schema of the project file',
    more: 'Give it to an editor to have a project file checked and completed while it is typed.',
  },
  {
    name: 'demo',
    file: false,
    options: [],
    brief: 'the demonstration project, to save and change',
    more: 'Every property and load in it is invented or typical. Save it in a file: lapwright demo > curlew.lapwright',
  },
];

export const findCommand = (name: string): Command | undefined =>
  commands.find((command) => command.name === name);
