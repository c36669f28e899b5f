/** Strength against overlap: asked again only when something other than the overlap has changed. */
import { type Accessor, batch, createEffect, createSignal, on, onCleanup, untrack } from 'solid-js';
import { quantities } from '../../shared/quantities.ts';
import type { SweepReport } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import { makeSettle } from '../settle.ts';
import { askedJoint, type JointSource, subjectOf } from './analysis.ts';
import { createSlow } from './slow.ts';

const QUIET = 250;
const LONGEST = quantities.overlap.max;
/** No range that is usual for an overlap, or for the plateau where that is longer, ends farther out. */
const mostDrawn = (overlap: number): number => 1.6 * overlap + 20;

export interface Sweep {
  readonly report: Accessor<SweepReport | null>;
  /** True when the report is of an older joint, overlap apart, and the new one long in coming. */
  readonly slow: Accessor<boolean>;
}

/** @param dragging true while the overlap is being dragged */
export function createSweep(source: JointSource, dragging: Accessor<boolean>): Sweep {
  const { bridge, project, index, active } = source;
  const [report, setReport] = createSignal<SweepReport | null>(null);
  /** How far the sweep must go to hold the present overlap; as far as it likes when undefined. */
  let reach: number | undefined;
  /** Something changed while nobody looked. */
  let owed = true;

  const [answered, setAnswered] = createSignal(-1);

  const latest = makeLatest(
    async (_revision: number) => {
      const joint = askedJoint(source);
      if (!joint) return null;
      const to = reach === undefined ? {} : { to: reach };
      return bridge.ask('joint.sweep', { ...joint, ...to });
    },
    (reply, revision) => {
      // A refusal is told by the analysis, at the field; the last good sweep stays, dimmed with it.
      if (!reply?.ok) return;
      batch(() => {
        setAnswered(revision);
        setReport(reply.value);
      });
    },
  );
  const ask = (): void => {
    owed = !untrack(active);
    if (owed || untrack(index) < 0) return;
    latest.ask(untrack(project.revisionBesidesOverlap));
  };
  const settle = makeSettle(ask, QUIET);
  /** At once, but after the analysis of the same moment: that one is looked at first. */
  const soon = makeSettle(ask, 0);
  onCleanup(() => {
    soon.drop();
    settle.drop();
    latest.drop();
  });

  let opening = untrack(project.opening);
  createEffect(
    on(
      project.revisionBesidesOverlap,
      () => {
        // What is opened anew is asked about at once, and not once more in a while.
        const isNew = untrack(project.opening) !== opening;
        opening = untrack(project.opening);
        if (!isNew) settle.ask();
      },
      { defer: true },
    ),
  );
  createEffect(
    on(subjectOf(source), () => {
      latest.drop();
      settle.drop();
      reach = undefined;
      setReport(null);
      soon.ask();
    }),
  );
  createEffect(on(active, (isActive) => isActive && owed && soon.ask(), { defer: true }));
  createEffect(() => {
    const [drawn, overlap] = [report(), project.document()?.joints[index()]?.overlap];
    const last = drawn?.points.at(-1)?.overlap;
    if (!drawn || last === undefined || overlap === undefined || dragging()) return;
    // An overlap left outside the drawn range would have no mark: draw a range that holds it.
    if (overlap > last && overlap <= LONGEST && last < LONGEST) {
      reach = Math.min(LONGEST, Math.ceil((overlap * 1.3) / 10) * 10);
      settle.ask();
    } else if (last > mostDrawn(Math.max(overlap, drawn.plateau ?? 0))) {
      // Drawn for one that has been left again: what is looked at would be in a corner of it.
      reach = undefined;
      settle.ask();
    }
  });
  const slow = createSlow({ wanted: project.revisionBesidesOverlap, shown: answered, active });
  return { report, slow };
}
