// The loopback server: the very same host as on the desktop, for a window in a browser of this machine.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { LOOPBACK, SESSION_HEADER } from '../../shared/contract/loopback.ts';
import { answerCall, BadCall } from '../host/answerCall.ts';
import { type HostOptions, openHost } from '../host/openHost.ts';
import type { Shell } from '../host/shell.ts';
import { serveWindow } from '../serve/serveWindow.ts';
import { answerJson, answerWith } from './answer.ts';
import { cookieOf, turnAway } from './doorkeeper.ts';
import { EventLine } from './eventLine.ts';
import { BodyTooLong, bodyOf, jsonOf } from './readBody.ts';
import { Sessions } from './session.ts';

/** The longest token, request and dropped file that are taken, in bytes. */
const LONGEST = { token: 1024, call: 32 * 1024 * 1024, dropped: 512 * 1024 * 1024 } as const;

export interface Loopback {
  /** `http://127.0.0.1:<port>` */
  readonly origin: string;
  /** A link that opens the window once; earlier links are worth nothing any more. */
  newLink(): string;
  end(): Promise<void>;
}

/** A browser gives the host no dialogs, no title bar and nothing to close. */
const BROWSER: Shell = {
  kind: 'browser',
  chooseFiles: async () => 'no-dialog',
  chooseNewFile: async () => 'no-dialog',
  chooseFolder: async () => 'no-dialog',
  show: () => undefined,
  close: () => undefined,
};

/** Opens a host and a server for it on a free port of this machine alone. `folder` holds the built window. */
export async function openLoopback(
  options: Omit<HostOptions, 'shell' | 'tell'> & { readonly folder: string },
): Promise<Loopback> {
  const line = new EventLine();
  const sessions = new Sessions();
  const host = await openHost({ ...options, shell: BROWSER, tell: line.tell });
  const serve = serveWindow(options.folder, host);
  let origin = '';
  let cookie = '';

  const join = async (request: IncomingMessage, response: ServerResponse) => {
    const body = await jsonOf(request, LONGEST.token);
    const token = typeof body === 'object' && body !== null && 'token' in body ? body.token : undefined;
    const session = sessions.exchange(token);
    if (session === undefined) return answerJson(response, 403, { mistake: 'This link is used up.' });
    answerJson(
      response,
      200,
      { secret: session.secret },
      { 'set-cookie': `${cookie}=${session.cookie}; HttpOnly; SameSite=Strict; Path=/` },
    );
  };

  const post = async (request: IncomingMessage, response: ServerResponse, url: URL) => {
    if (url.pathname === LOOPBACK.session) return join(request, response);
    if (!sessions.mayCall(headerOf(request))) return answerJson(response, 401, NO_SESSION);
    if (url.pathname === LOOPBACK.dropped) {
      const name = url.searchParams.get('name') ?? '';
      const answer = await host.dropBytes(name, bodyOf(request, LONGEST.dropped));
      return answerJson(response, 200, { answer });
    }
    const [, group, call] = /^\/call\/(\w+)\/(\w+)$/.exec(url.pathname) ?? [];
    if (group === undefined || call === undefined) return answerJson(response, 404, UNKNOWN);
    const body = await jsonOf(request, LONGEST.call);
    if (typeof body !== 'object' || body === null) return answerJson(response, 400, NOT_JSON);
    const ask = 'ask' in body ? body.ask : undefined;
    answerJson(response, 200, { answer: await answerCall(host.handlers, group, call, ask) });
  };

  const get = async (request: IncomingMessage, response: ServerResponse, url: URL) => {
    if (url.pathname === LOOPBACK.events) {
      if (!sessions.mayCall(headerOf(request))) return answerJson(response, 401, NO_SESSION);
      return line.open(response);
    }
    const isPublic = !url.pathname.startsWith('/art/') && !url.pathname.startsWith('/proof/');
    if (!isPublic && !sessions.mayLoad(cookieOf(request, cookie))) {
      return answerJson(response, 401, NO_SESSION);
    }
    const { method = 'GET' } = request;
    const range = request.headers.range;
    await answerWith(
      await serve(new Request(url, { method, headers: range === undefined ? {} : { range } })),
      response,
    );
  };

  const answer = async (request: IncomingMessage, response: ServerResponse) => {
    const turned = turnAway(request, origin);
    if (turned !== undefined) return answerJson(response, turned, { mistake: 'Turned away.' });
    if (!URL.canParse(request.url ?? '', origin)) return answerJson(response, 400, UNKNOWN);
    const url = new URL(request.url ?? '', origin);
    return request.method === 'POST' ? post(request, response, url) : get(request, response, url);
  };

  const server = createServer((request, response) => {
    answer(request, response).catch((error) => {
      if (response.headersSent) response.destroy();
      // What is still on its way is not waited for.
      else if (error instanceof BodyTooLong)
        answerJson(response, 413, { mistake: 'Too long.' }, { connection: 'close' });
      else if (error instanceof BadCall) answerJson(response, 400, { mistake: error.message });
      else answerJson(response, 500, { mistake: error instanceof Error ? error.message : 'Failed.' });
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  origin = `http://127.0.0.1:${port}`;
  cookie = `turnlay-${port}`;

  return {
    origin,
    newLink: () => `${origin}/#token=${sessions.newToken()}`,
    end: async () => {
      line.end();
      await host.end();
      await new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      });
    },
  };
}

const NO_SESSION = {
  mistake: 'This window has no session here: open it with the link that the program gave.',
};
const UNKNOWN = { mistake: 'There is nothing here.' };
const NOT_JSON = { mistake: 'The request is not JSON.' };

function headerOf(request: IncomingMessage): string | undefined {
  const value = request.headers[SESSION_HEADER];
  return typeof value === 'string' ? value : undefined;
}
