/** The requests about files: what they take, handed on to the disk. */
import type { z } from 'zod';
import type { fileRequests as asked } from '../../../shared/contract-files.ts';
import { type Reply, refuse } from '../../../shared/reply.ts';
import type { ProjectFiles } from '../../files/project-files.ts';

/** Who asks; the name of the document stands for a page that does not name itself. */
export interface FileContext {
  readonly client?: string | undefined;
}

type Input<N extends keyof typeof asked> = z.infer<(typeof asked)[N]>;

const none = (): Reply<never> =>
  refuse(
    'bad-request',
    '',
    'Files are opened and saved by the window: the terminal reads the project that it is given.',
  );

/** @param files left out where there are none, as in the terminal */
export const fileHandlers = (files?: ProjectFiles) => ({
  'file.places': () => files?.places() ?? none(),
  'file.choose': (wish: Input<'file.choose'>) => files?.choose(wish) ?? none(),
  'folder.look': ({ folder }: Input<'folder.look'>) => files?.look(folder) ?? none(),
  'folder.choose': ({ folder, make }: Input<'folder.choose'>) =>
    files?.chooseFolder(folder, make) ?? none(),
  'file.open': ({ path }: Input<'file.open'>) => files?.open(path) ?? none(),
  'file.save': ({ path, document, expect, over }: Input<'file.save'>) =>
    files?.save(path, document, { expect, over }) ?? none(),
  'file.stamp': ({ path }: Input<'file.stamp'>) => files?.stamp(path) ?? none(),
  'recent.forget': ({ path }: Input<'recent.forget'>) => files?.forget(path) ?? none(),
  'recovery.keep': (unsaved: Input<'recovery.keep'>, { client }: FileContext) =>
    files?.recovery.keep(unsaved, client ?? unsaved.recovery) ?? none(),
  'recovery.kept': ({ own }: Input<'recovery.kept'>, { client }: FileContext) =>
    files?.recovery.kept(own, client ?? own[0] ?? '') ?? none(),
  'recovery.open': ({ recovery }: Input<'recovery.open'>) =>
    files?.recovery.open(recovery) ?? none(),
  'recovery.drop': ({ recovery }: Input<'recovery.drop'>) =>
    files?.recovery.drop(recovery) ?? none(),
  'recovery.take-back': ({ recovery }: Input<'recovery.take-back'>) =>
    files?.recovery.takeBack(recovery) ?? none(),
});
