/** Joints put in, copied, renamed and removed. */
import { laps, newJointWords } from '../../shared/new-joint.ts';
import type { Action, Reach } from './action.ts';

export const jointActions = ({ project, joint, jointDeeds }: Reach): Action[] => {
  const named = (what: string): string => `${what} ${joint()?.name ?? 'the joint'}`;
  const isThere = (): boolean => joint() !== undefined;
  const ofThis = (act: (id: string) => void) => (): void => {
    const one = joint();
    if (one) act(one.id);
  };
  return [
    ...laps.map(
      (lap): Action => ({
        id: `add joint ${lap}`,
        title: () => `Add a joint, ${newJointWords[lap].toLowerCase()}`,
        group: 'joint',
        also: 'new create',
        available: () => project.document() !== null,
        run: () => void jointDeeds.add(lap),
      }),
    ),
    {
      id: 'copy joint',
      title: () => named('Copy'),
      group: 'joint',
      also: 'duplicate joint',
      available: isThere,
      run: ofThis(jointDeeds.copy),
    },
    {
      id: 'rename joint',
      title: () => `${named('Rename')} …`,
      group: 'joint',
      also: 'name joint',
      available: isThere,
      run: ofThis((id) => void jointDeeds.rename(id)),
    },
    {
      id: 'remove joint',
      title: () => `${named('Remove')} …`,
      group: 'joint',
      also: 'delete joint',
      available: isThere,
      run: ofThis((id) => void jointDeeds.remove(id)),
    },
  ];
};
