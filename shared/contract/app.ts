// The shell around the window: what it is told at the start, and what it is shown of the window.
import type { ActionName } from './actions.ts';
import type { FileEntry } from './handles.ts';
import type { Recent, UnsavedJob } from './openJob.ts';
import type { FileTrouble } from './ownFiles.ts';
import type { Settings } from './settings.ts';

/** What the window needs to begin. */
export interface Beginning {
  readonly version: string;
  /** What the program runs on here, each part with its version: `Node.js 24.1.0`. */
  readonly runsOn: readonly string[];
  readonly shell: 'desktop' | 'browser';
  readonly machine: 'mac' | 'windows' | 'linux';
  readonly settings: Settings;
  /** What was wrong with the program's own files, if anything was. */
  readonly troubles: readonly FileTrouble[];
  readonly recents: readonly Recent[];
  /** Jobs left behind by a crash. */
  readonly kept: readonly UnsavedJob[];
  /** Jobs that the person asked to open before the window was there. */
  readonly asked: readonly FileEntry[];
}

/** What the window shows, so that the title bar and the native menu can say it too. */
export interface Shown {
  /** The title of the job; empty where none is open. */
  readonly title: string;
  readonly unsaved: boolean;
  /** Actions that cannot be done now. */
  readonly disabled: readonly ActionName[];
  /** Actions that are called otherwise now: `Undo Move piece`. */
  readonly labels: Readonly<Partial<Record<ActionName, string>>>;
}
