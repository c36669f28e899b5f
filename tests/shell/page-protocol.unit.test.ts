import { describe, expect, it } from 'vitest';
import type { PageFiles } from '../../src/main/page-files.ts';
import { CONTENT_SECURITY_POLICY } from '../../src/main/policy.ts';
import { answerPage, isPageAddress } from '../../src/main/shell/page-protocol.ts';

const html = { type: 'text/html; charset=utf-8', body: Buffer.from('<h1>The page</h1>') };
const files: PageFiles = new Map([
  ['/', html],
  ['/index.html', html],
  ['/assets/a.js', { type: 'text/javascript; charset=utf-8', body: Buffer.from('1') }],
]);
const get = (url: string, method = 'GET'): Response => answerPage(files, { url, method });

describe('the address of the page', () => {
  it.each(['app://lapwright/', 'app://lapwright/index.html', 'app://lapwright/assets/a.js?x#y'])(
    'is %s',
    (address) => expect(isPageAddress(address)).toBe(true),
  );

  it.each([
    'app://elsewhere/',
    'app://lapwright.test/',
    'app://lapwright:80/',
    'app://user@lapwright/',
    'app:lapwright/',
    'apps://lapwright/',
    'https://lapwright/',
    'file:///lapwright/index.html',
    'about:blank',
    'data:text/html,x',
    'null',
    '',
  ])('is not %s', (address) => expect(isPageAddress(address)).toBe(false));
});

describe('the page in Electron', () => {
  it.each(['app://lapwright/', 'app://lapwright/index.html', 'app://lapwright/?a=b'])(
    'is given out at %s',
    async (address) => {
      const response = get(address);
      expect(response.status).toBe(200);
      expect(await response.text()).toBe('<h1>The page</h1>');
      expect(Object.fromEntries(response.headers)).toMatchObject({
        'content-type': html.type,
        'content-security-policy': CONTENT_SECURITY_POLICY,
        'x-content-type-options': 'nosniff',
      });
    },
  );

  it.each([
    ['app://lapwright/../package.json', 404],
    ['app://lapwright/..%2fpackage.json', 404],
    ['app://lapwright/..%5cpackage.json', 404],
    ['app://lapwright/%2e%2e/package.json', 404],
    ['app://lapwright/%00', 404],
    ['app://lapwright/assets', 404],
    ['app://lapwright//index.html', 404],
    ['app://lapwright/C:/index.html', 404],
    ['app://lapwright/constructor', 404],
    ['app://elsewhere/index.html', 403],
    ['app:///index.html', 403],
    ['file:///index.html', 403],
  ])('has nothing at %s', (address, status) => {
    const response = get(address);
    expect(response.status).toBe(status);
    expect(response.headers.get('content-security-policy')).toBe(CONTENT_SECURITY_POLICY);
  });

  it.each(['POST', 'PUT', 'HEAD'])('answers no %s', (method) => {
    expect(get('app://lapwright/', method).status).toBe(405);
  });
});
