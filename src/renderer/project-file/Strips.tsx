/** Quiet lines under the bar: what was not saved, what was open last, what others did to the file. */
import { For, type JSX, Show } from 'solid-js';
import type { RecentFile } from '../../shared/reports-files.ts';
import { count, sentence } from '../../shared/words.ts';
import type { ProjectFiles } from '../state/files/project-files.ts';
import type { KeptDocument, PutAway } from '../state/files/recovery.ts';
import type { Outside } from '../state/files/watch.ts';
import type { ProjectState } from '../state/project.ts';
import { dayText, lastPart, shortFolder, whenText } from './file-words.ts';

export interface StripsProps {
  readonly files: ProjectFiles;
  readonly project: ProjectState;
  /** Nobody answers any more: nothing else is worth a line then. */
  readonly gone: boolean;
  /** Nobody has answered for long, and may again. */
  readonly silent: boolean;
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
  /** Where the whole of it stands, for whoever points at it. */
  readonly title?: string;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <div class="strip" classList={{ 'is-warning': props.warns ?? false }}>
      <p title={props.title}>{props.children}</p>
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

const keptText = (kept: KeptDocument): string => {
  const { project, path, at, changedSince, ofThisPage } = kept;
  const when = ofThisPage
    ? 'this page was loaded anew'
    : 'its window was closed or Lapwright stopped';
  // Two projects may have one name: the demonstration and the first file that was made from it do.
  const file = path === null ? '' : lastPart(path);
  const since = changedSince && file !== '' ? ` ${file} has been changed since.` : '';
  const changes = file === '' ? 'changes' : `changes of ${file}`;
  return `${project} was not saved when ${when}: ${changes} up to ${whenText(at)} are kept.${since}`;
};

const awayText = ({ kept, until }: PutAway): string =>
  `The changes of ${kept.project} up to ${whenText(kept.at)} are put away: they stay in Lapwright’s own folder until ${dayText(until)}.`;

const lastText = ({ name, folder, at, found }: RecentFile): string =>
  `You last worked on ${name} (${shortFolder(folder)}, ${whenText(at)})${found ? '.' : ', which is not there any more.'}`;

const goneText = (keptAt: string | null, unsaved: boolean): string => {
  const what = 'Lapwright does not answer: nothing is calculated or saved here any more.';
  if (!unsaved) return `${what} Start it again and open the address that it prints.`;
  const copy = `${what} Save a copy: it has all of your changes.`;
  return keptAt === null
    ? `${copy} Then start Lapwright again.`
    : `${copy} Started again, Lapwright offers those up to ${whenText(keptAt)}.`;
};

/** It may be stopped or hang, and may go on. */
const silentText = (unsaved: boolean): string => {
  const what =
    'Lapwright does not answer at the moment: nothing is calculated or saved here until it does.';
  return unsaved ? `${what} Save a copy: it has all of your changes.` : what;
};

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
  /** Not beside changes of that very file. */
  const last = (): RecentFile | null => {
    const found = files.lastWorked();
    const isOffered = files.recovery.offered().some(({ path }) => path === found?.path);
    return isOffered ? null : found;
  };
  const lastDeeds = (recent: RecentFile): readonly Deed[] => [
    recent.found
      ? { text: 'Open it', act: () => void files.openRecent(recent) }
      : { text: 'Forget it', act: () => void files.forget(recent.path).then(files.closeLast) },
    { text: 'Close', act: files.closeLast },
  ];
  const others = (): JSX.Element => (
    <>
      <For each={files.recovery.offered()}>
        {(kept) => (
          <Strip
            {...(kept.path === null ? {} : { title: kept.path })}
            deeds={[
              {
                text: 'Open them',
                label: `Open them: the kept changes of ${kept.project}`,
                act: () => void files.openKept(kept),
              },
              {
                text: 'Put away',
                label: `Put away: the kept changes of ${kept.project}`,
                act: () => void files.recovery.putAway(kept),
              },
            ]}
          >
            {keptText(kept)}
          </Strip>
        )}
      </For>
      <For each={files.recovery.away()}>
        {(away) => (
          <Strip
            title={away.at}
            deeds={[
              {
                text: 'Take them back',
                label: `Take them back: the changes of ${away.kept.project}`,
                act: () => void files.recovery.takeBack(away),
              },
              { text: 'Close', act: () => files.recovery.closeAway(away) },
            ]}
          >
            {awayText(away)}
          </Strip>
        )}
      </For>
      <Show when={last()}>
        {(recent) => (
          <Strip title={recent().path} deeds={lastDeeds(recent())}>
            {lastText(recent())}
          </Strip>
        )}
      </Show>
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
    </>
  );
  return (
    <section class="strips" aria-label="Notices" aria-live="polite">
      <Show when={(props.gone || props.silent) && project.document() !== null} fallback={others()}>
        <Strip
          warns
          deeds={project.unsaved() ? [{ text: 'Save a copy', act: files.saveCopy }] : []}
        >
          {props.gone
            ? goneText(files.recovery.keptAt(), project.unsaved())
            : silentText(project.unsaved())}
        </Strip>
      </Show>
    </section>
  );
}

const outsideText = (outside: Outside, name: string): string =>
  outside.kind === 'gone'
    ? `${name} is not on the disk any more. Saving writes it anew.`
    : `${name} was changed by another window of Lapwright or another program at ${whenText(outside.at)}.`;
