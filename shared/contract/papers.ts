// The papers of a job: run sheet, dummy, cutting order and open job ticket, written into a folder.
import type { Job } from '../job/job.ts';
import type { FileHandle, FolderEntry, FolderHandle } from './handles.ts';

export interface PapersAsk {
  readonly job: Job;
  readonly folder: FolderHandle;
  /** The job's own file, if it has one: the run sheet names it. */
  readonly file?: FileHandle | undefined;
  /** The paper that is loaded, as the library calls it. */
  readonly paper?: string | undefined;
}

/** What was written. */
export interface Papers {
  readonly folder: FolderEntry;
  /** Plain names, in the order they are needed. */
  readonly names: readonly string[];
  /** What the person should know, in words. */
  readonly notices: readonly string[];
}
