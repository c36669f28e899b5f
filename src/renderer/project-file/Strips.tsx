/** Quiet lines under the bar: what was not saved when the program stopped, what others did to the file. */
import { For, type JSX, Show } from 'solid-js';
import { count, sentence } from '../../shared/words.ts';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { KeptDocument } from '../state/files/recovery.ts';
import type { Outside } from '../state/files/watch.ts';
import type { ProjectState } from '../state/project.ts';
import { lastPart, whenText } from './file-words.ts';

export interface StripsProps {
  readonly files: ProjectFiles;
  readonly project: ProjectState;
}

interface Deed {
  readonly text: string;
  /** As it is read out, where several lines have the same words. */
  readonly label?: string;
  readonly act: () => void;
}

function Strip(props: {
  readonly deeds: readonly Deed[];
  readonly warns?: boolean;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <div class="strip" classList={{ 'is-warning': props.warns ?? false }}>
      <p>{props.children}</p>
      <span class="strip-deeds">
        <For each={props.deeds}>
          {({ text, label, act }) => (
            <button type="button" class="link" aria-label={label} onClick={act}>
              {text}
            </button>
          )}
        </For>
      </span>
    </div>
  );
}

const keptText = ({ project, path, at, changedSince }: KeptDocument): string =>
  `${project} was not saved when Lapwright stopped: changes up to ${whenText(at)} are kept.${
    changedSince && path !== null ? ` ${lastPart(path)} has been changed since.` : ''
  }`;

export function Strips(props: StripsProps): JSX.Element {
  const { files, project } = props;
  const name = (): string => files.file()?.name ?? '';
  const losing = (): string => {
    if (!project.unsaved()) return '';
    const n = project.unsavedChanges();
    if (n === null) return ', losing your changes';
    return `, losing ${n === 1 ? 'one change' : `${count(n)} changes`}`;
  };
  const outsideDeeds = (outside: Outside): readonly Deed[] =>
    outside.kind === 'gone'
      ? [
          { text: 'Save it again', act: () => void files.save() },
          { text: 'Save as …', act: () => void files.saveAs() },
        ]
      : [
          { text: `Open that version${losing()}`, act: () => void files.openOutside() },
          { text: 'Keep mine', act: files.keepMine },
        ];
  return (
    <section class="strips" aria-label="Notices" aria-live="polite">
      <For each={files.recovery.offered()}>
        {(kept) => (
          <Strip
            deeds={[
              {
                text: 'Open them',
                label: `Open them: the kept changes of ${kept.project}`,
                act: () => void files.openKept(kept),
              },
              {
                text: 'Put away',
                label: `Put away: the kept changes of ${kept.project}`,
                act: () => void files.recovery.drop(kept),
              },
            ]}
          >
            {keptText(kept)}
          </Strip>
        )}
      </For>
      <Show when={files.outside()}>
        {(outside) => (
          <Strip warns deeds={outsideDeeds(outside())}>
            {outsideText(outside(), name())}
          </Strip>
        )}
      </Show>
      <Show when={files.olderVersion() !== null}>
        <Strip deeds={[{ text: 'Close', act: files.hideOlderVersion }]}>
          {name() || project.origin()} was written by an older Lapwright; it is kept in the newer
          form when you save.
        </Strip>
      </Show>
      <Show when={files.recovery.trouble()}>
        {(message) => (
          <Strip warns deeds={[{ text: 'Save now', act: () => void files.save() }]}>
            {sentence(message())}
          </Strip>
        )}
      </Show>
    </section>
  );
}

const outsideText = (outside: Outside, name: string): string =>
  outside.kind === 'gone'
    ? `${name} is not on the disk any more. Saving writes it anew.`
    : `${name} was changed by another program at ${whenText(outside.at)}.`;
