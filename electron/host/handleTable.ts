// The handles that this host has issued: the only way from the window to a path.
import { randomBytes } from 'node:crypto';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';

/** Names things for the window, for as long as the host lives. The same thing keeps its handle. */
export class HandleTable<H extends string, T extends string = string> {
  readonly #things = new Map<H, T>();
  readonly #handles = new Map<T, H>();

  issue(thing: T): H {
    const known = this.#handles.get(thing);
    if (known !== undefined) return known;
    const handle = randomBytes(16).toString('hex') as H;
    this.#things.set(handle, thing);
    this.#handles.set(thing, handle);
    return handle;
  }

  /** What the handle stands for; refused (`handle-unknown`) where this host did not issue it. */
  resolve(handle: H): Result<T> {
    const thing = this.#things.get(handle);
    return thing === undefined ? refuse(unknown) : ok(thing);
  }

  /** Lets the handle stand for something else from now on: a file that has been given its place. */
  move(handle: H, thing: T): void {
    const before = this.#things.get(handle);
    if (before !== undefined) this.#handles.delete(before);
    this.#things.set(handle, thing);
    this.#handles.set(thing, handle);
  }
}

const unknown: Fault = {
  code: 'handle-unknown',
  message: 'This window asks for something that was not opened here.',
  remedy: 'Open it again; if that does not help, start the program again. What was kept comes back.',
};
