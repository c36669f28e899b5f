/** The input column alone, over a project, with a host that answers. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import type { Answers } from '../../../src/renderer/size/answers.ts';
import { Inputs } from '../../../src/renderer/size/Inputs.tsx';
import { makeDescribe } from '../../../src/renderer/state/describe.ts';
import { createIssues, type Issues } from '../../../src/renderer/state/issues.ts';
import { createProject, type ProjectState } from '../../../src/renderer/state/project.ts';
import type { Project } from '../../../src/shared/project.ts';
import type { StressReport } from '../../../src/shared/reports.ts';
import { type FakeBridge, makeFakeBridge } from './fake-bridge.ts';

export interface InputColumn {
  readonly project: ProjectState;
  readonly issues: Issues;
  readonly bridge: FakeBridge;
  /** The document as it would be sent. */
  sent(): Project;
  setStress(stress: StressReport): void;
}

export function renderInputs(document: Project, jointId: string): InputColumn {
  const bridge = makeFakeBridge(document);
  const [stress, setStress] = createSignal<StressReport | null>(null);
  const { project, issues } = createRoot(() => ({
    project: createProject(),
    issues: createIssues(),
  }));
  project.open({ document, origin: 'test' });
  const answers: Answers = {
    describe: makeDescribe(bridge, project),
    stress,
    stale: () => issues.stale(),
  };
  const index = document.joints.findIndex(({ id }) => id === jointId);
  render(() => (
    <Inputs
      project={project}
      issues={issues}
      joint={project.document()!.joints[index]!}
      index={index}
      onJoint={() => {}}
      answers={answers}
    />
  ));
  return {
    project,
    issues,
    bridge,
    sent: () => JSON.parse(JSON.stringify(project.plain())) as Project,
    setStress,
  };
}

export const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
export const type = (name: string, text: string): void => {
  fireEvent.input(field(name), { target: { value: text } });
};
export const choose = (name: string, text: string): void => {
  const list = screen.getByRole<HTMLSelectElement>('combobox', { name });
  const option = [...list.options].find((one) => one.text === text);
  if (!option) throw new Error(`${name} has no ${text}: ${[...list.options].map((o) => o.text)}`);
  fireEvent.change(list, { target: { value: option.value } });
};
/** jsdom opens a disclosure but does not tell. */
export function disclose(title: string | RegExp): HTMLDetailsElement {
  const details = screen.getByText(title, { selector: 'summary' }).closest('details')!;
  details.open = true;
  fireEvent(details, new Event('toggle'));
  return details;
}
