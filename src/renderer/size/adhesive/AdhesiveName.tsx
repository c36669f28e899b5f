/** What an adhesive is called, where its figures come from, copies of it and those that nobody uses. */
import type { JSX } from 'solid-js';
import type { Path } from '../../state/project.ts';
import { usesOfAdhesive } from '../../state/uses.ts';
import { Copies } from '../Copies.tsx';
import { Disclosure } from '../Disclosure.tsx';
import { SourceField } from '../SourceField.tsx';
import { TextField } from '../TextField.tsx';
import type { OfAdhesive } from './AdhesiveProperties.tsx';

export interface AdhesiveNameProps extends OfAdhesive {
  /** Where the joint names its adhesive. */
  readonly path: Path;
  readonly jointId: string;
  readonly opened: boolean;
  readonly onFresh: (id: string | null) => void;
}

export function AdhesiveName(props: AdhesiveNameProps): JSX.Element {
  const sharedWith = (): readonly string[] => {
    const document = props.project.document();
    const id = document?.adhesives[props.index]?.id;
    if (!document || id === undefined) return [];
    const joints = document.joints.filter((joint) => joint.id !== props.jointId);
    const { joints: others, coupons } = usesOfAdhesive({ ...document, joints }, id);
    return [...others, ...coupons];
  };
  return (
    <Disclosure title="Adhesive: name and source" opened={props.opened}>
      <TextField
        project={props.project}
        issues={props.issues}
        path={['adhesives', props.index, 'name']}
        label="Name"
        name="Adhesive, name"
      />
      <SourceField
        project={props.project}
        issues={props.issues}
        path={['adhesives', props.index, 'source']}
        of="Adhesive"
      />
      <Copies
        project={props.project}
        list="adhesives"
        index={props.index}
        path={props.path}
        what="adhesive"
        sharedWith={sharedWith()}
        onFresh={props.onFresh}
      />
    </Disclosure>
  );
}
