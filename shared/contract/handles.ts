// Handles: how the window names files, folders and art that the host knows. A path never crosses; a handle that the
// host did not issue is refused.
import type { Face } from '../job/brief.ts';

/** A name that only the host can resolve. It holds until the host ends. */
type Handle<K extends string> = string & { readonly handleOf: K };

/** A job file: one that exists, or the place where one is to be saved. */
export type FileHandle = Handle<'file'>;
export type FolderHandle = Handle<'folder'>;
/** A PDF taken in as art. In the window, `Face.file` holds this and nothing else. */
export type ArtHandle = Handle<'art'>;
/** An autosaved job whose host ended without closing it. */
export type KeptHandle = Handle<'kept'>;
/** A sending, or a proving, under way or ended. */
export type SendHandle = Handle<'send'>;

/** A file as shown to people: its name, and the folder it is in. */
export interface FileEntry {
  readonly file: FileHandle;
  readonly name: string;
  /** The folder, in the words of this machine. For reading only. */
  readonly place: string;
}

/** A folder as shown to people. */
export interface FolderEntry {
  readonly folder: FolderHandle;
  readonly name: string;
  /** The whole path, in the words of this machine. For reading only. */
  readonly place: string;
}

/** The art of a face, as the window names it. */
export function artOf(face: Face): ArtHandle {
  return face.file as ArtHandle;
}

/** Where the bytes of the art are fetched from, ranges included. The same in every shell. */
export function artUrl(art: ArtHandle): string {
  return `/art/${art}`;
}
