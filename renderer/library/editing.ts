// Editing the library: what is typed, what of it is taken, what can be undone, and which entry is looked at.
import type { Library } from '../../shared/library/library.ts';
import { addStep, beginHistory, type History } from '../state/history.ts';
import { changeBetween } from './draft/changeBetween.ts';
import type { DraftReading, LibraryDraft } from './draft/draft.ts';
import { libraryDraftOf } from './draft/draftOf.ts';
import { entryOf, type SelectedEntry } from './draft/entries.ts';
import { type KeptLibrary, type LibraryErrors, takeDraft } from './draft/takeDraft.ts';

export interface Editing {
  /** What stands in the fields at this moment. */
  readonly typed: LibraryDraft;
  /** What stood in them each time a field was left or a choice was made. */
  readonly history: History<LibraryDraft>;
  /** What was wrong when the last field was left. */
  readonly wrongs: LibraryErrors;
  /** What is in order, and is to be saved. */
  readonly kept: KeptLibrary;
  readonly chosen: SelectedEntry;
  /** Readings that are being written and were not added yet, by the key of their printer. */
  readonly started: Readonly<Record<string, DraftReading>>;
}

/** Begins with the first printer, or with the one that is asked for by its name. */
export function beginEditing(library: Library, asked?: string): Editing {
  const draft = libraryDraftOf(library);
  const printer = draft.printers.find(({ name }) => name === asked) ?? draft.printers[0];
  return {
    typed: draft,
    history: beginHistory(draft),
    wrongs: {},
    kept: { library, draft },
    chosen: printer === undefined ? { is: 'rates' } : { is: 'printer', key: printer.key },
    started: {},
  };
}

/** Takes what was typed. `named` is the name of the edit, where what changed does not name it well. */
export function settle(editing: Editing, named?: string): Editing {
  const { typed, history } = editing;
  if (isSame(typed, history.present)) return editing;
  const { kept, shown, wrongs } = takeDraft(typed, editing.kept);
  const change = changeBetween(history.present, shown);
  if (change === undefined) return { ...editing, typed: history.present, wrongs, kept };
  return {
    ...editing,
    typed: shown,
    history: addStep(history, shown, named ?? change.words),
    wrongs,
    kept,
  };
}

/** Goes a step back or on in the history, and looks at what that changed. */
export function walk(
  editing: Editing,
  step: (history: History<LibraryDraft>) => History<LibraryDraft>,
): Editing {
  const settled = settle(editing);
  const history = step(settled.history);
  if (history === settled.history) return settled;
  const { kept, wrongs } = takeDraft(history.present, settled.kept);
  const change = changeBetween(settled.typed, history.present);
  return { ...settled, typed: history.present, history, kept, wrongs, chosen: change?.at ?? settled.chosen };
}

/** The same, looking at another entry; what is gone cannot be looked at. */
export function lookAt(editing: Editing, chosen: SelectedEntry): Editing {
  const there = chosen.is === 'rates' || entryOf(editing.typed, chosen) !== undefined;
  return there ? { ...editing, chosen } : editing;
}

function isSame(a: LibraryDraft, b: LibraryDraft): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
