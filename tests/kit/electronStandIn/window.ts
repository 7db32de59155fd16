// A window of the stand-in.
import { EventEmitter } from 'node:events';
import { Contents } from './contents.ts';
import type { StandIn } from './standIn.ts';

interface Bounds {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface WindowOptions extends Partial<Bounds> {
  readonly show?: boolean;
  readonly webPreferences?: Readonly<Record<string, unknown>> & { readonly preload?: string };
}

/** As `BrowserWindow`, as far as the desktop shell uses it. */
export class Window extends EventEmitter {
  readonly webContents: Contents;
  readonly bounds: Bounds;
  title = '';
  edited = false;
  visible: boolean;
  maximized = false;
  minimized = false;
  focused = 0;
  destroyed = false;

  constructor(
    readonly standIn: StandIn,
    readonly options: WindowOptions,
  ) {
    super();
    if (!standIn.ready) throw new Error('Cannot create BrowserWindow before app is ready');
    const { x = 100, y = 100, width = 800, height = 600 } = options;
    this.bounds = { x, y, width, height };
    this.visible = options.show !== false;
    this.webContents = new Contents(standIn, options.webPreferences?.preload);
    standIn.windows.push(this);
    standIn.app.emit('web-contents-created', {}, this.webContents);
  }

  async loadURL(url: string): Promise<void> {
    await this.webContents.load(url);
    this.emit('ready-to-show');
  }

  show(): void {
    this.visible = true;
  }

  /** Asks to be closed, as the cross at its corner does. */
  close(): void {
    let kept = false;
    this.emit('close', {
      preventDefault: () => {
        kept = true;
      },
    });
    if (kept || this.destroyed) return;
    this.destroyed = true;
    this.emit('closed');
    this.standIn.windowClosed(this);
  }

  isDestroyed(): boolean {
    return this.destroyed;
  }

  getNormalBounds(): Bounds {
    return { ...this.bounds };
  }

  isMaximized(): boolean {
    return this.maximized;
  }

  maximize(): void {
    this.maximized = true;
  }

  isMinimized(): boolean {
    return this.minimized;
  }

  restore(): void {
    this.minimized = false;
  }

  focus(): void {
    this.focused += 1;
  }

  setTitle(title: string): void {
    this.title = title;
  }

  setDocumentEdited(edited: boolean): void {
    this.edited = edited;
  }
}
