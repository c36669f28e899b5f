/** Starts the built shell on the stand-in for Electron, once for a file of tests. */
import { readdirSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import type { Bridge, RequestName } from '../../src/shared/contract.ts';
import type { Reply } from '../../src/shared/reply.ts';
import { BrowserWindow, standIn } from '../stand-in/electron.ts';

export const PAGE = 'app://lapwright/';
export type WithBridge = { lapwright: Bridge };
/** Buttons of the question before a window with unsaved changes closes. */
export const SAVE = 0;
export const DISCARD = 1;
export const STAY = 2;

const data = process.env.LAPWRIGHT_DATA!;
/** What is kept of documents that are not saved. */
export const keptFiles = (): string[] =>
  readdirSync(join(data, 'recovery'), { recursive: true }).map((name) => basename(String(name)));

export interface Item {
  readonly label?: string;
  readonly submenu?: readonly Item[];
  readonly click?: () => void;
}
export const menuItems = (
  label: string,
  items = standIn.menu as unknown as readonly Item[],
): readonly Item[] => items.find((item) => item.label === label)!.submenu!;

export const soon = <T>(look: () => T | Promise<T>): Promise<T> => vi.waitFor(look, 10_000);

export interface BuiltShell {
  readonly window: BrowserWindow;
  readonly page: Page;
}

/** @param program of the project itself, or of a copy of it */
export async function startShell(
  program = join(root, 'out', 'main', 'shell.js'),
): Promise<BuiltShell> {
  // What an earlier run left would be offered here.
  for (const name of ['recovery', 'recent.json', 'window.json']) {
    rmSync(join(data, name), { recursive: true, force: true });
  }
  const shell = pathToFileURL(program).href;
  await import(/* @vite-ignore */ shell);
  standIn.codeLoaded();
  await soon(() => expect(BrowserWindow.getAllWindows()).toHaveLength(1));
  const window = BrowserWindow.getAllWindows()[0]!;
  const page = await window.webContents.ready;
  await soon(() => expect(window.shown).toBe(true));
  return { window, page };
}

const reply = (page: Page, name: RequestName, input: unknown): Promise<Reply<unknown>> =>
  page.evaluate(
    ([name, input]) => (globalThis as unknown as WithBridge).lapwright.ask(name, input as never),
    [name, input] as const,
  );

/** What the page is answered; fails where it is refused. */
export async function asked<T>(page: Page, name: RequestName, input: unknown): Promise<T> {
  const got = await reply(page, name, input);
  if (!got.ok) throw new Error(got.error.message);
  return got.value as T;
}

/** The sentence with which the page is refused. */
export async function refused(page: Page, name: RequestName, input: unknown): Promise<string> {
  const got = await reply(page, name, input);
  if (got.ok) throw new Error(`${name} was not refused.`);
  return got.error.message;
}
