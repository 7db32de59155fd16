// Sending a job to the RIP folder, and the proof from the files that were really written.
import type { Fault } from '../fault/result.ts';
import type { Job } from '../job/job.ts';
import type { SidePage } from '../job/nameJobFiles.ts';
import type { ProofReport } from '../proof/finding.ts';
import type { FolderEntry, FolderHandle, SendHandle } from './handles.ts';
import type { SendProgress } from './sendProgress.ts';

export interface ProveAsk {
  readonly job: Job;
  readonly folder: FolderHandle;
}

export interface SendAsk extends ProveAsk {
  /** Whether files of the same names may be replaced. */
  readonly replace?: boolean | undefined;
  /** Whether the sheets are sent though the proof finds faults in them. */
  readonly despiteFindings?: boolean | undefined;
}

/** What would be written, before anything is. */
export interface SendPlan {
  readonly folder: FolderEntry;
  readonly files: readonly PlannedFile[];
  /** Which page of which file will print each side. */
  readonly sides: readonly SidePage[];
}

export interface PlannedFile {
  readonly name: string;
  /** Whether a file of this name is in the folder already. */
  readonly exists: boolean;
}

/** How far a sending or a proving has come. */
export type SendState =
  | { readonly at: 'under-way'; readonly progress: SendProgress }
  | { readonly at: 'done'; readonly sent: SentSheets }
  /** Nothing half written was left behind. */
  | { readonly at: 'failed'; readonly fault: Fault }
  | { readonly at: 'cancelled' };

/** What came of it. */
export interface SentSheets {
  /** Held: the proof found faults, so nothing was left in the folder. Proved: what lay there already. */
  readonly is: 'sent' | 'held' | 'proved';
  readonly folder: FolderEntry;
  readonly sides: readonly SidePage[];
  /** What was found in the written files, read back by other means than those that wrote them. */
  readonly proof: ProofReport;
  /** One for each position of the arrangement. */
  readonly pictures: readonly ProvedPicture[];
  /** What the person should know of the art and the marks, in words. */
  readonly notices: readonly string[];
}

/** What was printed at one position, cut out: the front, and beside it the back, turned as its reader turns it. */
export interface ProvedPicture {
  /** From 1, as in the findings of the proof. */
  readonly position: number;
  /** Where the picture (PNG) is fetched from, as long as the host lives. */
  readonly url: string;
}

/** What the window hears while a sending or a proving is under way. */
export interface SendNews {
  readonly send: SendHandle;
  readonly state: SendState;
}
