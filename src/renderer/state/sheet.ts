/** The sheet to print: what is to stand on it, and the answers for it, kept up with the document. */
import { type Accessor, batch, createEffect, createMemo, createSignal, untrack } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import type { About } from '../../shared/reports.ts';
import type { JointSheet } from '../../shared/reports-sheet.ts';
import { type Paper, rememberedPaper, rememberPaper } from '../sheet/paper.ts';
import { type Column, columnKey, found, sameColumn } from './compared.ts';
import { createJob, type Job } from './job.ts';
import type { ProjectState } from './project.ts';

/** Whose working is printed: of no margin, of the lowest, of all. */
export type WorkingChoice = 'none' | 'lowest' | 'all';
export const LOWEST = 3;
const workings: Readonly<Record<WorkingChoice, number>> = { none: 0, lowest: LOWEST, all: 200 };

/** Joints whose details one sheet takes; the table of all has no such end. */
export const MOST_DETAILS = 40;
/** A project of so many joints is printed with all their details unless something else is chosen. */
const SMALL = 8;

export interface SheetPart {
  readonly column: Column;
  /** As it was when it was asked about. */
  readonly joint: Joint;
  readonly reply: Reply<JointSheet>;
}

export interface SheetState {
  readonly open: Accessor<boolean>;
  /** Of the whole project: the table of all joints, and their details where there are few. */
  showProject(): void;
  showJoints(columns: readonly Column[]): void;
  close(): void;
  readonly table: Accessor<boolean>;
  setTable(shown: boolean): void;
  readonly chosen: Accessor<readonly Column[]>;
  choose(column: Column, chosen: boolean): void;
  chooseOnly(columns: readonly Column[]): void;
  readonly working: Accessor<WorkingChoice>;
  setWorking(choice: WorkingChoice): void;
  readonly paper: Accessor<Paper>;
  setPaper(paper: Paper): void;
  /** True while the check of the whole project is needed. */
  readonly wantsTable: Accessor<boolean>;
  /** Answers that have come of what is chosen, in its order. */
  readonly parts: Accessor<readonly SheetPart[]>;
  /** True when all joints chosen are there, and are of the document as it is. */
  readonly ready: Accessor<boolean>;
  readonly stopped: Accessor<boolean>;
  again(): void;
  readonly job: Job;
  readonly about: Accessor<About | null>;
  /** When the sheet was opened or its figures came. */
  readonly at: Accessor<Date>;
}

interface Question {
  readonly document: Project;
  readonly joint: Joint;
  /** Tells one question from another: all that an answer depends on but the workings, of which it may hold more. */
  readonly key: string;
}

/** The project with this joint alone; its coupons come along, which tell whether an allowable is still theirs. */
function questionOf(project: Project, column: Column): Question | null {
  const joint = found(project, column)?.joint;
  if (!joint) return null;
  const { variants: _variants, gapChecks: _checks, sheet: _sheet, note: _note, ...rest } = project;
  const document = { ...rest, joints: [joint] };
  return { document, joint, key: JSON.stringify(document) };
}

interface Asked {
  readonly column: Column;
  readonly question: Question;
}

interface Answer {
  readonly key: string;
  /** How many workings were asked for. */
  readonly workings: number;
  readonly part: SheetPart;
}

export interface SheetSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
}

export function createSheet({ bridge, project }: SheetSource): SheetState {
  const [open, setOpen] = createSignal(false);
  const [table, setTable] = createSignal(true);
  const [wished, setWished] = createSignal<readonly Column[]>([]);
  const [working, setWorking] = createSignal<WorkingChoice>('none');
  const [paper, setPaper] = createSignal(rememberedPaper());
  const [answers, setAnswers] = createSignal<ReadonlyMap<string, Answer>>(new Map());
  const [stopped, setStopped] = createSignal(false);
  const [about, setAbout] = createSignal<About | null>(null);
  const [at, setAt] = createSignal(new Date());
  const job = createJob(bridge);

  const chosen = createMemo(() => {
    const document = project.document();
    project.revision();
    if (!document) return [];
    // In the order of the project, whatever was ticked first; variants come after the frame.
    const placeOf = (column: Column): number => {
      const [list, index] = found(document, column)!.path;
      return (list === 'joints' ? 0 : document.joints.length) + Number(index);
    };
    return wished()
      .filter((column) => found(document, column) !== null)
      .toSorted((a, b) => placeOf(a) - placeOf(b));
  });
  const questions = createMemo(() => {
    project.revision();
    const document = project.plain();
    if (!open() || !document) return [];
    return chosen().flatMap((column) => {
      const question = questionOf(document, column);
      return question ? [{ column, question }] : [];
    });
  });
  const answerTo = ({ column, question }: Asked): Answer | null => {
    const answer = answers().get(columnKey(column));
    return answer?.key === question.key ? answer : null;
  };
  /** With as many workings as are wanted now; null while it has not that many. */
  const partOf = (asked: Asked): SheetPart | null => {
    const answer = answerTo(asked);
    const wanted = workings[working()];
    if (!answer || (answer.part.reply.ok && answer.workings < wanted)) return null;
    const { part } = answer;
    if (!part.reply.ok) return part;
    const { value } = part.reply;
    return { ...part, reply: ok({ ...value, workings: value.workings.slice(0, wanted) }) };
  };

  let turn = 0;
  async function load(): Promise<void> {
    turn += 1;
    const own = turn;
    setStopped(false);
    for (const one of untrack(questions)) {
      if (untrack(() => partOf(one)) !== null) continue;
      const { document, joint, key } = one.question;
      const before = untrack(() => answerTo(one))?.part.reply;
      const known = before?.ok ? before.value : null;
      const most = workings[untrack(working)];
      // The document goes on changing; the joint on paper is the one that was asked about.
      const held = JSON.parse(JSON.stringify(joint)) as Joint;
      const asked = { document, jointId: joint.id, workings: most, sweep: known === null };
      const answer = await job.run('joint.sheet', asked);
      if (own !== turn) return;
      if (!answer.ok && answer.error.code === 'stopped') {
        setStopped(true);
        return;
      }
      const reply =
        answer.ok && known
          ? ok({ ...answer.value, sweep: known.sweep, sweepRefused: known.sweepRefused })
          : answer;
      const part = { column: one.column, joint: held, reply };
      // Together: the pages are laid out once.
      batch(() => {
        setAnswers((all) => new Map(all).set(columnKey(one.column), { key, workings: most, part }));
        setAt(new Date());
      });
    }
  }
  /** Another word of the head is no reason to compute anything again. */
  const asked = createMemo(() =>
    questions()
      .map(({ question }) => question.key)
      .join('\n'),
  );
  createEffect(() => {
    working();
    if (asked() !== '') void load();
    else if (untrack(job.running)) job.stop();
  });
  createEffect((before: number | undefined) => {
    const opening = project.opening();
    if (before !== undefined && before !== opening) {
      setOpen(false);
      setAnswers(new Map());
    }
    return opening;
  });

  const show = (shownTable: boolean, columns: readonly Column[]): void => {
    batch(() => {
      setTable(shownTable);
      setWished(columns);
      setAt(new Date());
      setOpen(true);
    });
    if (about() === null) {
      void bridge.ask('app.about', {}).then((reply) => reply.ok && setAbout(reply.value));
    }
  };
  const parts = createMemo(() => questions().flatMap((one) => partOf(one) ?? []));

  return {
    open,
    showProject() {
      const joints = project.document()?.joints ?? [];
      const all = joints.map(({ id }): Column => ({ kind: 'joint', id }));
      show(true, all.length <= SMALL ? all : []);
    },
    showJoints: (columns) => show(false, columns),
    close: () => setOpen(false),
    table,
    setTable,
    chosen,
    choose(column, isChosen) {
      const others = chosen().filter((one) => !sameColumn(one, column));
      if (!isChosen) setWished(others);
      else if (others.length < MOST_DETAILS) setWished([...others, column]);
    },
    chooseOnly: (columns) => setWished(columns.slice(0, MOST_DETAILS)),
    working,
    setWorking,
    paper,
    setPaper(next) {
      setPaper(next);
      rememberPaper(next);
    },
    wantsTable: () => open() && table(),
    parts,
    ready: () => open() && parts().length === questions().length,
    stopped,
    again: () => void load(),
    job,
    about,
    at,
  };
}
