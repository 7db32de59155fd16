// Sending a job to the RIP folder, and the proof from the files that were really written.
import type { Fault } from '../fault/result.ts';
import type { Job } from '../job/job.ts';
import type { FolderEntry, FolderHandle, SendHandle } from './handles.ts';

export interface SendAsk {
  readonly job: Job;
  readonly folder: FolderHandle;
  /** Whether files of the same names may be overwritten. */
  readonly replace?: boolean | undefined;
}

/** What would be written, before anything is. */
export interface SendPlan {
  readonly folder: FolderEntry;
  readonly files: readonly PlannedFile[];
  /** Sheets to print, overs included. */
  readonly sheets: number;
}

export interface PlannedFile {
  readonly name: string;
  /** Whether a file of this name is in the folder already. */
  readonly exists: boolean;
  /** The sides of the sheet that it prints. */
  readonly sides: readonly (1 | 2)[];
}

/** How far a sending or a proving has come. */
export type SendState =
  | { readonly at: 'under-way'; readonly step: SendStep }
  | { readonly at: 'done'; readonly sent: Sent }
  /** Nothing half written was left behind. */
  | { readonly at: 'failed'; readonly fault: Fault }
  | { readonly at: 'cancelled' };

export interface SendStep {
  /** In words: `Writing side 1`. */
  readonly says: string;
  /** How much of the whole is done, 0 to 1. */
  readonly part: number;
}

export interface Sent {
  readonly folder: FolderEntry;
  readonly files: readonly SentFile[];
  readonly sheets: number;
  readonly proof: Proof;
  /** What the person should know of the art and the marks, in words. */
  readonly notices: readonly string[];
}

export interface SentFile {
  readonly name: string;
  /** The page that prints each side, from 1. */
  readonly pages: readonly { readonly side: 1 | 2; readonly page: number }[];
}

/** What was found in the written files, read back by other means than those that wrote them. */
export interface Proof {
  /** None: the sheet is right. */
  readonly findings: readonly ProofFinding[];
  /** One for each position of the arrangement, in its order. */
  readonly positions: readonly ProvedPosition[];
}

export interface ProofFinding {
  readonly message: string;
  readonly remedy: string;
  /** The position it is about, from 0; none where it is about the sheet. */
  readonly position?: number | undefined;
}

/** What was printed at one position, cut out and turned as its reader turns it. */
export interface ProvedPosition {
  readonly piece: string;
  /** Where the pictures (PNG) are fetched from; no `back` where nothing is printed behind. */
  readonly front?: string | undefined;
  readonly back?: string | undefined;
}

/** What the window hears while a sending is under way. */
export interface SendNews {
  readonly send: SendHandle;
  readonly state: SendState;
}
