/** The window: one project, its workspaces by name, the cautions always in view. */
import {
  createEffect,
  createMemo,
  createSignal,
  type JSX,
  on,
  onCleanup,
  onMount,
  Show,
} from 'solid-js';
import { cautionShort } from '../shared/cautions.ts';
import type { Bridge } from '../shared/contract.ts';
import type { CornerMargin } from '../shared/reports.ts';
import { createSheets, KeyDialogs } from './actions/KeyDialogs.tsx';
import { listenForCommands, listenForKeys } from './actions/listen.ts';
import { keepFocus, keepFocusOnPage } from './actions/panes.ts';
import { createRegistry } from './actions/registry.ts';
import { type SheetOf, sheetOf } from './actions/sheet-actions.ts';
import { Bar } from './Bar.tsx';
import { createLifeRows } from './coupons/lives/life-columns.ts';
import { createCouponRows } from './coupons/result-columns.ts';
import { createFieldNotes, FieldNote } from './help/FieldNote.tsx';
import { createTour, TourContext } from './help/tour.ts';
import { fetchPages, SheetView } from './pages.ts';
import { SaidLine } from './parts/SaidLine.tsx';
import { Upload } from './parts/Upload.tsx';
import { DropZone } from './project-file/DropZone.tsx';
import { FileDialogs } from './project-file/FileDialogs.tsx';
import { StartPane } from './project-file/StartPane.tsx';
import { Strips } from './project-file/Strips.tsx';
import { TroubleNotice } from './project-file/TroubleNotice.tsx';
import { giveSigns } from './sign-of-life.ts';
import { createComparison } from './state/comparison.ts';
import { createCoupons } from './state/coupons.ts';
import { createProjectFiles } from './state/files/project-files.ts';
import type { Trouble } from './state/files/trouble.ts';
import { createGapCheck } from './state/gap-check.ts';
import { watchHost } from './state/host.ts';
import { createJointDeeds } from './state/joint-deeds.ts';
import { createJointsView } from './state/joints-view.ts';
import { createKeptChecks } from './state/kept-checks.ts';
import { createKeptRows } from './state/kept-rows.ts';
import { createProject, jointIndex, type Path } from './state/project.ts';
import { refusedSentence } from './state/refused.ts';
import { createSaid } from './state/said.ts';
import { createSheet } from './state/sheet.ts';
import { createSizing } from './state/sizing.ts';
import { createUndoing } from './state/undoing.ts';
import { createTheme } from './theme.ts';
import { createUnits } from './units.ts';
import { Workspace } from './Workspace.tsx';
import { showInWindow } from './window-signs.ts';
import type { WorkspaceName } from './workspaces.ts';

export function App(given: { readonly bridge: Bridge }): JSX.Element {
  const host = watchHost(given.bridge);
  const props = { bridge: host.bridge };
  onCleanup(giveSigns(host.bridge));
  const theme = createTheme();
  const units = createUnits();
  const project = createProject();
  const said = createSaid();
  const [workspace, setWorkspace] = createSignal<WorkspaceName>('joints');
  const [jointId, setJointId] = createSignal<string | null>(null);
  const [trouble, setTrouble] = createSignal<Trouble | null>(null);
  const [starting, setStarting] = createSignal(true);
  const files = createProjectFiles({
    bridge: props.bridge,
    project,
    onTrouble: setTrouble,
    onWritten() {
      const refused = project.refused.all();
      if (refused.length > 0) said.warn(refusedSentence(refused, 'is saved'));
    },
    onOpened() {
      setJointId(project.plain()?.joints[0]?.id ?? null);
      setWorkspace('joints');
    },
  });

  const start = async (): Promise<void> => {
    const isOpen = await files.start();
    setStarting(false);
    if (!isOpen) return;
    // What comes next is at hand before it is asked for, and the first picture did not wait for it.
    void fetchPages();
    void tour.startFirst();
  };

  const openJoint = (id: string): void => {
    setJointId(id);
    sheet.close();
    setWorkspace('size');
  };
  const current = (): number => {
    const document = project.document();
    if (!document) return -1;
    const at = jointIndex(document, jointId() ?? '');
    // One that was removed, or taken back, leaves the first to be looked at.
    return at < 0 && document.joints.length > 0 ? 0 : at;
  };
  const currentJoint = () => project.document()?.joints[current()];
  const sheet = createSheet({ bridge: props.bridge, project });
  const joints = createJointsView(
    props.bridge,
    project,
    () => workspace() === 'joints',
    sheet.wantsTable,
  );
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
    sheet.close();
    setWorkspace(name);
  };
  const showSheet = (of: SheetOf): void => {
    const id = currentJoint()?.id;
    if (of === 'project') sheet.showProject();
    else if (of === 'compared') sheet.showJoints(comparison.columns());
    else if (id !== undefined) sheet.showJoints([{ kind: 'joint', id }]);
  };
  const undoing = createUndoing(project, said, movedAt);
  const sheets = createSheets();
  let upload = (): void => {};
  const jointDeeds = createJointDeeds({
    bridge: props.bridge,
    project,
    asking: files.asking,
    openJoint,
    onCopied: setJointId,
  });
  const fieldNotes = createFieldNotes();
  const tour = createTour(props.bridge, workspace);
  const showNotes = (): void => {
    // The first speaks of the list of joints, the others of the joint that is open.
    if (workspace() !== 'size') {
      joints.setView('list');
      setWorkspace('joints');
    }
    tour.start();
  };
  const registry = createRegistry({
    project,
    theme,
    units,
    sizing,
    joints,
    coupons,
    undoing,
    sheetOpen: sheet.open,
    showSheet,
    setPaper: sheet.setPaper,
    workspace,
    go,
    joint: currentJoint,
    index: current,
    openJoint,
    files,
    upload: () => upload(),
    jointDeeds,
    find: () => sheets.toggle('find'),
    chooseUnits: () => sheets.toggle('units'),
    listKeys: () => sheets.toggle('list'),
    guide: () => sheets.toggle('guide'),
    fieldHelp: fieldNotes.toggle,
    showNotes,
    about: () => sheets.toggle('about'),
  });
  listenForKeys(registry.fixed);
  listenForCommands(registry.fixed, props.bridge, {
    openFile: (path) => void files.openPath(path),
    async saveAndClose() {
      if (await files.save()) window.close();
    },
  });

  onMount(() => void start());
  showInWindow(project);
  // What went away took the focus with it: the sheet; a page or a joint.
  createEffect(on(sheet.open, (open) => !open && queueMicrotask(keepFocus), { defer: true }));
  createEffect(
    on([workspace, () => currentJoint()?.id], (_now, before) => {
      // At the start nothing went away.
      if (before?.[1] !== undefined) queueMicrotask(keepFocusOnPage);
    }),
  );

  return (
    <>
      <Bar
        project={project}
        files={files}
        actions={registry.fixed}
        undoing={undoing}
        theme={theme}
        units={units}
        onUnits={() => sheets.toggle('units')}
        workspace={workspace()}
        onWorkspace={go}
        onKeys={() => sheets.toggle('list')}
        onGuide={() => sheets.toggle('guide')}
        onNotes={showNotes}
        onAbout={() => sheets.toggle('about')}
        stranded={project.document() === null && host.gone()}
      />
      <Upload
        onFile={(file) => void files.openText(file)}
        onReady={(choose) => {
          upload = choose;
        }}
      />
      <div>
        <Strips files={files} project={project} gone={host.gone()} silent={host.silent()} />
        <Show when={project.document() !== null && trouble()}>
          {(what) => <TroubleNotice trouble={what()} onClose={() => setTrouble(null)} />}
        </Show>
      </div>

      <main>
        <Show
          when={project.document()}
          fallback={
            <StartPane files={files} trouble={trouble()} starting={starting()} gone={host.gone()} />
          }
        >
          <Show
            when={!sheet.open()}
            fallback={
              <SheetView
                bridge={props.bridge}
                project={project}
                sheet={sheet}
                check={joints.check}
              />
            }
          >
            <TourContext.Provider value={tour}>
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
                jointDeeds={jointDeeds}
                onSheet={() => showSheet(sheetOf(workspace()))}
              />
            </TourContext.Provider>
          </Show>
        </Show>
      </main>

      <footer class="caution">{cautionShort}</footer>

      <p class="hidden" role="status">
        {tour.said()}
      </p>
      <SaidLine said={said} />
      <FieldNote notes={fieldNotes} />
      <KeyDialogs
        bridge={props.bridge}
        sheets={sheets}
        registry={registry}
        units={units}
        page={workspace()}
      />
      <FileDialogs bridge={props.bridge} files={files} />
      <DropZone
        files={files}
        pathOf={props.bridge.pathOf}
        onTrouble={(text) => setTrouble({ text })}
      />
    </>
  );
}
