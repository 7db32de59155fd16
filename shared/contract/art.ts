// Art as the window knows it: what was found in the file, and whether it still is what it was.
import type { Fault } from '../fault/result.ts';
import type { Head } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import type { Job } from '../job/job.ts';
import type { ArtPage } from '../pdf/art/artPage.ts';
import type { ArtHandle, FileEntry, FileHandle } from './handles.ts';

/** A PDF that has been taken in and looked through. */
export interface Art {
  readonly art: ArtHandle;
  /** The name of the file, without its folders. */
  readonly name: string;
  /** The folder it is in, in the words of this machine. For reading only. */
  readonly place: string;
  readonly bytes: number;
  /** Of the whole file, in hex. */
  readonly sha256: string;
  /** At least one; in the order of the file. */
  readonly pages: readonly ArtPage[];
  /** What the person should know of the file as a whole, in words. */
  readonly notices: readonly string[];
  /** Whether every page was tried out too; until then `art.look` answers once that is done, perhaps with a refusal. */
  readonly checked: boolean;
}

/** How the file of some art compares with what the job was laid out with. */
export type ArtState =
  | { readonly art: ArtHandle; readonly state: 'as-laid-out' }
  /** The file is there, but other than it was. */
  | { readonly art: ArtHandle; readonly state: 'changed'; readonly fault: Fault }
  /** The file is not there; the very same file lies at `found`. */
  | { readonly art: ArtHandle; readonly state: 'moved'; readonly found: FileEntry; readonly fault: Fault }
  | { readonly art: ArtHandle; readonly state: 'missing'; readonly fault: Fault };

/** The job whose art is compared, and its file: art that has moved is looked for beside it. */
export interface CheckArtAsk {
  readonly job: Job;
  readonly file?: FileHandle | undefined;
}

/** Which page is asked for its trim, and what the piece is. Lengths in pt. */
export interface TrimAsk {
  readonly art: ArtHandle;
  /** From 1. */
  readonly page: number;
  readonly trim: Size;
  readonly bleed: number;
  readonly rotate?: Head | undefined;
  readonly trimAt?: { readonly x: number; readonly y: number } | undefined;
}

/** What a dropped file turned out to be. */
export type Dropped =
  | { readonly is: 'art'; readonly art: Art }
  | { readonly is: 'job'; readonly file: FileEntry };
