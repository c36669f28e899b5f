import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { guidePlugin } from '../src/documents/guide-plugin.ts';
import { legalPlugin } from '../src/documents/legal-plugin.ts';

const root = resolve(import.meta.dirname, '..');
const at = (path: string): string => resolve(import.meta.dirname, path);

/** No test measures time: a limit only ends what hangs, on the slowest machine as well. */
const patience = 90_000;

/** Both cores of a small machine; the computing of one file is no other's hindrance. */
const workers = Math.max(2, availableParallelism() - 1);

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.{unit,ref,pub}.test.ts'],
          setupFiles: [at('support/seed.ts')],
          // A fresh process and all modules anew for each file took a quarter of the time. What a
          // file changes outside itself (timers, environment, globals) it puts back.
          isolate: false,
          maxWorkers: workers,
          testTimeout: patience,
        },
      },
      {
        root,
        // As it is built: the checks and reloading of development took a third of the time.
        plugins: [
          solid({ dev: false, hot: false }),
          guidePlugin(resolve(root, 'docs')),
          legalPlugin(root),
        ],
        test: {
          name: 'component',
          environment: 'jsdom',
          include: ['tests/**/*.component.test.tsx'],
          setupFiles: [at('support/seed.ts')],
          maxWorkers: workers,
          testTimeout: patience,
          hookTimeout: patience,
        },
      },
      {
        root,
        // The built shell runs on a stand-in; the real module would try to download its program.
        resolve: { alias: { electron: at('stand-in/electron.ts') } },
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/**/*.e2e.test.ts'],
          globalSetup: [at('e2e/support/global-setup.ts')],
          // Never in the folders of whoever runs the tests.
          env: { LAPWRIGHT_DATA: resolve(root, 'node_modules/.cache/lapwright/data') },
          // Browsers measure and draw: side by side they slow each other down.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          testTimeout: patience,
          hookTimeout: patience,
        },
      },
    ],
  },
});
