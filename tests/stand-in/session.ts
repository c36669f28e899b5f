/** Stands for the session: answers of the page's own scheme, and who may have what permission. */
type Respond = (request: Request) => Response | Promise<Response>;
type RequestHandler = (
  contents: unknown,
  permission: string,
  answer: (granted: boolean) => void,
) => void;
type CheckHandler = (contents: unknown, permission: string, origin: string) => boolean;

const responders = new Map<string, Respond>();
let onRequest: RequestHandler | null = null;
let onCheck: CheckHandler | null = null;
interface Download {
  preventDefault(): void;
}
type DownloadHandler = (event: Download, item: { getURL(): string }) => void;
let onDownload: DownloadHandler | null = null;
let onDevice: ((details: unknown) => boolean) | null = null;

export const defaultSession = {
  protocol: {
    handle(scheme: string, respond: Respond): void {
      responders.set(scheme, respond);
    },
  },
  on(_name: 'will-download', handler: DownloadHandler): void {
    onDownload = handler;
  },
  setPermissionRequestHandler(handler: RequestHandler): void {
    onRequest = handler;
  },
  setPermissionCheckHandler(handler: CheckHandler): void {
    onCheck = handler;
  },
  setDevicePermissionHandler(handler: (details: unknown) => boolean): void {
    onDevice = handler;
  },

  async respond(request: Request): Promise<Response> {
    const scheme = request.url.slice(0, request.url.indexOf(':'));
    const respond = responders.get(scheme);
    if (!respond) throw new Error(`Nothing answers ${request.url}`);
    return respond(request);
  },
  /** What a page is given that asks for a permission: everything, unless a handler says no. */
  ask: (permission: string): Promise<boolean> =>
    new Promise((resolve) => {
      if (onRequest) onRequest(null, permission, resolve);
      else resolve(true);
    }),
  check: (permission: string): boolean => (onCheck ? onCheck(null, permission, 'x') : true),
  /** Whether a download from there goes on: all do, unless a handler says no. */
  downloads(url: string): boolean {
    let goesOn = true;
    const preventDefault = (): void => {
      goesOn = false;
    };
    onDownload?.({ preventDefault }, { getURL: () => url });
    return goesOn;
  },
  device: (): boolean => (onDevice ? onDevice({ deviceType: 'usb' }) : true),
};
