// The dialogs that can lie over the window, and what each is told.
import type { FileKind } from '../../shared/contract/choosing.ts';
import type { FileEntry, FolderEntry } from '../../shared/contract/handles.ts';

/** A question with its answers in words; the first is what Escape means. */
export interface QuestionShown {
  readonly title: string;
  readonly says: string;
  readonly answers: readonly { readonly is: string; readonly label: string }[];
  /** Whether something would be lost. */
  readonly urgent?: boolean;
}

/** What the window's own chooser looks for. */
export type ChooserTarget =
  | { readonly for: 'files'; readonly kind: FileKind; readonly many: boolean }
  | { readonly for: 'new-file'; readonly name: string }
  | { readonly for: 'folder'; readonly title: string };

/** What was chosen; nothing when it was cancelled. */
export type ChosenFiles = readonly FileEntry[] | FolderEntry | undefined;

export type DialogShown =
  | { readonly is: 'settings' }
  /** `printer`: the name of the one to begin with. */
  | { readonly is: 'library'; readonly printer?: string | undefined }
  | { readonly is: 'keys' }
  | { readonly is: 'about' }
  | { readonly is: 'left-behind' }
  /** Own files of the program that could not be used as they lay. */
  | { readonly is: 'file-troubles' }
  | { readonly is: 'host-gone' }
  | { readonly is: 'question'; readonly question: QuestionShown; readonly answer: (is: string) => void }
  | {
      readonly is: 'chooser';
      readonly looking: ChooserTarget;
      readonly choose: (chosen: ChosenFiles) => void;
    };
