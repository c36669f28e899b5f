/** The app as a user has it: the built host and its page in a fresh browser context. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { FIRST_START_MARK } from '../../../src/main/files/first-start.ts';
import { browser } from './browser.ts';
import { type RunningHost, startHost } from './host.ts';

export interface AppOptions extends Pick<BrowserContextOptions, 'colorScheme' | 'viewport'> {
  /** Absolute path of a project to open; the demonstration project when left out. */
  readonly file?: string;
  /** Anything else that a browser context takes. */
  readonly context?: BrowserContextOptions;
  /** What an earlier window left on disk is offered; else it is forgotten before. */
  readonly remember?: boolean;
  /** As this user’s first start: the notes of it are shown. */
  readonly first?: boolean;
}

export interface OpenedApp {
  readonly page: Page;
  readonly host: RunningHost;
  /** What the page complained about: errors, refused policy, failed requests. Empty when all is well. */
  readonly problems: readonly string[];
  /** What the page tried that its policy does not let it do, as the browser tells it. */
  readonly policyViolations: readonly string[];
  close(): Promise<void>;
}

/** In every frame, from before its first script. */
async function watchPolicy(context: BrowserContext): Promise<string[]> {
  const violations: string[] = [];
  await context.exposeBinding('tellViolation', (_source, text: string) => violations.push(text));
  await context.addInitScript(() =>
    document.addEventListener('securitypolicyviolation', (event) => {
      const tell = (globalThis as unknown as { tellViolation: (text: string) => void })
        .tellViolation;
      tell(`${event.effectiveDirective} ${event.blockedURI}`);
    }),
  );
  return violations;
}

function watch(page: Page): string[] {
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(`error: ${error.message}`));
  page.on('console', (message) => {
    const type = message.type();
    if (type === 'error' || type === 'warning') problems.push(`${type}: ${message.text()}`);
  });
  page.on('requestfailed', (request) =>
    problems.push(`failed: ${request.url()} ${request.failure()?.errorText ?? ''}`),
  );
  return problems;
}

export async function openApp(options: AppOptions = {}): Promise<OpenedApp> {
  const { file, colorScheme = 'light', viewport = { width: 1360, height: 900 } } = options;
  if (!options.remember) {
    // The tests' own folder: what one left there would be offered to the next.
    for (const name of ['coupons', 'recovery', 'recent.json', 'folders.json']) {
      rmSync(join(process.env.LAPWRIGHT_DATA!, name), { recursive: true, force: true });
    }
  }
  const mark = join(process.env.LAPWRIGHT_DATA!, FIRST_START_MARK);
  mkdirSync(process.env.LAPWRIGHT_DATA!, { recursive: true });
  if (options.first) rmSync(mark, { force: true });
  else writeFileSync(mark, '');
  const host = await startHost(file);
  try {
    const context = await (await browser()).newContext({
      colorScheme,
      viewport,
      ...options.context,
    });
    const policyViolations = await watchPolicy(context);
    const page = await context.newPage();
    const problems = watch(page);
    await page.goto(host.address);
    return {
      page,
      host,
      problems,
      policyViolations,
      async close() {
        await context.close();
        await host.stop();
      },
    };
  } catch (error) {
    await host.stop();
    throw error;
  }
}
