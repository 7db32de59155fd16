// Files and folders as the window is shown them: a handle, a name, and where they are.
import { homedir } from 'node:os';
import { basename, dirname, sep } from 'node:path';
import type {
  ArtHandle,
  FileEntry,
  FileHandle,
  FolderEntry,
  FolderHandle,
} from '../../shared/contract/handles.ts';
import { HandleTable } from './handleTable.ts';

/** Everything on the disk that the window may ask for. Only paths that the person or a job of theirs named get in. */
export class Entries {
  readonly files = new HandleTable<FileHandle>();
  readonly folders = new HandleTable<FolderHandle>();
  readonly art = new HandleTable<ArtHandle>();

  file(path: string): FileEntry {
    return { file: this.files.issue(path), name: basename(path), place: folderAndName(dirname(path)) };
  }

  folder(path: string): FolderEntry {
    return { folder: this.folders.issue(path), name: basename(path) || path, place: folderAndName(path) };
  }
}

/** A folder as it is said to people: the person's own folder is `~`. */
export function folderAndName(folder: string): string {
  const home = homedir();
  if (folder === home) return '~';
  return folder.startsWith(home + sep) ? `~${folder.slice(home.length)}` : folder;
}
