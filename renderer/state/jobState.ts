// The job on the table: its edits, their undoing, and gestures that show an edit before it is made.
import type { StateCreator } from 'zustand';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type Command, nameOfEdit } from '../../shared/job/commands.ts';
import { edit } from '../../shared/job/edit.ts';
import type { Job } from '../../shared/job/job.ts';
import { addStep, beginHistory, type History, stepBack, stepOn } from './history.ts';
import type { ViewState } from './viewState.ts';

export interface JobState {
  /** None while no job is open. */
  readonly history: History | undefined;
  /** The job as a gesture would leave it, while the gesture lasts. It is not in the history. */
  readonly previewed: Job | undefined;
  /** What the person was last told had gone wrong; gone once it is put away or the next edit works. */
  readonly fault: Fault | undefined;

  /** Lays this job on the table with a history of its own; the one before it is put away. */
  readonly beginJob: (job: Job) => void;
  /** Puts the job away. */
  readonly endJob: () => void;
  /** Does an edit to the job. A refusal changes nothing, is shown to the person, and is returned. */
  readonly perform: (command: Command) => Result<Job>;
  /** Shows the job as a gesture would leave it, outside history. */
  readonly preview: (job: Job) => void;
  /** Ends the gesture in one edit, made to the job as it was before the gesture. */
  readonly commit: (command: Command) => Result<Job>;
  /** Ends the gesture as if it had not begun. */
  readonly cancel: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly report: (fault: Fault) => void;
  readonly putFaultAway: () => void;
}

/** What is shown: the gesture's preview while there is one, else the job itself. */
export function shownJob(state: JobState): Job | undefined {
  return state.previewed ?? state.history?.present;
}

export const jobState: StateCreator<JobState & ViewState, [], [], JobState> = (set, get) => {
  /** Takes a changed history on, and lets go of chosen positions that it no longer has. */
  const settle = (history: History) => {
    const count = history.present.arrangement.length;
    const { selection, inHand } = get();
    set({
      history,
      previewed: undefined,
      fault: undefined,
      selection: selection.every((i) => i < count) ? selection : selection.filter((i) => i < count),
      inHand: inHand !== undefined && inHand < count ? inHand : undefined,
    });
  };

  const perform = (command: Command): Result<Job> => {
    const { history } = get();
    if (history === undefined) return refuse(noJob);
    const edited = edit(history.present, command);
    if (!edited.ok) {
      set({ previewed: undefined, fault: edited.fault });
      return edited;
    }
    settle(addStep(history, edited.value, nameOfEdit(command)));
    return ok(edited.value);
  };

  const walk = (step: (history: History) => History) => () => {
    const { history } = get();
    if (history !== undefined) settle(step(history));
  };

  return {
    history: undefined,
    previewed: undefined,
    fault: undefined,
    beginJob: (job) =>
      set({
        history: beginHistory(job),
        previewed: undefined,
        fault: undefined,
        selection: [],
        inHand: undefined,
        side: 1,
      }),
    endJob: () =>
      set({ history: undefined, previewed: undefined, fault: undefined, selection: [], inHand: undefined }),
    perform,
    preview: (job) => set({ previewed: job }),
    commit: perform,
    cancel: () => set({ previewed: undefined }),
    undo: walk(stepBack),
    redo: walk(stepOn),
    report: (fault) => set({ fault }),
    putFaultAway: () => set({ fault: undefined }),
  };
};

const noJob: Fault = {
  code: 'edit-refused',
  message: 'No job is open.',
  remedy: 'Begin a new job or open one first.',
};
