// The session with the loopback server: the token in the address is exchanged once for a secret that a reload keeps.
import { LOOPBACK, SESSION_HEADER } from '../../shared/contract/loopback.ts';

const KEPT_AS = 'turnlay-session';

/** The header that proves the session. Rejects where the address holds no good token and there is no session yet. */
export async function joinSession(): Promise<Readonly<Record<string, string>>> {
  const token = new URLSearchParams(location.hash.slice(1)).get('token');
  if (token !== null) {
    history.replaceState(null, '', location.pathname);
    sessionStorage.setItem(KEPT_AS, await exchange(token));
  }
  const secret = sessionStorage.getItem(KEPT_AS);
  if (secret === null) throw new Error('This page was opened without the link that the program gave.');
  return { [SESSION_HEADER]: secret };
}

async function exchange(token: string): Promise<string> {
  const response = await fetch(LOOPBACK.session, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ token }),
  });
  if (!response.ok) throw new Error('The link has been used already. Start the program again for a new one.');
  const { secret } = (await response.json()) as { readonly secret: string };
  return secret;
}
