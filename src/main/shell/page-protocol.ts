/** `app://lapwright/`: the page's own scheme, answered from the map of its files and nothing else. */
import type { CustomScheme, Session } from 'electron';
import type { PageFiles } from '../page-files.ts';
import { POLICY_HEADERS } from '../policy.ts';

const SCHEME = 'app';
const HOST = 'lapwright';
export const PAGE_ADDRESS = `${SCHEME}://${HOST}/`;

export const pageScheme: CustomScheme = {
  scheme: SCHEME,
  privileges: { standard: true, secure: true, supportFetchAPI: true },
};

/** Protocol and host are compared: `origin` of such a scheme is the text `null` outside a page. */
export function isPageAddress(address: string): boolean {
  try {
    const { protocol, host, username, password, port } = new URL(address);
    return (
      protocol === `${SCHEME}:` &&
      host === HOST &&
      port === '' &&
      username === '' &&
      password === ''
    );
  } catch {
    return false;
  }
}

const refuse = (status: number): Response =>
  new Response(null, { status, headers: { ...POLICY_HEADERS } });

export function answerPage(files: PageFiles, request: Pick<Request, 'method' | 'url'>): Response {
  if (!isPageAddress(request.url)) return refuse(403);
  if (request.method !== 'GET') return refuse(405);
  const file = files.get(new URL(request.url).pathname);
  if (!file) return refuse(404);
  return new Response(new Uint8Array(file.body), {
    status: 200,
    headers: { ...POLICY_HEADERS, 'content-type': file.type },
  });
}

export function servePage(session: Session, files: PageFiles): void {
  session.protocol.handle(SCHEME, (request) => answerPage(files, request));
}
