// The library of printers and papers as the window has it written for others.
import type { FolderHandle } from './handles.ts';

/** Where a library is written: under a name that ends in `.json` or is given that ending. */
export interface ExportAsk {
  readonly folder: FolderHandle;
  readonly name: string;
  /** Whether a file of that name may be replaced. */
  readonly replace?: boolean | undefined;
}
