/** The page's policy in a real browser: what it stops. That no page of ours is stopped, `accessible` tells on its walk. */
import { expect, it, vi } from 'vitest';
import { describeInBrowser } from './support/browser.ts';
import { openApp } from './support/open-app.ts';

describeInBrowser('the policy', () => {
  it('stops each thing that a page could be made to do, and each is seen', async () => {
    const app = await openApp();
    const { page, policyViolations } = app;
    try {
      await page.getByRole('button', { name: 'Landing leg', exact: true }).waitFor();
      expect(policyViolations).toEqual([]);
      const stopped = async (directive: string, attempt: () => void): Promise<void> => {
        const before = policyViolations.length;
        await page.evaluate(attempt);
        await vi.waitFor(() => expect(policyViolations.length).toBeGreaterThan(before));
        expect(policyViolations.at(-1)).toMatch(new RegExp(`^${directive} `));
      };
      await stopped('script-src-elem', () => {
        const script = document.createElement('script');
        script.textContent = 'globalThis.ran = true';
        document.body.append(script);
      });
      await stopped('script-src-elem', () => {
        const script = document.createElement('script');
        script.src = 'https://elsewhere.test/x.js';
        document.body.append(script);
      });
      await stopped('script-src-attr', () => {
        const button = document.createElement('button');
        button.setAttribute('onclick', 'globalThis.ran = true');
        document.body.append(button);
        button.click();
      });
      await stopped('script-src', () => {
        setTimeout('globalThis.ran = true', 0);
      });
      await stopped('script-src-elem', () => {
        const script = document.createElement('script');
        script.src = URL.createObjectURL(new Blob(['globalThis.ran = true']));
        document.body.append(script);
      });
      await stopped('style-src-elem', () => {
        const style = document.createElement('style');
        style.textContent = 'body { display: none }';
        document.body.append(style);
      });
      await stopped('style-src-attr', () => {
        document.body.insertAdjacentHTML('beforeend', '<p style="color: red">x</p>');
      });
      await stopped('connect-src', () => void fetch('https://elsewhere.test/').catch(() => {}));
      await stopped('img-src', () => {
        new Image().src = 'https://elsewhere.test/x.png';
      });
      await stopped('frame-src', () => {
        const frame = document.createElement('iframe');
        frame.src = 'https://elsewhere.test/';
        document.body.append(frame);
      });
      await stopped('object-src', () => {
        const object = document.createElement('object');
        object.data = 'https://elsewhere.test/x.pdf';
        document.body.append(object);
      });
      await stopped('base-uri', () => {
        const base = document.createElement('base');
        base.href = 'https://elsewhere.test/';
        document.head.append(base);
      });
      await stopped('form-action', () => {
        const form = document.createElement('form');
        form.action = 'https://elsewhere.test/';
        form.method = 'post';
        document.body.append(form);
        form.submit();
      });
      expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
      expect(page.url()).toBe(`${app.host.origin}/`);
    } finally {
      await app.close();
    }
  });
});
