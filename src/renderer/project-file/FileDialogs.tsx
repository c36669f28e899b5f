/** The dialog of the question that is open, if one is. */
import { type JSX, Show } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { AskFirst } from '../parts/AskFirst.tsx';
import { AskUnsaved } from '../parts/AskUnsaved.tsx';
import { AskVerbs } from '../parts/AskVerbs.tsx';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { Question } from '../state/files/questions.ts';
import { FolderDialog } from './FolderDialog.tsx';
import { NameDialog } from './NameDialog.tsx';
import { NewDialog } from './NewDialog.tsx';

export interface FileDialogsProps {
  readonly bridge: Bridge;
  readonly files: ProjectFiles;
}

function dialogOf(question: Question, { bridge, files }: FileDialogsProps): JSX.Element {
  const { kind, about, answer } = question;
  const stay = { text: 'Stay here', act: () => answer(null) };
  switch (kind) {
    case 'unsaved':
      return (
        <AskUnsaved
          name={about.name}
          instead={about.instead}
          onSave={() => answer('save')}
          onDiscard={() => answer('discard')}
          onStay={() => answer(null)}
        />
      );
    case 'changed':
      return (
        <AskVerbs
          title={`${about.name} was changed by another window of Lapwright or another program since it was opened here.`}
          text="Replacing it puts your version in its place; what stands there now is kept beside it, as the one before."
          verbs={[
            { text: 'Save as …', act: () => answer('as') },
            { text: 'Replace it', act: () => answer('replace') },
            stay,
          ]}
        />
      );
    case 'exists':
      return (
        <AskVerbs
          title={`There is a file ${about.name} already.`}
          text={`It is in ${about.folder}. Replacing it keeps what stands there now beside it, as the one before.`}
          verbs={[
            { text: 'Choose another name …', act: () => answer('as') },
            { text: 'Replace it', act: () => answer('replace') },
            stay,
          ]}
        />
      );
    case 'readOnly':
      return (
        <AskVerbs
          title={`${about.name} is read only.`}
          text={`This user may not write it in ${about.folder}. Your changes can be saved elsewhere.`}
          verbs={[{ text: 'Save as …', act: () => answer('as') }, stay]}
        />
      );
    case 'lost':
      return (
        <AskVerbs
          title={`${about.name} is not there any more.`}
          text={`It was in ${about.folder}. Where it was moved, Open finds it; forgotten, it is listed no more.`}
          verbs={[
            { text: 'Keep it in the list', act: () => answer(null) },
            { text: 'Forget it', act: () => answer('forget') },
          ]}
        />
      );
    case 'remove':
      return <AskFirst {...about} onKeep={() => answer(null)} onRemove={() => answer('remove')} />;
    case 'begin':
      return <NewDialog name={about.name} onAnswer={answer} />;
    case 'rename':
      return <NameDialog title={`Rename the ${about.what}`} name={about.name} onName={answer} />;
    case 'browse':
      return <FolderDialog bridge={bridge} files={files} wish={about} onAnswer={answer} />;
  }
}

export const FileDialogs = (props: FileDialogsProps): JSX.Element => (
  <Show when={props.files.asking.open()} keyed>
    {(question) => dialogOf(question, props)}
  </Show>
);
