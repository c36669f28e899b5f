/** What the core says of itself: the same that the package and the printed sheets carry. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { runsOn } from '../../src/main/ask.ts';
import { MODEL_VERSION } from '../../src/model/version.ts';
import type { About } from '../../src/shared/reports.ts';
import { value } from './asking.ts';

describe('the core', () => {
  it('tells its version, that of the model, and the Node that it runs on', async () => {
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    expect(await value<About>('app.about', {})).toEqual({
      version,
      modelVersion: MODEL_VERSION,
      carrier: expect.any(String),
      node: process.versions.node,
      electron: null,
    });
  });

  it('tells Electron and Chromium where it runs in them', () => {
    expect(runsOn({ node: '24.1.0', electron: '45.4.1', chrome: '144.0.1', v8: '14' })).toEqual({
      node: '24.1.0',
      electron: { version: '45.4.1', chromium: '144.0.1' },
    });
  });
});
