// Where the window was and how large, remembered from one start to the next.
import { join } from 'node:path';
import { type BrowserWindow, screen } from 'electron';
import { z } from 'zod';
import { OwnFile, readBySchema } from '../disk/ownFile.ts';

const CALLED = 'place of the window';

const stored = z.object({
  x: z.int().optional().catch(undefined),
  y: z.int().optional().catch(undefined),
  width: z.int().min(800).catch(1280),
  height: z.int().min(600).catch(800),
  maximized: z.boolean().catch(false),
});

/** Where a window opens: its upper left corner where it is known, its size in pixels. */
export interface WindowPlace {
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly size: { readonly width: number; readonly height: number };
  readonly maximized: boolean;
}

export class WindowState {
  readonly #file: OwnFile<z.infer<typeof stored>>;

  constructor(home: string) {
    this.#file = new OwnFile(join(home, 'window.json'), {
      called: CALLED,
      read: readBySchema(CALLED, stored),
    });
  }

  /** The place to open at. A screen that is no longer there is forgotten, and no window is larger than all that are. */
  async read(): Promise<WindowPlace> {
    const kept = await this.#file.readOrEmpty();
    const { x, y, maximized } = kept;
    const areas = screen.getAllDisplays().map(({ workArea }) => workArea);
    const width = Math.min(kept.width, Math.max(...areas.map((area) => area.width)));
    const height = Math.min(kept.height, Math.max(...areas.map((area) => area.height)));
    const size = { width, height };
    const isSeen =
      x !== undefined &&
      y !== undefined &&
      areas.some((area) => {
        const across = Math.min(x + width, area.x + area.width) - Math.max(x, area.x);
        const along = Math.min(y + height, area.y + area.height) - Math.max(y, area.y);
        return across >= MIN_SEEN_PX && along >= MIN_SEEN_PX;
      });
    return { at: isSeen ? { x, y } : undefined, size, maximized };
  }

  /** Remembers where the window is now, as it would be when not maximised. */
  async remember(window: BrowserWindow): Promise<void> {
    const { x, y, width, height } = window.getNormalBounds();
    const maximized = window.isMaximized();
    await this.#file.change(() => ({ x, y, width, height, maximized }));
  }

  /** Waits until what was to be remembered is on the disk. */
  settled(): Promise<void> {
    return this.#file.settled();
  }
}

/** So much of the window must be on a screen, in pixels each way, for a person to get hold of it. */
const MIN_SEEN_PX = 100;
