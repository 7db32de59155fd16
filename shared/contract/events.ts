// What the host tells the window without being asked.
import type { ActionName } from './actions.ts';
import type { ArtState } from './art.ts';
import type { FileEntry } from './handles.ts';
import type { RunNews } from './running.ts';
import type { SendNews } from './sending.ts';

export interface Events {
  /** An action was chosen in the native menu. */
  readonly action: { readonly action: ActionName };
  /** The person asked the system to open a job. */
  readonly 'open-job': { readonly file: FileEntry };
  /** The file of some art of the open job has changed, gone or come back. */
  readonly art: ArtState;
  readonly send: SendNews;
  readonly run: RunNews;
  /** The window is about to be closed: save or keep what is left, then call `app.close`. */
  readonly closing: null;
  /** The host has ended; nothing can be asked any more. What was kept comes back with the next start. */
  readonly 'host-gone': null;
}

export type EventName = keyof Events;

/** Every event by name, kept whole by the compiler. */
export const EVENTS: Readonly<Record<EventName, true>> = {
  action: true,
  'open-job': true,
  art: true,
  send: true,
  run: true,
  closing: true,
  'host-gone': true,
};
