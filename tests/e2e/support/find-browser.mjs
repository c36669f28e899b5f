/** The browser that the tests drive on this machine. */
import { unpackChromium } from './unpack-chromium.mjs';

/**
 * @typedef {object} BrowserChoice
 * @property {string} [executablePath]
 * @property {'chrome' | 'msedge'} [channel]
 * @property {Record<string, string>} env set for the browser on top of our own
 */

const args = [
  '--headless=shell',
  '--no-zygote',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
];

/**
 * @param {BrowserChoice} choice
 * @returns {import('playwright-core').LaunchOptions}
 */
export function launchOptions({ executablePath, channel, env }) {
  if (channel) return { channel };
  return {
    ...(executablePath ? { executablePath } : {}),
    args,
    env: /** @type {Record<string, string>} */ ({ ...process.env, ...env }),
  };
}

/**
 * @param {string} root
 * @returns {Promise<BrowserChoice | null>} null where there is none
 */
export async function findBrowser(root) {
  const own = unpackChromium(root);
  if (own) return own;
  const { chromium } = await import('playwright-core');
  for (const channel of /** @type {const} */ (['chrome', 'msedge'])) {
    try {
      await (await chromium.launch({ channel })).close();
      return { channel, env: {} };
    } catch {
      // Not installed here, or it does not start.
    }
  }
  return null;
}
