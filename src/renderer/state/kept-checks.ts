/** Checks that were kept on disk but are not in the document, or are older there: to be taken in. */
import { type Accessor, createEffect, createSignal, on } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { KeptCheck } from '../../shared/reports-gap.ts';
import type { ProjectState } from './project.ts';

export interface KeptChecks {
  readonly offered: Accessor<readonly KeptCheck[]>;
  takeIn(kept: KeptCheck): void;
  putAway(kept: KeptCheck): void;
}

/** Asked once for each project that is opened, when its page is first looked at. */
export function createKeptChecks(
  bridge: Bridge,
  project: ProjectState,
  active: Accessor<boolean>,
): KeptChecks {
  const [offered, setOffered] = createSignal<readonly KeptCheck[]>([]);
  let asked = -1;
  createEffect(
    on([active, project.opening], async ([looked, opening]) => {
      const name = project.document()?.name;
      if (!looked || name === undefined || asked === opening) return;
      asked = opening;
      setOffered([]);
      const reply = await bridge.ask('bench.kept', { project: name });
      if (!reply.ok || asked !== opening) return;
      const known = new Map(
        (project.document()?.gapChecks ?? []).map((check) => [check.id, JSON.stringify(check)]),
      );
      setOffered(
        reply.value.checks.filter(({ check }) => known.get(check.id) !== JSON.stringify(check)),
      );
    }),
  );
  const without = (gone: KeptCheck): void => {
    setOffered((list) => list.filter((kept) => kept !== gone));
  };
  return {
    offered,
    takeIn(kept) {
      const others = (project.plain()?.gapChecks ?? []).filter(({ id }) => id !== kept.check.id);
      project.edit(['gapChecks'], [...others, kept.check]);
      without(kept);
    },
    putAway(kept) {
      void bridge.ask('bench.drop', { project: kept.project, checkId: kept.check.id });
      without(kept);
    },
  };
}
