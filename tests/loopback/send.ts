/** Sends exactly what it is told to: no client in between corrects a path or a header. */
import { connect } from 'node:net';

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
}

export interface Request {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Readonly<Record<string, string | undefined>>;
  readonly body?: string | Buffer;
}

const ANSWER = /^HTTP\/1\.1 (\d{3})[^\r\n]*\r\n([\s\S]*?)\r\n\r\n([\s\S]*)$/;

function read(text: string): Answer {
  const [, status = '0', head = '', body = ''] = ANSWER.exec(text) ?? [];
  const headers = head.split('\r\n').map((line) => {
    const colon = line.indexOf(':');
    return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()] as const;
  });
  return { status: Number(status), headers: Object.fromEntries(headers), body };
}

export function send(port: number, request: Request): Promise<Answer> {
  const { method = 'GET', path = '/', body = '' } = request;
  const headers = {
    host: `127.0.0.1:${port}`,
    connection: 'close',
    ...(body.length > 0 ? { 'content-length': String(Buffer.byteLength(body)) } : {}),
    ...request.headers,
  };
  const lines = Object.entries(headers)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name}: ${value}\r\n`);
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1');
    let text = '';
    socket.setEncoding('utf8');
    socket.on('data', (part) => {
      text += part;
    });
    // What is refused early may be cut off while the body is still on its way.
    socket.on('error', (error) => (text === '' ? reject(error) : resolve(read(text))));
    socket.on('close', () => resolve(read(text)));
    socket.write(`${method} ${path} HTTP/1.1\r\n${lines.join('')}\r\n`);
    if (body.length > 0) socket.write(body);
  });
}
