// Who is let in: only this machine's own page, by its right name, whatever another site or program tries.
import type { IncomingMessage } from 'node:http';

/**
 * Why a request is turned away, as a status, or `undefined` where it may go on. The name that was asked for must be
 * the server's own (else a foreign name has been bent to this machine), and a page that asks must be its own.
 *
 * @source WHATWG Fetch (Origin), W3C Fetch Metadata (Sec-Fetch-Site).
 */
export function turnAway(request: IncomingMessage, origin: string): 403 | 421 | undefined {
  if (`http://${request.headers.host}` !== origin) return 421;
  const { origin: from, 'sec-fetch-site': site } = request.headers;
  if (from !== undefined && from !== origin) return 403;
  // A browser always says where a POST comes from.
  if (request.method === 'POST' && from === undefined) return 403;
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return 403;
  return undefined;
}

/** The value of a cookie. */
export function cookieOf(request: IncomingMessage, name: string): string | undefined {
  for (const pair of (request.headers.cookie ?? '').split(';')) {
    const [key, value] = pair.trim().split('=');
    if (key === name) return value;
  }
  return undefined;
}
