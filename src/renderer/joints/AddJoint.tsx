/** Adds a joint of a kind that is chosen. */
import type { JSX } from 'solid-js';
import { laps, newJointWords } from '../../shared/new-joint.ts';
import { Menu } from '../parts/Menu.tsx';
import type { JointDeeds } from '../state/joint-deeds.ts';

export interface AddJointProps {
  readonly deeds: JointDeeds;
  readonly class?: string;
}

export const AddJoint = (props: AddJointProps): JSX.Element => (
  <Menu
    label="Add a joint"
    class={props.class ?? 'link'}
    entries={() =>
      laps.map((lap) => ({
        kind: 'item' as const,
        label: newJointWords[lap],
        onChoose: () => void props.deeds.add(lap),
      }))
    }
  >
    Add a joint
  </Menu>
);
