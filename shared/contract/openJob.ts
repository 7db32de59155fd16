// Jobs that are open, recent, or left behind by a host that ended without closing them.
import type { Job } from '../job/job.ts';
import type { ArtState } from './art.ts';
import type { FileEntry, FileHandle, KeptHandle } from './handles.ts';

/** A job as the window works on it: every `Face.file` in it is an `ArtHandle`. */
export interface OpenJob {
  readonly job: Job;
  /** The file it was opened from; none for a job that has not been saved yet. */
  readonly file?: FileEntry | undefined;
  /** Whether the job holds changes that its file does not. */
  readonly unsaved: boolean;
  /** One for each file of art. */
  readonly art: readonly ArtState[];
  /** How each file of art is called, by its handle. */
  readonly artNames: Readonly<Record<string, string>>;
  /** What the person should know, in words. */
  readonly notices: readonly string[];
}

export interface SaveAsk {
  readonly file: FileHandle;
  readonly job: Job;
  /**
   * Whether a file may be overwritten that is not the one this host last read or wrote there. Without it such a file
   * is refused: `file-exists` where this host never knew it, `file-changed` where somebody else has changed it.
   */
  readonly replace?: boolean | undefined;
}

/** A saved job: as given, but art that had no place of its own has been put beside the file. */
export interface Saved {
  readonly file: FileEntry;
  readonly job: Job;
}

/** Autosave: the job as it stands now, kept for after a crash. The newest replaces the one before. */
export interface KeepAsk {
  readonly job: Job;
  readonly file?: FileHandle | undefined;
}

/** A job that a host left behind unsaved. */
export interface UnsavedJob {
  readonly kept: KeptHandle;
  readonly title: string;
  /** The file it was opened from or last saved to. */
  readonly file?: FileEntry | undefined;
  /** When it was kept, in UTC. */
  readonly at: string;
}

/** A job that was opened or saved lately, the latest first. */
export interface Recent extends FileEntry {
  readonly title: string;
  /** In UTC. */
  readonly at: string;
  /** Whether the file is still there. */
  readonly there: boolean;
}
