// The contract between the window and the host: every call, what it asks and what it answers. The host's handlers, the
// preload, the loopback client and the window's host are all derived from it.
import type { Result } from '../fault/result.ts';
import type { GangProposal } from '../gang/gangJob.ts';
import type { CoveredFace } from '../ink/coverage.ts';
import type { Brief } from '../job/brief.ts';
import type { Job } from '../job/job.ts';
import type { Library } from '../library/library.ts';
import type { FoundTrim } from '../pdf/art/findTrim.ts';
import type { RunLog } from '../run/logText.ts';
import type { PrintRun } from '../run/run.ts';
import type { Beginning, Shown } from './app.ts';
import type { Art, ArtState, CheckArtAsk, TrimAsk } from './art.ts';
import type { ChooserAnswer, FileKind, ListAsk, Listing } from './choosing.ts';
import type { GangAsk } from './ganging.ts';
import type {
  ArtHandle,
  FileEntry,
  FileHandle,
  FolderEntry,
  FolderHandle,
  KeptHandle,
  SendHandle,
} from './handles.ts';
import type { ExportAsk } from './library.ts';
import type { KeepAsk, OpenJob, Recent, SaveAsk, Saved } from './openJob.ts';
import type { Papers, PapersAsk } from './papers.ts';
import type { RecordAsk, SlipAsk } from './running.ts';
import type { ProveAsk, SendAsk, SendPlan, SendState } from './sending.ts';
import type { Settings, SettingsChange } from './settings.ts';

/** Each call takes one value or none, and answers with one. What a person can make go wrong is a `Result`. */
export interface Calls {
  readonly app: {
    /** The first call of a window. */
    begin(): Beginning;
    /** What the window shows now, for the title bar and the native menu. */
    show(shown: Shown): null;
    /** Closes the window: the answer to the event `closing`, once nothing is left to save. */
    close(): null;
  };
  readonly settings: {
    read(): Settings;
    /** Changes and remembers. */
    change(change: SettingsChange): Result<Settings>;
    /** Takes the last good copy back in place of a damaged file. */
    takeBack(): Result<Settings>;
  };
  readonly recents: {
    list(): readonly Recent[];
    forget(ask: { readonly file: FileHandle }): readonly Recent[];
  };
  readonly job: {
    /** Lays out a new job from a brief whose faces hold art handles. */
    lay(ask: { readonly brief: Brief }): Result<OpenJob>;
    /** Lays out a new job from a brief in a file. */
    layFile(ask: { readonly file: FileHandle }): Result<OpenJob>;
    /** Opens a job. Opening it again is how it is reverted. */
    open(ask: { readonly file: FileHandle }): Result<OpenJob>;
    /** Saves whole or not at all. To a new file it is saving as. */
    save(ask: SaveAsk): Result<Saved>;
    keep(ask: KeepAsk): Result<{ readonly at: string }>;
    /** Takes up a job that was left behind. */
    takeUp(ask: { readonly kept: KeptHandle }): Result<OpenJob>;
    /** Throws away a job that was left behind. */
    letGo(ask: { readonly kept: KeptHandle }): Result<null>;
    /** The job is done with: what was kept of it is thrown away. */
    close(): null;
  };
  readonly choose: {
    files(ask: { readonly kind: FileKind; readonly many: boolean }): ChooserAnswer<readonly FileEntry[]>;
    /** A place for a new file. Whether an existing one may be overwritten the dialog has asked. */
    newFile(ask: { readonly name: string }): ChooserAnswer<FileEntry>;
    folder(ask: { readonly title: string }): ChooserAnswer<FolderEntry>;
  };
  /** For the window's own chooser. Refused (`browsing-off`) where the shell has dialogs. */
  readonly files: {
    list(ask: ListAsk): Result<Listing>;
    /** A place for a new job file; `.turnlay` is added where it is missing. */
    newFile(ask: { readonly folder: FolderHandle; readonly name: string }): Result<FileEntry>;
    newFolder(ask: { readonly folder: FolderHandle; readonly name: string }): Result<FolderEntry>;
  };
  readonly art: {
    /** Answers as soon as the pages are known; whether they can be placed is looked through meanwhile. */
    takeIn(ask: { readonly file: FileHandle }): Result<Art>;
    /** Looks through art to the end, as its file is now. */
    look(ask: { readonly art: ArtHandle }): Result<Art>;
    /** How the art of a job is now, compared with what it was laid out with: one answer for each file. */
    check(ask: CheckArtAsk): Result<readonly ArtState[]>;
    findTrim(ask: TrimAsk): Result<FoundTrim>;
  };
  readonly send: {
    plan(ask: ProveAsk): Result<SendPlan>;
    /** Begins to send; the event `send` tells how it goes on. */
    start(ask: SendAsk): Result<{ readonly send: SendHandle }>;
    /** Begins to prove what lies in the folder already. */
    prove(ask: ProveAsk): Result<{ readonly send: SendHandle }>;
    state(ask: { readonly send: SendHandle }): Result<SendState>;
    cancel(ask: { readonly send: SendHandle }): Result<null>;
  };
  /** The printers and papers that jobs are planned with. */
  readonly library: {
    /** The one that is kept; one to begin with until it has been changed. */
    read(): Library;
    /** Keeps a changed library in place of the one before. */
    change(ask: { readonly library: Library }): Result<Library>;
    /** Takes the last good copy back in place of a damaged file. */
    takeBack(): Result<Library>;
    /** Reads a library from a file. It is not kept until it is changed to. */
    import(ask: { readonly file: FileHandle }): Result<Library>;
    /** Writes the kept library into a folder for others. */
    export(ask: ExportAsk): Result<FileEntry>;
  };
  readonly ink: {
    /** How much of every face is covered, in the order of the brief: measured when first asked for, then known. */
    coverage(ask: { readonly job: Job }): Result<readonly CoveredFace[]>;
  };
  readonly gang: {
    /** Plans a gang run, several designs of one size. Asked again, or stopped, it answers with its best plan so far. */
    solve(ask: GangAsk): Result<GangProposal>;
    stop(): null;
  };
  readonly ticket: {
    /** Writes run sheet, dummy, cutting order and open job ticket; those of an earlier writing are replaced. */
    write(ask: PapersAsk): Result<Papers>;
  };
  readonly run: {
    /** The log of a job's runs. The event `run` tells what others add to it. */
    read(ask: { readonly file: FileHandle }): Result<RunLog>;
    /** Adds an event. Once it is answered it is on the disk; what cannot have happened is refused. */
    record(ask: RecordAsk): Result<RunLog>;
    /** Writes the packing slip of a delivery beside the job's file. */
    packingSlip(ask: SlipAsk): Result<FileEntry>;
    /** Every run that was begun on this machine and whose log is still there, of all jobs. */
    all(): readonly PrintRun[];
  };
}

export type Group = keyof Calls;
export type CallOf<G extends Group> = keyof Calls[G] & string;

/** Every call by name, kept whole by the compiler: the preload and the loopback client are built from it. */
export const CALLS: { readonly [G in Group]: Readonly<Record<CallOf<G>, true>> } = {
  app: { begin: true, show: true, close: true },
  settings: { read: true, change: true, takeBack: true },
  recents: { list: true, forget: true },
  job: {
    lay: true,
    layFile: true,
    open: true,
    save: true,
    keep: true,
    takeUp: true,
    letGo: true,
    close: true,
  },
  choose: { files: true, newFile: true, folder: true },
  files: { list: true, newFile: true, newFolder: true },
  art: { takeIn: true, look: true, check: true, findTrim: true },
  send: { plan: true, start: true, prove: true, state: true, cancel: true },
  library: { read: true, change: true, takeBack: true, import: true, export: true },
  ink: { coverage: true },
  gang: { solve: true, stop: true },
  ticket: { write: true },
  run: { read: true, record: true, packingSlip: true, all: true },
};
