// What each part of the form of a brief is given.
import type { BriefDraft } from '../draft/briefDraft.ts';
import type { BriefErrors } from './readDraft.ts';

export interface PartProps {
  readonly draft: BriefDraft;
  readonly change: (changed: Partial<BriefDraft>) => void;
  /** Empty until it was tried to lay the draft out. */
  readonly wrongs: BriefErrors;
}
