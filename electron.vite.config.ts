import { resolve } from 'node:path';
import { defineConfig } from 'electron-vite';
import solid from 'vite-plugin-solid';
import { guidePlugin } from './src/documents/guide-plugin.ts';
import { legalPlugin } from './src/documents/legal-plugin.ts';

const at = (path: string): string => resolve(import.meta.dirname, path);

// Inline style attributes are forbidden by the page's policy; the plugin's types lag behind the option.
const solidOptions: object = { inlineStyles: false };

/**
 * Four programs come out of one source tree: the Electron shell, the loopback host, the command
 * line and the worker all are entries of `main`, so they share one bundled core.
 */
export default defineConfig({
  main: {
    build: {
      target: 'node20.19',
      // Bundling everything halves the start: no package is looked up at run time.
      externalizeDeps: false,
      rolldownOptions: {
        input: {
          shell: at('src/main/shell/shell.ts'),
          host: at('src/main/loopback/main.ts'),
          worker: at('src/main/jobs/worker.ts'),
          cli: at('src/cli/main.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      externalizeDeps: false,
      isolatedEntries: true,
      rolldownOptions: {
        input: { preload: at('src/preload/preload.ts') },
        // A sandboxed preload must be CommonJS.
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: at('src/renderer'),
    plugins: [solid({ solid: solidOptions }), guidePlugin(at('docs')), legalPlugin(at('.'))],
    build: {
      target: 'es2022',
      minify: true,
      rolldownOptions: { input: { index: at('src/renderer/index.html') } },
    },
  },
});
