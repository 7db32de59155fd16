// What each part of the form of a brief is given.
import type { Draft } from '../draft/briefDraft.ts';
import type { Wrongs } from './readDraft.ts';

export interface PartProps {
  readonly draft: Draft;
  readonly change: (changed: Partial<Draft>) => void;
  /** Empty until it was tried to lay the draft out. */
  readonly wrongs: Wrongs;
}
