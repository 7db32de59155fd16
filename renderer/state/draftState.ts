// The brief that is being written: its draft, the art that was taken in for it, and what was answered about that art.
import type { StateCreator } from 'zustand';
import type { Art } from '../../shared/contract/art.ts';
import type { IntakeAnswers } from '../../shared/intake/proposePieces.ts';
import type { BriefDraft } from '../draft/briefDraft.ts';

export interface Drafting {
  /** Whether it changes the brief of the job that is open; else it begins a new one. */
  readonly changes: boolean;
  readonly draft: BriefDraft;
  /** All art that faces can be printed from. */
  readonly art: readonly Art[];
  /** The art that pieces were proposed from, and what was answered about it. */
  readonly proposedFrom: readonly Art[];
  readonly answers: IntakeAnswers;
}

export interface DraftState {
  readonly drafting: Drafting | undefined;
  readonly draftThis: (drafting: Drafting) => void;
  readonly putDraftAway: () => void;
}

export const draftState: StateCreator<DraftState> = (set) => ({
  drafting: undefined,
  draftThis: (drafting) => set({ drafting }),
  putDraftAway: () => set({ drafting: undefined }),
});
