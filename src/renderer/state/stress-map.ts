/** Shear and peel over the bond and around it: asked only while it is looked at. */
import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import type { JointReport, StressReport } from '../../shared/reports.ts';
import { makeLatest } from '../latest.ts';
import { askedJoint, type JointSource, subjectOf } from './analysis.ts';
import { focusOfStress } from './drawn-state.ts';
import { createSlow } from './slow.ts';

/** Every ten degrees, and as many stations as the eye tells apart on a plot this wide. */
const CLOCKINGS = 36;
const STATIONS = 61;

export interface MapState {
  readonly shown: Accessor<boolean>;
  show(shown: boolean): void;
  /** The stress report that the map came with; null until it has come. */
  readonly stress: Accessor<StressReport | null>;
  /** Why there is none; empty when nothing was refused. */
  readonly refused: Accessor<string>;
  readonly slow: Accessor<boolean>;
}

export function createStressMap(
  source: JointSource,
  report: Accessor<JointReport | null>,
  dragging: Accessor<boolean>,
): MapState {
  const { bridge, active } = source;
  const [shown, setShown] = createSignal(false);
  const [stress, setStress] = createSignal<StressReport | null>(null);
  const [refused, setRefused] = createSignal('');
  const [answered, setAnswered] = createSignal<StressReport | null>(null);
  /** The drawn state is mapped; its report comes after every change. */
  const drawn = createMemo(() => (shown() && active() ? (report()?.stress ?? null) : null));

  const latest = makeLatest(
    async (about: StressReport) => {
      const joint = askedJoint(source);
      if (!joint) return null;
      const focus = { ...focusOfStress(about), stations: STATIONS, map: CLOCKINGS };
      return bridge.ask('joint.stress', { ...joint, focus });
    },
    (reply, about) => {
      if (!reply) return;
      setAnswered(about);
      if (reply.ok) setStress(reply.value);
      setRefused(reply.ok ? '' : reply.error.message);
    },
  );
  onCleanup(() => latest.drop());

  createEffect(
    on(
      subjectOf(source),
      () => {
        latest.drop();
        setStress(null);
        setRefused('');
      },
      { defer: true },
    ),
  );
  createEffect(() => {
    const about = drawn();
    // In a drag the curves and margins come first.
    if (about && !dragging()) latest.ask(about);
  });
  return {
    shown,
    show: setShown,
    stress,
    refused,
    slow: createSlow({ wanted: drawn, shown: answered, active: () => drawn() !== null }),
  };
}
