/** What the core says, on the page: its figures in the page's own units, wherever it stands, and as they came in SI. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { degreesCelsius, millimetres, say, smallMillimetres } from '../../src/model/said.ts';
import { App } from '../../src/renderer/App.tsx';
import { presets } from '../../src/shared/display-units.ts';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { makeCompareReport, makeVariant } from './support/compare.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeMargin, makeReport, makeSheet, makeSummary } from './support/reports.ts';
import { makeStopped } from './support/sizing.ts';

useBrowser();
useDialogs();

const hot = { code: 'hot', ...say`${degreesCelsius(60)} lies beyond the table.` };
const hotUS = '140 °F lies beyond the table.';
const closes = say`The gap of ${smallMillimetres(0.2)} closes.`;
const closesUS = 'The gap of 7.87 mil closes.';
const coupons = say`B-basis, 18 coupons, ${degreesCelsius(60)} wet`;

let bridge: FakeBridge;
beforeEach(() => {
  vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
  localStorage.setItem('lapwright-units', JSON.stringify(presets.US));
  bridge = makeFakeBridge();
  const margin = makeMargin(0.1, {
    flags: [hot],
    restsOn: coupons.message,
    restsOnFigures: coupons.figures!,
  });
  bridge.answer('joint.analyse', ({ document }) => {
    const joint = (document as Project).joints[0]!;
    return ok(makeReport(joint, { flags: [hot], margins: [margin] }));
  });
});
const open = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};
const size = async (): Promise<void> => {
  await open();
  fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
  await screen.findByRole('list', { name: 'Margins, lowest first' });
};
function find(typed: string): void {
  fireEvent.keyDown(document.activeElement ?? window, { key: 'k', ctrlKey: true });
  const text = screen.getByRole('combobox', { name: /^Action, joint/ });
  fireEvent.input(text, { target: { value: typed } });
  fireEvent.keyDown(text, { key: 'Enter' });
}
const page = (): string => document.body.textContent ?? '';

describe('in US units, and back in SI', () => {
  it('is said of the joints in their table', async () => {
    bridge.answer('project.check', ({ document }) => {
      const { joints, name } = document as Project;
      const [first, second, third] = joints.map((joint) => makeSummary(joint, makeMargin(0.1)));
      return ok({
        project: name,
        targetMargin: 0.25,
        joints: [
          { ...first!, flags: [hot] },
          { ...second!, lowest: makeMargin(0.2, { flags: [hot] }) },
          { ...third!, lowest: null, refused: { code: 'bad-input', field: '', ...closes } },
        ],
        counts: { fails: 0, low: 2, holds: 0 },
        modelVersion: '1',
      });
    });
    await open();
    await screen.findByText(hotUS);
    expect(screen.getByText(closesUS)).toBeTruthy();
    expect(document.querySelector('.outside')?.getAttribute('title')).toBe(hotUS);
    expect(page()).not.toMatch(/°C| mm/);
    find('Units: SI');
    expect(screen.getByText(hot.message)).toBeTruthy();
    expect(screen.getByText(closes.message)).toBeTruthy();
  });

  it('is said of one joint: beside its margins, and at the field that is refused', async () => {
    await size();
    expect(screen.getByText(hotUS)).toBeTruthy();
    expect(document.querySelector('.outside')?.getAttribute('title')).toBe(hotUS);
    expect(document.querySelector('.rests-on')?.textContent).toBe(
      'B-basis, 18 coupons, 140 °F wet',
    );
    bridge.answer('joint.analyse', () => ({
      ok: false,
      error: { code: 'bad-input', field: 'joints.0.bond.gap', ...closes },
    }));
    const gap = screen.getByRole('textbox', { name: 'Gap' });
    fireEvent.input(gap, { target: { value: '8' } });
    const said = await screen.findByText(closesUS);
    expect(gap.getAttribute('aria-describedby')).toContain(said.id);
    find('Units: SI');
    expect(said.textContent).toBe(closes.message);
  });

  it('is said of what would help, and of what cannot be looked for', async () => {
    bridge.answer('joint.size', ({ document }) => {
      const report = makeStopped((document as Project).joints[0]!);
      const [first] = report.suggestions;
      const change = say`gap ${smallMillimetres(0.2)} → ${smallMillimetres(0.3)}`;
      const changeFigures = change.figures!;
      return ok({ ...report, suggestions: [{ ...first!, change: change.message, changeFigures }] });
    });
    await size();
    const views = screen.getByRole('navigation', { name: 'Views of the joint' });
    fireEvent.click(within(views).getByRole('button', { name: 'Find' }));
    const ask = (): boolean =>
      fireEvent.click(
        within(screen.getByRole('region', { name: 'Find' })).getByRole('button', { name: 'Find' }),
      );
    ask();
    const table = await screen.findByRole('table', { name: 'Changes that help' });
    expect(within(table).getByRole('rowheader').textContent).toBe('gap 7.87 mil → 11.8 mil');
    bridge.answer('joint.size', () => ({
      ok: false,
      error: {
        code: 'bad-request',
        field: 'to',
        ...say`${millimetres(20)} is not above ${millimetres(30)}.`,
      },
    }));
    ask();
    expect(await screen.findByText('0.787 in is not above 1.18 in.')).toBeTruthy();
  });

  it('is said of joints side by side', async () => {
    bridge.answer('project.compare', (input) => ({
      ok: true,
      value: {
        ...makeCompareReport(input.document as Project, input),
        sentences: [
          {
            message: 'Peel falls to 1.93 MPa.',
            figures: [{ as: '1.93 MPa', measure: 'stress', value: 1.93 }],
          },
        ],
      },
    }));
    bridge.answer('joint.variant', (input) => ({
      ok: true,
      value: {
        ...makeVariant(input.document as Project, input),
        changed: [say`spigot ${millimetres(0.5)}`],
      },
    }));
    await open();
    fireEvent.keyDown(window, { key: '3', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: 'Double lap at equal overlap' }));
    expect(await screen.findByText('Peel falls to 0.28 ksi.')).toBeTruthy();
    expect(page()).toContain('pigot 0.0197 in');
    find('Units: SI');
    expect(screen.getByText('Peel falls to 1.93 MPa.')).toBeTruthy();
  });

  it('is said on the sheet', async () => {
    bridge.answer('joint.sheet', (input) => {
      const joint = (input.document as Project).joints[0]!;
      const sheet = makeSheet(joint, input);
      return ok({ ...sheet, report: sheet.report && { ...sheet.report, flags: [hot] } });
    });
    await open();
    fireEvent.click(await screen.findByRole('button', { name: 'Sheet …' }));
    await screen.findByText(/^\d+ pages?, (A4|Letter)/);
    await waitFor(() => expect(page()).toContain(hotUS));
    expect(page()).not.toContain(hot.message);
  });
});
