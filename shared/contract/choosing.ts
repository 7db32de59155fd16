// Choosing files and folders: with a dialog of the system where there is one, else with the window's own chooser.
import type { FileEntry, FolderEntry, FolderHandle } from './handles.ts';

/** What kind of file is looked for. */
export const FILE_KINDS = ['job', 'art', 'brief', 'library'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

/** What came of a dialog. `no-dialog`: this shell has none, so the window shows its own chooser. */
export type ChooserAnswer<T> =
  | { readonly kind: 'chosen'; readonly chosen: T }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'no-dialog' };

/** What a folder holds, for the window's own chooser. */
export interface Listing {
  readonly folder: FolderEntry;
  /** The folder that this one is in; none at the top. */
  readonly up?: FolderEntry | undefined;
  /** By name; hidden ones are left out. */
  readonly folders: readonly FolderEntry[];
  readonly files: readonly ListedFile[];
}

export interface ListedFile extends FileEntry {
  readonly bytes: number;
  /** When it was last changed, in UTC: `2026-03-01T14:30:00.000Z`. */
  readonly changed: string;
}

/** Which folder to list, and which files to show in it: none for a chooser of folders. */
export interface ListAsk {
  /** The person's own folder where none is given. */
  readonly folder?: FolderHandle | undefined;
  readonly show: FileKind | 'none';
}
