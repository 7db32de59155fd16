// The log of the open job's runs, as the host last told it, and which half of the Run stage is looked at.
import type { StateCreator } from 'zustand';
import type { FileHandle } from '../../shared/contract/handles.ts';
import type { RunLog } from '../../shared/run/logText.ts';

/** The parts of the Run stage, in the order of work. */
export type RunPart = 'send' | 'count' | 'deliver';

export interface RunState {
  /** The log and the file of the job that it belongs to. */
  readonly runLog: { readonly file: FileHandle; readonly log: RunLog } | undefined;
  /** The part that was chosen; none as long as the runs themselves tell which it is. */
  readonly runPart: RunPart | undefined;
  /** Whether a run is being begun: its plan is worked out, which takes a moment. */
  readonly beginningRun: boolean;
  readonly noteRuns: (file: FileHandle, log: RunLog) => void;
  /** Without a part, the one that the runs tell. */
  readonly showRunPart: (part: RunPart | undefined) => void;
}

export const runState: StateCreator<RunState> = (set) => ({
  runLog: undefined,
  runPart: undefined,
  beginningRun: false,
  noteRuns: (file, log) => set({ runLog: { file, log } }),
  showRunPart: (runPart) => set({ runPart }),
});
