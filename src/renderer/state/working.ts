/** The working behind one figure: asked when it is opened, and again whenever its figure may have changed. */
import {
  type Accessor,
  batch,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  untrack,
} from 'solid-js';
import type { Focus, figures } from '../../shared/contract.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { JointReport, Margin, Mode, Place, Working } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import { askedJoint, type JointSource, subjectOf } from './analysis.ts';
import { focusOfMargin, focusOfStress } from './drawn-state.ts';
import { createSlow } from './slow.ts';

export interface FigureSubject {
  readonly kind: 'figure';
  readonly subject: (typeof figures)[number];
  readonly part?: string;
}

/** One row of the margin list, whatever state sets it at the moment. */
export interface MarginSubject {
  readonly kind: 'margin';
  readonly subject: Mode;
  readonly part: string;
  readonly place: Place;
}

export type Subject = FigureSubject | MarginSubject;

export const subjectOfMargin = ({ mode, part, place }: Margin): MarginSubject => ({
  kind: 'margin',
  subject: mode,
  part,
  place,
});

/**
 * The margin that a subject is about, as the report has it now: its place may have moved meanwhile,
 * unless the mode is listed once for each place.
 */
export function marginOf(report: JointReport, subject: MarginSubject): Margin | undefined {
  const same = report.margins.filter(
    ({ mode, part }) => mode === subject.subject && part === subject.part,
  );
  return (
    same.find(({ place }) => place === subject.place) ?? (same.length === 1 ? same[0] : undefined)
  );
}

export const isSameSubject = (a: Subject | null, b: Subject): boolean =>
  a !== null &&
  a.kind === b.kind &&
  a.subject === b.subject &&
  a.part === b.part &&
  (a.kind === 'figure' || b.kind === 'figure' || a.place === b.place);

interface Question {
  readonly subject: string;
  readonly part?: string;
  readonly place?: Place;
  readonly focus: Focus;
}

/** Figures of the drawn state are explained in that state; the others where the model finds them. */
const drawnFigures: ReadonlySet<string> = new Set(['peak-shear', 'peak-peel', 'edge-moment']);

/** Null when the figure is not there any more. */
export function questionOf(subject: Subject, report: JointReport): Question | null {
  if (subject.kind === 'margin') {
    const margin = marginOf(report, subject);
    if (!margin) return null;
    const { mode, part, place } = margin;
    return { subject: mode, part, place, focus: focusOfMargin(margin) };
  }
  const isDrawn = drawnFigures.has(subject.subject);
  if (isDrawn && report.stress === null) return null;
  return {
    subject: subject.subject,
    ...(subject.part === undefined ? {} : { part: subject.part }),
    focus: isDrawn && report.stress ? focusOfStress(report.stress) : {},
  };
}

export interface WorkingState {
  readonly subject: Accessor<Subject | null>;
  open(subject: Subject): void;
  close(): void;
  /** Null until the first answer about this subject. */
  readonly working: Accessor<Working | null>;
  readonly refusal: Accessor<RequestError | null>;
  /** True when the figure that was asked about is no longer in the report. */
  readonly gone: Accessor<boolean>;
  readonly slow: Accessor<boolean>;
}

export function createWorking(
  source: JointSource,
  report: Accessor<JointReport | null>,
  dragging: Accessor<boolean>,
): WorkingState {
  const { bridge, project, index, active } = source;
  const [subject, setSubject] = createSignal<Subject | null>(null);
  const [working, setWorking] = createSignal<Working | null>(null);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const [wished, setWished] = createSignal(0);
  const [answered, setAnswered] = createSignal('');
  /** What a working should be of: the document as it is, and the last question about it. */
  const now = (): string => `${project.revision()} ${wished()}`;

  const question = createMemo(() => {
    const [about, now] = [subject(), report()];
    return about && now ? questionOf(about, now) : null;
  });

  const latest = makeLatest(
    async ({ asked }: { asked: Question; about: string }) => {
      const joint = askedJoint(source);
      if (!joint) return null;
      return bridge.ask('joint.explain', { ...joint, ...asked });
    },
    (reply, { about }) => {
      if (!reply) return;
      batch(() => {
        setAnswered(about);
        if (reply.ok) setWorking(reply.value);
        setRefusal(reply.ok ? null : reply.error);
      });
    },
  );
  onCleanup(() => latest.drop());

  const forget = (): void => {
    latest.drop();
    batch(() => {
      setWorking(null);
      setRefusal(null);
      setAnswered(untrack(now));
    });
  };
  const close = (): void => {
    setSubject(null);
    forget();
  };
  createEffect(on(subjectOf(source), close, { defer: true }));
  // The report comes after every change: asked from here, the working is never ahead of its figure.
  createEffect(() => {
    const asked = question();
    report();
    // In a drag the curves come first: the working waits until the hand lets go.
    if (!asked || dragging() || !active() || index() < 0) return;
    setWished((turn) => turn + 1);
    latest.ask({ asked, about: untrack(now) });
  });

  return {
    subject,
    open(next) {
      if (isSameSubject(subject(), next)) return;
      batch(() => {
        forget();
        setSubject(next);
      });
    },
    close,
    working,
    refusal,
    gone: () => subject() !== null && report() !== null && question() === null,
    slow: createSlow({
      wanted: now,
      shown: answered,
      active: () => active() && subject() !== null,
    }),
  };
}
