/**
 * What the fields are that hold no number: choices and words. What is usual of them is common practice,
 * from memory, no source.
 */
export interface ChoiceHelp {
  readonly what: string;
  readonly whereFrom: string;
  readonly usual: string;
}

const help = (what: string, whereFrom: string, usual: string): ChoiceHelp => ({
  what,
  whereFrom,
  usual,
});

const yours = 'As you like.';

export const choiceHelp = {
  joint: help(
    'The joint of the project that this page shows.',
    'The Joints page lists them all.',
    'The one with the lowest margin first.',
  ),
  lap: help(
    'Where the metal is: around the tube (socket), inside of it (spigot), or both (double lap). What both kinds have is kept when it changes.',
    'The drawing.',
    'A single lap where it holds; a double lap where length no longer helps.',
  ),
  side: help(
    'Whether the sleeve of a single lap goes around the tube (socket) or into it (spigot).',
    'The drawing.',
    'Socket, where there is room for it: it is bonded and looked at more easily.',
  ),
  edgeMoment: help(
    'How the bending at the ends of a flat single lap is found; the moment there is k · P · e / 2.',
    'Method, section 11: both formulas are shown with what they give.',
    'Goland and Reissner; Hart-Smith as a second opinion.',
  ),
  adherendShear: help(
    'Whether the walls themselves shear, and so soften the bond at its ends. It counts for every joint of the project.',
    'Method, section 3: what it adds to the bond.',
    'Included: nearer to measured peaks in laminates. Left out, it is the plain shear lag of books.',
  ),
  adherend: help(
    'What this part is made of: a metal, a wall of given stiffness, or a stack of plies.',
    'The drawing and the material certificate.',
    'Typical values for a first look, your own for a decision.',
  ),
  ply: help(
    'The ply that the laminate is laid up of.',
    'The data sheet of the prepreg.',
    'One ply for the whole stack.',
  ),
  stack: help(
    'Ply angles in degrees from the axis, the innermost (or lower) first, such as [0/±45/90]s.',
    'The lay-up sheet.',
    'Symmetric and balanced: else the laminate twists or bends, and a note says so.',
  ),
  adhesive: help(
    'The adhesive of the bond, with its states, knockdowns and lives.',
    'The process specification.',
    'Typical values for a first look, your own for a decision.',
  ),
  moisture: help(
    'Whether the adhesive has taken up moisture.',
    'The environment the joint is specified for.',
    'Wet for what lives outdoors, with the heat that goes with it.',
  ),
  caseKind: help(
    'Limit: the largest loads expected, factors asked on top. Ultimate: the factor is in the loads. Cyclic: the largest of a cycle that returns.',
    'The load report says which it gives.',
    'Limit loads, and one cyclic case or more.',
  ),
  addCase: help(
    'A load case that is to act on this joint too, or a new one of the project.',
    'The load report of the frame.',
    'Every case that the frame sees at this joint.',
  ),
  everyCondition: help(
    'The case is judged in each of the project’s conditions too, with the same loads.',
    'The environment the joint is specified for.',
    'On for cases that can happen in any weather.',
  ),
  sourceKind: help(
    'What stands behind the figures: own tests, a publication, typical values, or memory.',
    'Whoever put the figures in.',
    'Tested, before anything is approved. What is typical or from memory is marked wherever it is used.',
  ),
  sourceText: help(
    'The report, paper or data sheet that the figures come from, so that another finds it.',
    'Whoever put the figures in.',
    'A number and a day: Report 12, 3 March.',
  ),
  name: help('What it is called, everywhere in the project.', 'The drawing, or you.', yours),
  spacer: help(
    'What keeps the tube off the sleeve while the adhesive cures: wire, glass beads, or nothing.',
    'The process specification.',
    'Wire or beads: with nothing the parts may touch on one side.',
  ),
  instrument: help(
    'What the diameters of this surface are read with; its error goes into the gap.',
    'The name on it; its certificate.',
    'A micrometer outside, a three-point bore gauge inside; a caliper for a first look.',
  ),
  pastCheck: help(
    'The checks of measured parts that this project holds of the joint.',
    'Each was recorded at the bench.',
    'The newest first.',
  ),
  person: help('Who measured, for the record.', 'You.', 'Initials are enough.'),
  serial: help('What tells this part from its like.', 'Engraved or on its label.', yours),
  note: help('Anything that another should know.', 'You.', yours),
  checklistStep: help(
    'What is ticked at the bench before and while it is bonded, one step a line.',
    'The process specification.',
    'Abrade, clean, dry fit, mix, spread, hold, cure.',
  ),
  placeList: help(
    'Where diameters are to be read, rising, parted by spaces.',
    'The measuring plan of the drawing.',
    'Near both ends of the overlap and in its middle; 0°, 60° and 120°.',
  ),
  drawnCase: help(
    'The load case whose stress is drawn; governing is the one with the lowest margin.',
    'The cases that act on the joint.',
    'Governing.',
  ),
  drawnGap: help(
    'The gap that the stress is drawn at: nominal, thinnest, thickest, or one side of an axis that is off.',
    'Follows from gap, tolerance and offset.',
    'Governing.',
  ),
  drawnBond: help('The bond that is unrolled.', 'A double lap has two.', 'The weaker one.'),
  comparedCase: help(
    'The load case in which stress and strength are compared.',
    'The cases that act on the first joint.',
    'The governing one.',
  ),
  column: help(
    'Another joint or variant to stand beside the first.',
    'The joints and variants of this project.',
    'The same joint with its other lap.',
  ),
  distribution: help(
    'How an input strays: normal, evenly between two ends, or peaked between them.',
    'Many measured parts or coupons show it.',
    'Normal for properties, uniform for what a drawing only limits.',
  ),
  testPiece: help(
    'The shape of the coupons: of a standard, of a joint of this project, or your own.',
    'The test plan.',
    'A thick-adherend piece for allowables, a sleeve like your own to see the joint itself.',
  ),
  couponSet: help(
    'Coupons of one piece, adhesive, environment and gap.',
    'The test plan.',
    'One set for each environment and gap that the joints see.',
  ),
  couponMaterial: help(
    'The metal that the pieces of standards are cut from.',
    'The test plan.',
    'That of the sleeve, with the same preparation.',
  ),
  couponNumber: help('What tells this coupon from its like.', 'Engraved on it.', yours),
  batch: help(
    'The batch of adhesive and of preparation that it belongs to.',
    'The test plan; the label of the adhesive.',
    'Three batches or more.',
  ),
  apart: help(
    'Why the result is kept out of the statistics: a cause, never its value.',
    'Looked at on the broken coupon and in the record of the test.',
    'Empty.',
  ),
  runOut: help(
    'Whether the test was stopped before the coupon failed.',
    'The record of the test machine.',
    'Yes or nothing.',
  ),
  unit: help(
    'The unit in which this page shows numbers of this kind; nothing of the project changes by it.',
    'What your drawings and instruments have.',
    'Units: SI or US sets all of them at once.',
  ),
  standard: help(
    'The standard whose sizes this piece has; a piece with changed sizes claims none.',
    'The standard itself.',
    'Empty for a piece of your own.',
  ),
} as const satisfies Readonly<Record<string, ChoiceHelp>>;

export type ChoiceName = keyof typeof choiceHelp;
