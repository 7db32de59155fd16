// The handles that this host has issued: the only way from the window to a path.
import { randomBytes } from 'node:crypto';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';

/** A handle that cannot be guessed. */
export function newHandle<H extends string>(): H {
  return randomBytes(16).toString('hex') as H;
}

/** Names paths for the window, for as long as the host lives. The same path keeps its handle. */
export class HandleTable<H extends string> {
  readonly #paths = new Map<H, string>();
  readonly #handles = new Map<string, H>();

  issue(path: string): H {
    const known = this.#handles.get(path);
    if (known !== undefined) return known;
    const handle = newHandle<H>();
    this.#paths.set(handle, path);
    this.#handles.set(path, handle);
    return handle;
  }

  /** What the handle stands for; refused (`handle-unknown`) where this host did not issue it. */
  resolve(handle: H): Result<string> {
    const path = this.#paths.get(handle);
    return path === undefined ? refuse(UNKNOWN_HANDLE) : ok(path);
  }

  /** Lets the handle stand for something else from now on: a file that has been given its place. */
  move(handle: H, path: string): void {
    const before = this.#paths.get(handle);
    if (before !== undefined) this.#handles.delete(before);
    this.#paths.set(handle, path);
    this.#handles.set(path, handle);
  }
}

/** What a handle is refused with that this host did not issue. */
export const UNKNOWN_HANDLE: Fault = {
  code: 'handle-unknown',
  message: 'This window asks for something that was not opened here.',
  remedy: 'Open it again; if that does not help, start the program again. What was kept comes back.',
};
