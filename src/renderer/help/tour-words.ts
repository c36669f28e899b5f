/** What the three notes of the first start say: always of the project that is open. */
import type { Joint } from '../../shared/project.ts';
import type { CheckReport, JointSummary, Margin } from '../../shared/reports.ts';
import { signed } from '../../shared/words.ts';

export interface JointNote {
  readonly jointId: string;
  readonly name: string;
  readonly text: string;
}

/** What cannot be computed comes before what fails, as in the table. */
const urgency = ({ refused, lowest }: JointSummary): number =>
  refused ? Number.NEGATIVE_INFINITY : (lowest?.margin ?? Number.POSITIVE_INFINITY);

function textOf(joint: JointSummary, target: number): string {
  const { name, refused, lowest } = joint;
  if (refused) return `${name} cannot be computed: what is wrong stands with it. Open it.`;
  if (!lowest) return `Nothing loads ${name} yet. Open it and put a load case on it.`;
  const margin = signed(lowest.margin);
  switch (lowest.state) {
    case 'fails':
      return `${name} fails: its lowest margin is ${margin}, below zero. Open it.`;
    case 'low':
      return `${name} is low: its lowest margin is ${margin}, below the target of ${target.toFixed(2)}. Open it.`;
    case 'holds':
      return `Every joint reaches the target; ${name} is the nearest to it, with ${margin}. Open it to see what limits it.`;
  }
}

/** The joint that needs looking at first; null where there is none. */
export function jointNote({ joints, targetMargin }: CheckReport): JointNote | null {
  const [first] = joints.toSorted((a, b) => urgency(a) - urgency(b));
  if (!first) return null;
  return { jointId: first.jointId, name: first.name, text: textOf(first, targetMargin) };
}

export const overlapNote = ({ type }: Pick<Joint, 'type'>): string =>
  type === 'sleeve-single' || type === 'flat-single'
    ? 'Drag the end of the overlap in the drawing above, or change the lap to double, and see the margins on the right follow. Ctrl+Z takes it back.'
    : 'Drag the end of the overlap in the drawing above, and see the margins on the right follow. Ctrl+Z takes it back.';

export function numbersNote(lowest: Pick<Margin, 'state'> | undefined): string {
  const now =
    lowest === undefined
      ? 'Once it holds, save and print.'
      : lowest.state === 'holds'
        ? 'It holds: save and print.'
        : `It ${lowest.state === 'low' ? 'is still low' : 'still fails'}: once it holds, save and print.`;
  return `Press any underlined figure for its working. ${now} Tests of coupons and joints made with your own process decide.`;
}
