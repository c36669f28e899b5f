/** What can be done to one joint of the table. */
import type { JSX } from 'solid-js';
import { Menu } from '../parts/Menu.tsx';
import type { JointDeeds } from '../state/joint-deeds.ts';

export interface JointMenuProps {
  readonly id: string;
  readonly name: string;
  readonly deeds: JointDeeds;
  readonly onOpen: () => void;
}

export const JointMenu = (props: JointMenuProps): JSX.Element => (
  <Menu
    label={`More of ${props.name}`}
    class="joint-more"
    title="Copy, rename, remove"
    atEnd
    entries={() => [
      { kind: 'item', label: 'Open', end: 'Enter', isKey: true, onChoose: props.onOpen },
      { kind: 'line' },
      { kind: 'item', label: 'Copy', onChoose: () => props.deeds.copy(props.id) },
      {
        kind: 'item',
        label: 'Rename …',
        end: 'F2',
        isKey: true,
        onChoose: () => void props.deeds.rename(props.id),
      },
      {
        kind: 'item',
        label: 'Remove …',
        end: 'Del',
        isKey: true,
        onChoose: () => void props.deeds.remove(props.id),
      },
    ]}
  >
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M3 8 h0.01 M8 8 h0.01 M13 8 h0.01" />
    </svg>
  </Menu>
);
