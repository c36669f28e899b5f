/** The S-N line of an adhesive on the page. */
import { fireEvent, screen } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/shared/read-project.ts';
import { disclose, field, renderInputs, type } from './support/inputs.tsx';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const press = (name: string): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};

describe('the S-N line of an adhesive', () => {
  it('is added as that of another adhesive, changed, given its ratio, and removed', () => {
    const { sent, project } = renderInputs(makeProject(), 'tip');
    const summary = disclose(/^Cycles/);
    if (sent().adhesives[0]?.fatigue) press('Remove the S-N line');
    expect(summary.textContent).toContain('none');
    press('Add an S-N line');
    expect(sent().adhesives[0]?.fatigue?.source.text).toContain('Another adhesive');
    type('S-N line, coefficient', '1.4');
    type('S-N line, exponent', '.09');
    expect(sent().adhesives[0]?.fatigue).not.toHaveProperty('ratio');
    type('S-N line, load ratio', '-1');
    expect(sent().adhesives[0]?.fatigue).toMatchObject({
      coefficient: 1.4,
      exponent: 0.09,
      ratio: -1,
    });
    expect(readProject(sent()).ok).toBe(true);
    type('S-N line, load ratio', '0,1');
    expect(project.refused.all()[0]?.stays()).toBe('no value');
    type('S-N line, load ratio', '');
    expect(sent().adhesives[0]?.fatigue).not.toHaveProperty('ratio');
    expect(field('S-N line, load ratio').title).toContain('Lowest over highest');
    press('Remove the S-N line');
    expect(sent().adhesives[0]).not.toHaveProperty('fatigue');
  });
});
