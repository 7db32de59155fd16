// What lies around the job: the settings, the file it is saved in, the state of its art, and dialogs that want an answer.
import type { StateCreator } from 'zustand';
import type { Beginning } from '../../shared/contract/app.ts';
import type { ArtState } from '../../shared/contract/art.ts';
import type { ArtHandle, FileEntry } from '../../shared/contract/handles.ts';
import type { OpenJob, Recent, UnsavedJob } from '../../shared/contract/openJob.ts';
import type { CopiedFile, FileTrouble } from '../../shared/contract/ownFiles.ts';
import type { Settings } from '../../shared/contract/settings.ts';
import { USUAL_FILE_NAMES } from '../../shared/job/fileNames.ts';
import type { Job } from '../../shared/job/job.ts';
import type { DialogShown } from './dialogs.ts';
import { replacePresent } from './history.ts';
import type { JobState } from './jobState.ts';
import type { ViewState } from './viewState.ts';

export interface DeskState {
  /** What the host said at the start; none until it has answered. */
  readonly begun: Pick<Beginning, 'version' | 'runsOn' | 'shell' | 'machine'> | undefined;
  readonly settings: Settings;
  readonly recents: readonly Recent[];
  /** What was wrong with the program's own files, until it is put right. */
  readonly troubles: readonly FileTrouble[];
  /** Jobs left behind by a crash, until each is taken up or let go. */
  readonly kept: readonly UnsavedJob[];
  /** Where the job is saved; none for a job that never was. */
  readonly file: FileEntry | undefined;
  /** The job as its file holds it. */
  readonly saved: Job | undefined;
  /** How the file of each art is now, by its handle. */
  readonly artStates: Readonly<Record<ArtHandle, ArtState>>;
  readonly artNames: Readonly<Record<ArtHandle, string>>;
  /** What the person should know of the job as it was opened or laid out, in words. */
  readonly notices: readonly string[];
  /** The dialogs that are open, the one on top last. */
  readonly dialogs: readonly DialogShown[];
  /** The last thing that was done and cannot be seen otherwise, in words. */
  readonly said: string;

  /** Lays an opened job on the table, with what the host said of it. */
  readonly lay: (opened: OpenJob) => void;
  /** The job has been saved, as `job` says it is now. */
  readonly settleSaved: (file: FileEntry, job: Job) => void;
  readonly noteArt: (states: readonly ArtState[]) => void;
  readonly nameArt: (names: Readonly<Record<ArtHandle, string>>) => void;
  /** The file is in order again. */
  readonly settleTrouble: (file: CopiedFile) => void;
  readonly openDialog: (dialog: DialogShown) => void;
  readonly closeDialog: (dialog: DialogShown) => void;
  readonly say: (words: string) => void;
}

/** Whether the job holds changes that its file does not. */
export function isUnsaved({ history, saved }: JobState & DeskState): boolean {
  return history !== undefined && history.present !== saved;
}

export const deskState: StateCreator<JobState & ViewState & DeskState, [], [], DeskState> = (set, get) => ({
  begun: undefined,
  settings: { units: 'in', theme: 'as-system', fileNames: USUAL_FILE_NAMES, marks: true },
  recents: [],
  troubles: [],
  kept: [],
  file: undefined,
  saved: undefined,
  artStates: {},
  artNames: {},
  notices: [],
  dialogs: [],
  said: '',

  lay: ({ job, file, unsaved, art, artNames, notices }) => {
    // What is saved is known before the job lies there, so that it never counts as unsaved in between.
    set({
      file,
      saved: unsaved ? undefined : job,
      artStates: byArt(art),
      artNames,
      notices,
      screen: 'job',
    });
    get().beginJob(job);
  },
  settleSaved: (file, job) => {
    const { history } = get();
    if (history === undefined) return;
    // A job that came back unchanged stays the same object, so that undoing to it is again the saved state.
    const same = JSON.stringify(job) === JSON.stringify(history.present);
    const present = same ? history.present : job;
    set({ history: replacePresent(history, present), file, saved: present });
  },
  noteArt: (states) => set({ artStates: { ...get().artStates, ...byArt(states) } }),
  nameArt: (names) => set({ artNames: { ...get().artNames, ...names } }),
  settleTrouble: (file) => set({ troubles: get().troubles.filter((trouble) => trouble.file !== file) }),
  openDialog: (dialog) => set({ dialogs: [...get().dialogs, dialog] }),
  closeDialog: (dialog) => set({ dialogs: get().dialogs.filter((b) => b !== dialog) }),
  say: (said) => set({ said }),
});

function byArt(states: readonly ArtState[]): Readonly<Record<ArtHandle, ArtState>> {
  return Object.fromEntries(states.map((s) => [s.art, s]));
}
