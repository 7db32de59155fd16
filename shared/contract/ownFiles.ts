// The program's own files, and what was found wrong with one when the program began.
import type { Fault } from '../fault/result.ts';

/** The files of which copies are kept, so that a damaged one can be taken back. */
export type CopiedFile = 'library' | 'settings';

export interface OwnFileTrouble {
  readonly fault: Fault;
  /** When the copy was written that can be taken back, as an ISO 8601 date and time; none where there is no copy. */
  readonly copyOf?: string;
}

/** The trouble with a file that the window can ask to be taken back. */
export interface FileTrouble extends OwnFileTrouble {
  readonly file: CopiedFile;
}
