// Who may speak to the loopback server: the token handed out once, and the secrets that it was exchanged for.
import { randomBytes, timingSafeEqual } from 'node:crypto';

/** A secret of a window: `secret` goes with its calls, `cookie` with what the page loads. */
export interface Session {
  readonly secret: string;
  readonly cookie: string;
}

/** One window at a time: a new one that comes with a good token takes the place of the one before. */
export class Sessions {
  #token: string | undefined;
  #session: Session | undefined;

  /** A fresh token; the one before is worth nothing from now on. */
  newToken(): string {
    this.#token = randomBytes(32).toString('base64url');
    return this.#token;
  }

  /** A session for the token, once; `undefined` for any other. */
  exchange(token: unknown): Session | undefined {
    if (typeof token !== 'string' || !same(token, this.#token)) return undefined;
    this.#token = undefined;
    this.#session = {
      secret: randomBytes(32).toString('base64url'),
      cookie: randomBytes(32).toString('base64url'),
    };
    return this.#session;
  }

  mayCall(secret: string | undefined): boolean {
    return same(secret, this.#session?.secret);
  }

  mayLoad(cookie: string | undefined): boolean {
    return same(cookie, this.#session?.cookie);
  }
}

/** Compares in a time that tells nothing of where they differ. */
function same(given: string | undefined, known: string | undefined): boolean {
  if (given === undefined || known === undefined) return false;
  const a = Buffer.from(given);
  const b = Buffer.from(known);
  return a.length === b.length && timingSafeEqual(a, b);
}
