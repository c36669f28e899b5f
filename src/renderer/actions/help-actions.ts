/** What helps: the guide, the help of a field, the notes of the first start, what the program is. */
import { helpAt } from '../help/known-fields.ts';
import type { Action, Reach } from './action.ts';

export const helpActions = ({ project, guide, fieldHelp, showNotes, about }: Reach): Action[] => [
  {
    id: 'guide',
    title: () => 'Guide',
    group: 'keys',
    keys: [{ key: 'F1', shift: true, writing: true }],
    also: 'help manual handbook book how to documentation method',
    available: () => true,
    run: guide,
  },
  {
    id: 'field help',
    title: () => 'What the field with the focus is',
    group: 'setting',
    keys: [{ key: 'F2', writing: true }],
    also: 'help field usual range',
    available: () => helpAt(document.activeElement) !== null,
    run: fieldHelp,
  },
  {
    id: 'notes',
    title: () => 'Show the three notes again',
    group: 'keys',
    also: 'help tour first start introduction',
    available: () => (project.document()?.joints.length ?? 0) > 0,
    run: showNotes,
  },
  {
    id: 'about',
    title: () => 'About Lapwright',
    group: 'keys',
    also: 'help version licence license notices cautions',
    available: () => true,
    run: about,
  },
];
