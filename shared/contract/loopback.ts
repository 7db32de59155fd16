// How the window and the loopback server speak: the addresses and the words that both must know.

/** The header that carries the secret of a session. */
export const SESSION_HEADER = 'x-turnlay-session';

export const LOOPBACK = {
  /** POST `{ token }`: the token that was handed out once, for the secret of a session. */
  session: '/session',
  /** POST `{ ask }` to `/call/<group>/<call>`. */
  call: '/call',
  /** POST the bytes of a dropped file to `/dropped?name=<name>`. */
  dropped: '/dropped',
  /** GET the events, one JSON text on each line, for as long as the window is there. */
  events: '/events',
} as const;
