// The printers and papers of the studio, as the host keeps them.
import type { StateCreator } from 'zustand';
import type { Library } from '../../shared/library/library.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';

export interface LibraryState {
  /** Until the host has told its own, the one that every studio begins with. */
  readonly library: Library;
}

export const libraryState: StateCreator<LibraryState> = () => ({ library: startingLibrary() });
