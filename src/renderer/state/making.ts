/** New columns: the other lap made equal in one thing, asked of the core, or a copy to change by hand. */

import { type Accessor, batch, createSignal } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import type { Plies } from '../../shared/lap-variant.ts';
import type { Joint } from '../../shared/project.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { Equal } from '../../shared/reports-compare.ts';
import type { Said } from '../../shared/said.ts';
import type { Column } from './compared.ts';
import { createJob, type Job } from './job.ts';
import { jointIndex, type ProjectState, withOneJoint } from './project.ts';
import { addCopy, addVariant } from './variants.ts';

export interface Making {
  /** The first column's joint with this lap: into the project, and beside it. True when it is there. */
  lap(lap: Plies, equal: Equal): Promise<boolean>;
  copy(joint: Joint): void;
  /** What was changed to make a variant, in words; empty for what was not made since the project was opened. */
  changed(id: string): readonly Said[];
  /** Why the last one could not be made; null after one that could, and when it was stopped. */
  readonly refusal: Accessor<RequestError | null>;
  forget(): void;
  readonly job: Job;
}

export interface MakingSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly first: Accessor<string | null>;
  readonly add: (column: Column) => void;
  readonly full: Accessor<boolean>;
}

export function createMaking({ bridge, project, first, add, full }: MakingSource): Making {
  const job = createJob(bridge);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  const [changes, setChanges] = createSignal<ReadonlyMap<string, readonly Said[]>>(new Map());
  const keyOf = (id: string): string => `${project.opening()} ${id}`;
  const put = (id: string | null): boolean => {
    if (id !== null) add({ kind: 'variant', id });
    return id !== null;
  };
  return {
    async lap(lap, equal) {
      const [whole, jointId, opening] = [project.plain(), first(), project.opening()];
      const document = whole && jointId !== null && withOneJoint(whole, jointIndex(whole, jointId));
      if (!document || jointId === null || full()) return false;
      setRefusal(null);
      const reply = await job.run('joint.variant', { document, jointId, lap, equal });
      // Of a project that was put away meanwhile nothing is kept.
      if (opening !== project.opening()) return false;
      if (!reply.ok) {
        setRefusal(reply.error.code === 'stopped' ? null : reply.error);
        return false;
      }
      const { of, joint, changed } = reply.value;
      return batch(() => {
        const id = addVariant(project, { of, joint });
        if (id !== null) setChanges((all) => new Map(all).set(keyOf(id), changed));
        return first() === jointId ? put(id) : false;
      });
    },
    copy(joint) {
      if (full()) return;
      batch(() => put(addCopy(project, joint)));
    },
    changed: (id) => changes().get(keyOf(id)) ?? [],
    refusal,
    forget: () => setRefusal(null),
    job,
  };
}
