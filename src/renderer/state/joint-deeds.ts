/** Joints put in, copied, renamed and removed, with what is asked on the way. */
import type { Bridge } from '../../shared/contract.ts';
import type { Lap } from '../../shared/convert-lap.ts';
import { canMakeJoint } from '../../shared/new-joint.ts';
import { count } from '../../shared/words.ts';
import type { Asking } from './files/questions.ts';
import { addJoint, copyJoint, goesWith, removeJoint } from './joint-list.ts';
import { jointIndex, type ProjectState } from './project.ts';

export interface JointDeeds {
  /** Opens it too: its sizes are the next thing to put in. */
  add(lap: Lap): Promise<void>;
  copy(id: string): void;
  rename(id: string): Promise<void>;
  remove(id: string): Promise<void>;
}

export interface JointDeedsSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly asking: Asking;
  readonly openJoint: (id: string) => void;
  readonly onCopied: (id: string) => void;
}

const several = (n: number, one: string): string => `${count(n)} ${one}${n === 1 ? '' : 's'}`;

export function createJointDeeds(source: JointDeedsSource): JointDeeds {
  const { bridge, project, asking, openJoint, onCopied } = source;
  const nameOf = (id: string): string | undefined =>
    project.plain()?.joints.find((joint) => joint.id === id)?.name;
  return {
    async add(lap) {
      const document = project.plain();
      if (!document) return;
      const opening = project.opening();
      // Only a project without any material needs those of the demonstration.
      const typical = canMakeJoint(document) ? null : await bridge.ask('project.demo', {});
      if (opening !== project.opening()) return;
      const id = addJoint(project, lap, typical?.ok ? typical.value.document : undefined);
      if (id !== null) openJoint(id);
    },
    copy(id) {
      const made = copyJoint(project, id);
      if (made !== null) onCopied(made);
    },
    async rename(id) {
      const name = nameOf(id);
      const document = project.plain();
      if (name === undefined || !document) return;
      const wish = await asking.ask('rename', { what: 'joint', name });
      const at = jointIndex(project.plain() ?? document, id);
      if (wish !== null && wish !== name && at >= 0) project.edit(['joints', at, 'name'], wish);
    },
    async remove(id) {
      const document = project.plain();
      const name = nameOf(id);
      if (!document || name === undefined) return;
      const { variants, checks } = goesWith(document, id);
      const goes = variants === 0 ? '' : ` Its ${several(variants, 'variant')} go with it.`;
      const stays =
        checks === 0
          ? ''
          : ` ${several(checks, 'check')} of its measured parts stay in the project, as records.`;
      const word = await asking.ask('remove', {
        title: `Remove ${name}?`,
        text: `It is taken out of the project with its loads and sizes.${goes}${stays} Ctrl+Z brings it back.`,
        keep: 'Keep the joint',
        remove: 'Remove it',
      });
      if (word === 'remove') removeJoint(project, id);
    },
  };
}
