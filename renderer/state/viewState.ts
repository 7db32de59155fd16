// How the job is looked at: the stage, what is chosen, which side. Never part of its history.
import type { StateCreator } from 'zustand';

/** The stages of a job, in the order of work. */
export type Stage = 'art' | 'plan' | 'bench' | 'light-table' | 'run';

export const STAGES: readonly Stage[] = ['art', 'plan', 'bench', 'light-table', 'run'];

/** What fills the window: the start, the form of a brief, or the stages of the job. */
export type Screen = 'start' | 'brief' | 'job';

export interface ViewState {
  readonly screen: Screen;
  readonly stage: Stage;
  /** The chosen positions of the arrangement, counted from 0. */
  readonly selection: readonly number[];
  /** The position that is in hand on the light table or looked at in the proof. */
  readonly inHand: number | undefined;
  /** The side of the sheet that lies up. */
  readonly side: 1 | 2;

  readonly showScreen: (screen: Screen) => void;
  readonly goTo: (stage: Stage) => void;
  readonly select: (positions: readonly number[]) => void;
  readonly takeInHand: (position: number | undefined) => void;
  readonly showSide: (side: 1 | 2) => void;
}

export const viewState: StateCreator<ViewState> = (set) => ({
  screen: 'start',
  stage: 'art',
  selection: [],
  inHand: undefined,
  side: 1,
  showScreen: (screen) => set({ screen }),
  goTo: (stage) => set({ stage }),
  select: (positions) => set({ selection: [...new Set(positions)].sort((a, b) => a - b) }),
  takeInHand: (inHand) => set({ inHand }),
  showSide: (side) => set({ side }),
});
