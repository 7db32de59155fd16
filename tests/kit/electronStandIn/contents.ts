// A page of the stand-in: its preload runs shut off from Node, and it reaches the main program only by messages.
import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { overTheBridge, overTheWire } from './clone.ts';
import type { StandIn } from './standIn.ts';

/** A frame that sends messages. */
export interface Frame {
  readonly url: string;
  readonly parent: Frame | null;
}

/** As `WebContents`, as far as the desktop shell uses it. */
export class Contents extends EventEmitter {
  url = '';
  crashed = false;
  /** What the preload gave the page. */
  world: Record<string, unknown> = {};
  openHandler: ((details: { readonly url: string }) => { readonly action: string }) | undefined;
  #heard = new EventEmitter();

  constructor(
    readonly standIn: StandIn,
    readonly preload: string | undefined,
  ) {
    super();
    this.#heard.setMaxListeners(0);
  }

  setWindowOpenHandler(handler: (details: { readonly url: string }) => { readonly action: string }): void {
    this.openHandler = handler;
  }

  isCrashed(): boolean {
    return this.crashed;
  }

  /** A message to the page. */
  send(channel: string, ...args: unknown[]): void {
    const copies = args.map(overTheWire);
    this.emit('sent', channel, copies);
    setImmediate(() => this.#heard.emit(channel, {}, ...copies));
  }

  /** Loads a page: asked of the handler of its scheme, then the preload runs in a world of its own. */
  async load(url: string): Promise<void> {
    const response = await this.standIn.fetch(url);
    if (!response.ok) throw new Error(`ERR_FAILED (${response.status}) loading '${url}'`);
    this.crashed = false;
    this.url = url;
    this.world = {};
    this.#heard = new EventEmitter();
    if (this.preload !== undefined) this.#runPreload(readFileSync(this.preload, 'utf8'));
  }

  /** Calls a handler of the main program as a frame of this page would. */
  async invoke(channel: string, args: readonly unknown[], frame: Frame | null): Promise<unknown> {
    const handler = this.standIn.handlers.get(channel);
    if (handler === undefined) {
      throw new Error(
        `Error invoking remote method '${channel}': Error: No handler registered for '${channel}'`,
      );
    }
    const copies = args.map(overTheWire);
    this.standIn.invoked.add(channel);
    await new Promise(setImmediate);
    try {
      return overTheWire(await handler({ sender: this, senderFrame: frame }, ...copies));
    } catch (error) {
      throw new Error(`Error invoking remote method '${channel}': ${String(error)}`);
    }
  }

  /** Tries to go elsewhere, as a page does; whether it went. */
  navigate(url: string, isMainFrame = true): boolean {
    let refused = false;
    const event = {
      url,
      isMainFrame,
      preventDefault: () => {
        refused = true;
      },
    };
    this.emit('will-frame-navigate', event);
    if (isMainFrame) this.emit('will-navigate', event);
    return !refused;
  }

  /** A sandboxed preload: a CommonJS script that may require nothing but `electron`, and only its half of that. */
  #runPreload(script: string): void {
    const electron = {
      contextBridge: {
        exposeInMainWorld: (key: string, api: unknown) => {
          if (Object.hasOwn(this.world, key)) {
            throw new Error('Cannot bind an API on top of an existing property on the window object');
          }
          this.world[key] = overTheBridge(api);
        },
      },
      ipcRenderer: {
        invoke: (channel: string, ...args: unknown[]) =>
          this.invoke(channel, args, { url: this.url, parent: null }),
        on: (channel: string, listener: (...args: unknown[]) => void) => this.#heard.on(channel, listener),
        off: (channel: string, listener: (...args: unknown[]) => void) => this.#heard.off(channel, listener),
      },
      webUtils: {
        getPathForFile: (file: unknown) => {
          if (!(file instanceof File))
            throw new TypeError('getPathForFile expected to receive a File object');
          return this.standIn.paths.get(file) ?? '';
        },
      },
    };
    const require = (name: string) => {
      if (name !== 'electron') throw new Error(`module not found: ${name}`);
      return electron;
    };
    const module = { exports: {} };
    runInContext(
      `(function (require, module, exports) {${script}\n})`,
      createContext({ console, setTimeout, clearTimeout, URL }),
    )(require, module, module.exports);
  }
}
