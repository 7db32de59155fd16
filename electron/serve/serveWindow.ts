// What the window loads: its own page and scripts, the art by handle, and the pictures of proofs.
import { readFile } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import type { ArtHandle } from '../../shared/contract/handles.ts';
import type { OpenedHost } from '../host/openHost.ts';
import { GUARDS } from './policy.ts';
import { serveFile } from './serveFile.ts';

/** The kinds of files that the built window consists of. */
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.ttf': 'font/ttf',
  '.otf': 'font/otf',
  '.pfb': 'application/octet-stream',
  '.bcmap': 'application/octet-stream',
  '.icc': 'application/vnd.iccprofile',
};

const PDF = 'application/pdf';

/** Answers what the window loads. `folder` holds the built window. Only GET and HEAD; every answer carries the policy. */
export function serveWindow(
  folder: string,
  host: Pick<OpenedHost, 'artPath' | 'picture'>,
): (request: Request) => Promise<Response> {
  return async (request) => {
    const answer = await find(request, folder, host);
    for (const [name, value] of Object.entries(GUARDS)) answer.headers.set(name, value);
    return answer;
  };
}

async function find(
  request: Request,
  folder: string,
  host: Pick<OpenedHost, 'artPath' | 'picture'>,
): Promise<Response> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return new Response(null, { status: 405, headers: { allow: 'GET, HEAD' } });
  }
  const { pathname } = new URL(request.url);
  const art = /^\/art\/([0-9a-f]{32})$/.exec(pathname)?.[1];
  if (art !== undefined) {
    const path = host.artPath(art as ArtHandle);
    return path === undefined ? missing() : serveFile(request, path, PDF);
  }
  if (pathname.startsWith('/proof/')) {
    const png = host.picture(pathname);
    if (png === undefined) return missing();
    const headers = { 'content-type': 'image/png', 'cache-control': 'no-store' };
    return new Response(Uint8Array.from(png), { headers });
  }
  const path = pathWithin(folder, pathname === '/' ? '/index.html' : pathname);
  const type = path === undefined ? undefined : TYPES[extname(path)];
  return path === undefined || type === undefined ? missing() : serveOwn(path, type);
}

/** A file of the window itself, read whole: in a packed app it lies in an archive, which only gives whole files. */
async function serveOwn(path: string, type: string): Promise<Response> {
  const bytes = await readFile(path).catch(() => undefined);
  if (bytes === undefined) return missing();
  return new Response(bytes, { headers: { 'content-type': type, 'cache-control': 'no-cache' } });
}

function missing(): Response {
  return new Response(null, { status: 404 });
}

/** The file of this address in the folder; `undefined` for anything that would lead out of it. */
function pathWithin(folder: string, address: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(address);
  } catch {
    return undefined;
  }
  if (/[\\\0:]/.test(decoded)) return undefined;
  const path = join(folder, decoded);
  return path.startsWith(folder + sep) ? path : undefined;
}
