/** The window: one project, its workspaces by name, the cautions always in view. */
import {
  createEffect,
  createMemo,
  createSignal,
  type JSX,
  onCleanup,
  onMount,
  Show,
} from 'solid-js';
import { cautionShort } from '../shared/cautions.ts';
import type { Bridge } from '../shared/contract.ts';
import type { RequestError } from '../shared/reply.ts';
import type { CornerMargin, Opened } from '../shared/reports.ts';
import { sentence } from '../shared/words.ts';
import { createSheets, KeyDialogs } from './actions/KeyDialogs.tsx';
import { listenForKeys } from './actions/listen.ts';
import { createRegistry } from './actions/registry.ts';
import { Bar } from './Bar.tsx';
import { createLifeRows } from './coupons/lives/life-columns.ts';
import { createCouponRows } from './coupons/result-columns.ts';
import { download, fileName, fileText } from './files.ts';
import { AskUnsaved } from './parts/AskUnsaved.tsx';
import { OpenButton } from './parts/OpenButton.tsx';
import { createComparison } from './state/comparison.ts';
import { createCoupons } from './state/coupons.ts';
import { createGapCheck } from './state/gap-check.ts';
import { createJointsView } from './state/joints-view.ts';
import { createKeptChecks } from './state/kept-checks.ts';
import { createKeptRows } from './state/kept-rows.ts';
import { createProject, jointIndex, type Path } from './state/project.ts';
import { createSizing } from './state/sizing.ts';
import { createUndoing } from './state/undoing.ts';
import { createTheme } from './theme.ts';
import { createUnits } from './units.ts';
import { Workspace } from './Workspace.tsx';
import type { WorkspaceName } from './workspaces.ts';

/** Where in the file the fault is, for whoever opens it in an editor. */
const placeOf = (error: RequestError): string => (error.field === '' ? '' : ` (at ${error.field})`);

export function App(props: { readonly bridge: Bridge }): JSX.Element {
  const theme = createTheme();
  const units = createUnits();
  const project = createProject();
  const [workspace, setWorkspace] = createSignal<WorkspaceName>('joints');
  const [jointId, setJointId] = createSignal<string | null>(null);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  /** Opened, but waiting for a word about the changes that it would put away. */
  const [waiting, setWaiting] = createSignal<Opened | null>(null);
  const [starting, setStarting] = createSignal(true);

  const show = (opened: Opened): void => {
    project.open(opened);
    setJointId(opened.document.joints[0]?.id ?? null);
    setWorkspace('joints');
    setTrouble(null);
    setWaiting(null);
  };
  const arrived = (opened: Opened): void => {
    if (project.unsaved()) setWaiting(opened);
    else show(opened);
  };

  const start = async (): Promise<void> => {
    const reply = await props.bridge.ask('project.initial', {});
    setStarting(false);
    if (reply.ok) show(reply.value);
    else setTrouble(`${reply.error.message}${placeOf(reply.error)}`);
  };
  const openDemo = async (): Promise<void> => {
    const reply = await props.bridge.ask('project.demo', {});
    if (reply.ok) arrived(reply.value);
    else setTrouble(reply.error.message);
  };
  const openFile = async (file: File): Promise<void> => {
    const reply = await props.bridge.ask('project.read', {
      text: await file.text(),
      origin: file.name.slice(0, 300),
    });
    if (reply.ok) arrived(reply.value);
    else setTrouble(`Could not open ${file.name}${placeOf(reply.error)}: ${reply.error.message}`);
  };
  const save = (): void => {
    const document = project.plain();
    if (!document) return;
    download(fileName(document), fileText(document));
    project.markSaved();
  };

  const openJoint = (id: string): void => {
    setJointId(id);
    setWorkspace('size');
  };
  const current = (): number => {
    const document = project.document();
    const id = jointId();
    return document && id !== null ? jointIndex(document, id) : -1;
  };
  const currentJoint = () => project.document()?.joints[current()];
  const joints = createJointsView(props.bridge, project, () => workspace() === 'joints');
  const sizing = createSizing({
    bridge: props.bridge,
    project,
    index: createMemo(current),
    active: () => workspace() === 'size',
  });
  const comparison = createComparison({
    bridge: props.bridge,
    project,
    first: createMemo(() => currentJoint()?.id ?? null),
    active: () => workspace() === 'compare',
  });

  const onGap = (): boolean => workspace() === 'gap';
  const gapCheck = createGapCheck({
    bridge: props.bridge,
    project,
    index: createMemo(current),
    active: onGap,
  });
  const kept = createKeptChecks(props.bridge, project, onGap);
  const coupons = createCoupons({
    bridge: props.bridge,
    project,
    active: () => workspace() === 'coupons',
  });
  const couponRows = createCouponRows(project, coupons);
  const lifeRows = createLifeRows(project, coupons);

  const keptRows = createKeptRows({
    bridge: props.bridge,
    project,
    coupons,
    rows: couponRows,
    active: () => workspace() === 'coupons',
  });

  /** Of a joint that is not on the page a change would not be seen. */
  const movedAt = ([root, index]: Path): void => {
    const id = root === 'joints' ? project.document()?.joints[Number(index)]?.id : undefined;
    if (id !== undefined) setJointId(id);
  };
  const openCorner = (id: string, corner: CornerMargin): void => {
    sizing.drawCorner(id, corner);
    openJoint(id);
  };

  /** From the table of joints one goes on with the joint that has the focus. */
  const go = (name: WorkspaceName): void => {
    const focused = document.activeElement?.getAttribute('data-joint');
    if (focused) setJointId(focused);
    setWorkspace(name);
  };
  const undoing = createUndoing(project, movedAt);
  const sheets = createSheets();
  let chooseFile = (): void => {};
  const registry = createRegistry({
    project,
    theme,
    units,
    sizing,
    joints,
    coupons,
    undoing,
    workspace,
    go,
    joint: currentJoint,
    index: current,
    openJoint,
    chooseFile: () => chooseFile(),
    openDemo: () => void openDemo(),
    save,
    find: () => sheets.toggle('find'),
    chooseUnits: () => sheets.toggle('units'),
    listKeys: () => sheets.toggle('list'),
  });
  listenForKeys(registry.fixed);

  const leaving = (event: BeforeUnloadEvent): void => {
    // A browser asks by itself then; in Electron the shell does.
    if (project.unsaved()) event.preventDefault();
  };
  onMount(() => {
    void start();
    window.addEventListener('beforeunload', leaving);
  });
  onCleanup(() => {
    window.removeEventListener('beforeunload', leaving);
  });
  createEffect(() => {
    const name = project.document()?.name;
    document.title = name ? `${name}${project.unsaved() ? ' *' : ''} · Lapwright` : 'Lapwright';
  });

  return (
    <>
      <Bar
        project={project}
        undoing={undoing}
        theme={theme}
        units={units}
        onUnits={() => sheets.toggle('units')}
        workspace={workspace()}
        onWorkspace={setWorkspace}
        onFile={(file) => void openFile(file)}
        onSave={save}
        onKeys={() => sheets.toggle('list')}
        onChooser={(choose) => {
          chooseFile = choose;
        }}
      />

      <main>
        <Show when={project.document() !== null && trouble()}>
          {(message) => (
            <div class="notice" role="alert">
              <p>{sentence(message())}</p>
              <button type="button" class="link" onClick={() => setTrouble(null)}>
                Close
              </button>
            </div>
          )}
        </Show>
        <Show
          when={project.document()}
          fallback={
            <div class="start">
              <Show
                when={trouble()}
                fallback={
                  <Show when={starting()}>
                    <p class="figure-empty">Opening …</p>
                  </Show>
                }
              >
                {(message) => (
                  <>
                    <h1>The project could not be opened</h1>
                    <p role="alert">{sentence(message())}</p>
                    <div class="start-buttons">
                      <button type="button" class="plain is-first" onClick={() => void openDemo()}>
                        Open the demonstration project
                      </button>
                      <OpenButton
                        plain
                        text="Open another file …"
                        onFile={(file) => void openFile(file)}
                      />
                    </div>
                  </>
                )}
              </Show>
            </div>
          }
        >
          <Workspace
            name={workspace()}
            bridge={props.bridge}
            project={project}
            theme={theme}
            joints={joints}
            sizing={sizing}
            comparison={comparison}
            gapCheck={gapCheck}
            kept={kept}
            coupons={coupons}
            couponRows={couponRows}
            lifeRows={lifeRows}
            keptRows={keptRows}
            index={current()}
            joint={currentJoint()}
            onJoint={setJointId}
            onSize={openJoint}
            onCorner={openCorner}
          />
        </Show>
      </main>

      <footer class="caution">{cautionShort}</footer>

      <KeyDialogs sheets={sheets} registry={registry} units={units} page={workspace()} />
      <Show when={waiting()}>
        {(opened) => (
          <AskUnsaved
            name={project.document()?.name ?? ''}
            onSave={() => {
              save();
              show(opened());
            }}
            onDiscard={() => show(opened())}
            onStay={() => setWaiting(null)}
          />
        )}
      </Show>
    </>
  );
}
