/** What the book says before its first figure. */
import { tags } from './case.ts';

const provenance = Object.values(tags)
  .map(({ name, meaning }) => `| ${name} | ${meaning} |`)
  .join('\n');

export const intro = `# Verification

Every figure from outside the program that the program is held to: what was put in, what the source
says, what the program computes, how far the two are apart, how far they may be, and why that far.

This book is generated. The tests and the book read the same cases (\`tests/verification/cases\`);
\`npm test\` holds each figure to its tolerance, computes the book anew and fails when a digit of
it has moved. A change that is meant is written with \`npm run book\` and reviewed like any other.

## What is checked against what

- **Published values**, where a source could be read. Printed values are rounded: the tolerance is
  half of the last printed digit, or the book says why not. A misprint found in a source is
  recorded beside its correction.
- **Own independent solutions**: the same theory solved by other means (other equations, another
  method, another language; see \`reference\`). They prove the arithmetic, not the physics: if the
  theory leaves something out, both leave it out.
- **Finite elements**: the joint as a continuum, with its corners, bending walls and hoop stress.
  They are the check of physics, and the place where the limits of the theory show.
- **Coupons** are the last word. No figure in this book says that an adhesive, a surface or a
  workshop gives the strength that a project file states; only specimens made like the joint do.

## What was set on these joints

Three numbers of the layered shells are not derived: the shares of a wall's t/E3 that the opening
of a bond feels, 1/4 by peel on the same face and 1/8 by peel on the other (\`WALL_SHARE\` and
\`ACROSS_SHARE\`, \`src/model/layered/opening-law.ts\`), and the length h/2 over which the layer's own stress builds up
from a free end (\`END_LENGTH\`, \`src/model/layered/layer-pull.ts\`). They were set on the finite-element
joints of this book, one value each for all of them; only the cases in bending were not used, and
their walls and bond are those of the socket in tension. So where the topics of the layered shells
agree with finite elements, **that is not a blind prediction**: it shows that one set of three numbers
serves all these joints, not how near another joint will be. The acceptance table comes from another
finite-element model of the same joints and is no test of these numbers either.

**A tolerance "set just above what is found" is a lock against regression, not an acceptance
tolerance.** It was chosen after the difference was known and fails when the difference grows; that
the row passes says nothing of whether the difference is small enough. The difference itself is
what to judge. Where a requirement is known and a row does not meet it, the row says OUTSIDE, and
the contents count it.

## What is not checked

- No published figures for tubular lap joints could be read, nor for elastic-plastic double laps,
  nor tables of edge-moment factors. These parts rest on own independent solutions and finite
  elements.
- How strength changes with the thickness of the bond is not predicted. Published tests (abstracts
  read) disagree: it fell as the bond thickened in several series (J. Tomblin and others, J. Composites
  Technology & Research 24, 2002; L. F. M. da Silva and others, J. Adhesion 82, 2006), rose in a dry
  steel-to-glass-fibre joint (S. Sugiman and others, IOP Conf. Ser. 532, 2019) and did not change in
  timber (T. Tannert and others, Wood Sci. Technol. 46, 2012). A shear lag alone says that it rises.
  Strength at a gap has to come from coupons.
- Knock-down for heat, moisture and ageing: no published figure for epoxy could be read.
- Stress in a corner. Where a square end of adhesive meets a wall the elastic stress has no finite
  value, so within a gap of an end differences are stated and not held.
- The adhesive's law, elastic and then perfectly plastic, is an idealisation of a measured curve;
  creep, rate and damage are outside it.

## What the tags mean

| tag | meaning |
| --- | --- |
${provenance}

## How to read the tables

A difference is computed minus source, in the unit of the figure, and in brackets as a share of it.
Differences below 1e-9 of the figure are rounding and not printed. Where a fixture holds hundreds of figures,
one row stands for all of one kind: how many were compared, the largest difference as a share of
what the row names, and where that was.
`;
