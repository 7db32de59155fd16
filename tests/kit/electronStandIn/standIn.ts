// A stand-in for Electron, as strict as the real one where the desktop shell could go wrong: the order of things before
// and after it is ready, handlers that exist once, messages that are copied, errors with Electron's words before them.
import { EventEmitter } from 'node:events';
import Module, { createRequire } from 'node:module';
import type { Contents, Frame } from './contents.ts';
import { Window, type WindowOptions } from './window.ts';

export interface InvokeEvent {
  readonly sender: Contents;
  readonly senderFrame: Frame | null;
}

type Handler = (event: InvokeEvent, ...args: unknown[]) => unknown;

export interface MenuItem {
  readonly id?: string;
  readonly label?: string;
  readonly role?: string;
  readonly type?: string;
  readonly enabled?: boolean;
  readonly accelerator?: string;
  readonly registerAccelerator?: boolean;
  readonly click?: () => void;
  readonly submenu?: readonly MenuItem[];
}

interface OpenAnswer {
  readonly canceled: boolean;
  readonly filePaths: readonly string[];
}

interface SaveAnswer {
  readonly canceled: boolean;
  readonly filePath: string;
}

/** What one session refuses or lets through. */
export interface Guards {
  permission?: (contents: unknown, permission: string, decide: (granted: boolean) => void) => void;
  check?: () => boolean;
  device?: () => boolean;
  request?: (
    details: { readonly url: string },
    decide: (answer: { readonly cancel?: boolean }) => void,
  ) => void;
}

export class StandIn {
  ready = false;
  quitted = false;
  /** Whether another instance has the lock already. */
  locked = false;
  sandboxed = false;
  /** Whether the program runs as a packed app, not from its sources. */
  packed = false;
  readonly setPaths = new Map<string, string>();
  readonly schemes: { readonly scheme: string; readonly privileges: Readonly<Record<string, boolean>> }[] =
    [];
  readonly protocols = new Map<string, (request: Request) => Promise<Response>>();
  readonly handlers = new Map<string, Handler>();
  /** The channels that a page has called. */
  readonly invoked = new Set<string>();
  readonly windows: Window[] = [];
  readonly guards: Guards = {};
  /** The paths of files that were really dropped. */
  readonly paths = new Map<File, string>();
  menu: readonly MenuItem[] = [];
  open: OpenAnswer = { canceled: true, filePaths: [] };
  save: SaveAnswer = { canceled: true, filePath: '' };
  readonly dialogs: { readonly kind: string; readonly options: Readonly<Record<string, unknown>> }[] = [];
  readonly errors: string[] = [];
  /** The schemes of links that the program says it opens. */
  readonly protocolClient: string[] = [];
  displays = [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }];
  readonly app = new EventEmitter();
  #quitting = false;
  #becomeReady: () => void = () => undefined;
  readonly #whenReady = new Promise<void>((resolve) => {
    this.#becomeReady = resolve;
  });

  /** Loads a built main program with this stand-in in Electron's place; ready only once it has been loaded. */
  run(main: string): void {
    const loader = Module as unknown as { _load: (name: string, ...rest: unknown[]) => unknown };
    const load = loader._load;
    loader._load = (name, ...rest) => (name === 'electron' ? this.module() : load(name, ...rest));
    try {
      const require = createRequire(import.meta.url);
      delete require.cache[main];
      require(main);
    } finally {
      loader._load = load;
    }
    if (this.quitted) return;
    this.ready = true;
    this.#becomeReady();
    this.app.emit('ready');
  }

  /** What a page of this address gets. */
  async fetch(url: string): Promise<Response> {
    const handler = this.protocols.get(new URL(url).protocol.slice(0, -1));
    if (handler === undefined) throw new Error(`ERR_UNKNOWN_URL_SCHEME loading '${url}'`);
    return handler(new Request(url));
  }

  windowClosed(window: Window): void {
    this.windows.splice(this.windows.indexOf(window), 1);
    if (this.windows.length === 0 && !this.#quitting) this.app.emit('window-all-closed');
  }

  /** Quits as Electron does: windows first, any of which may keep it open, then the program is asked. */
  quit(): void {
    this.#quitting = true;
    for (const window of [...this.windows]) window.close();
    this.#quitting = false;
    if (this.windows.length > 0 || this.quitted) return;
    let kept = false;
    this.app.emit('will-quit', {
      preventDefault: () => {
        kept = true;
      },
    });
    if (!kept) {
      this.quitted = true;
      this.app.emit('quit');
    }
  }

  /** What `require('electron')` gives the main program. */
  module(): Record<string, unknown> {
    const self = this;
    const beforeReady = (what: string) => {
      if (self.ready) throw new Error(`${what} must be called before app is ready`);
    };
    const afterReady = (what: string) => {
      if (!self.ready) throw new Error(`${what} cannot be used before the app is ready`);
    };
    const app = Object.assign(this.app, {
      isPackaged: self.packed,
      setName: () => undefined,
      setPath: (name: string, path: string) => self.setPaths.set(name, path),
      enableSandbox: () => {
        beforeReady('app.enableSandbox()');
        self.sandboxed = true;
      },
      requestSingleInstanceLock: () => !self.locked,
      setAsDefaultProtocolClient: (scheme: string) => self.protocolClient.push(scheme),
      whenReady: () => self.#whenReady,
      quit: () => self.quit(),
      exit: () => {
        self.quitted = true;
      },
    });
    return {
      app,
      BrowserWindow: class extends Window {
        constructor(options: WindowOptions) {
          super(self, options);
        }
      },
      protocol: {
        registerSchemesAsPrivileged: (schemes: StandIn['schemes']) => {
          beforeReady('protocol.registerSchemesAsPrivileged');
          if (self.schemes.length > 0) throw new Error('Schemes can be registered only once');
          self.schemes.push(...schemes);
        },
        handle: (scheme: string, handler: (request: Request) => Promise<Response>) => {
          afterReady('protocol');
          if (self.protocols.has(scheme)) throw new Error(`Failed to register protocol: ${scheme}`);
          self.protocols.set(scheme, handler);
        },
      },
      session: {
        get defaultSession() {
          afterReady('session');
          return {
            setPermissionRequestHandler: (handler: Guards['permission'] & object) => {
              self.guards.permission = handler;
            },
            setPermissionCheckHandler: (handler: () => boolean) => {
              self.guards.check = handler;
            },
            setDevicePermissionHandler: (handler: () => boolean) => {
              self.guards.device = handler;
            },
            webRequest: {
              onBeforeRequest: (listener: Guards['request'] & object) => {
                self.guards.request = listener;
              },
            },
          };
        },
      },
      ipcMain: {
        handle: (channel: string, handler: Handler) => {
          if (self.handlers.has(channel)) {
            throw new Error(`Attempted to register a second handler for '${channel}'`);
          }
          self.handlers.set(channel, handler);
        },
      },
      dialog: {
        showOpenDialog: async (_window: Window, options: Readonly<Record<string, unknown>>) => {
          self.dialogs.push({ kind: 'open', options });
          return self.open;
        },
        showSaveDialog: async (_window: Window, options: Readonly<Record<string, unknown>>) => {
          self.dialogs.push({ kind: 'save', options });
          return self.save;
        },
        showErrorBox: (_title: string, text: string) => self.errors.push(text),
      },
      Menu: {
        buildFromTemplate: (template: readonly MenuItem[]) => {
          checkMenu(template);
          return template;
        },
        setApplicationMenu: (menu: readonly MenuItem[]) => {
          self.menu = menu;
        },
      },
      screen: {
        getAllDisplays: () => {
          afterReady('The screen module');
          return self.displays;
        },
      },
    };
  }
}

function checkMenu(items: readonly MenuItem[]): void {
  for (const item of items) {
    if (item.label === undefined && item.role === undefined && item.type !== 'separator') {
      throw new TypeError('Invalid template for MenuItem: must have label, role or type');
    }
    checkMenu(item.submenu ?? []);
  }
}
