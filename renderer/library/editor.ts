// The editor of the library: a store of its own for as long as it is open, saving what is in order as soon as it is taken.
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Fault } from '../../shared/fault/result.ts';
import type { Library } from '../../shared/library/library.ts';
import { stepBack, stepOn } from '../state/history.ts';
import type { DraftReading, LibraryDraft } from './draft/draft.ts';
import type { SelectedEntry } from './draft/entries.ts';
import { beginEditing, type Editing, lookAt, settle, walk } from './editing.ts';

interface EditorState {
  readonly editing: Editing;
  /** Why the last saving failed, if it did. */
  readonly unsaved: Fault | undefined;
}

export interface Editor {
  readonly state: StoreApi<EditorState>;
  /** Something is being typed. It is taken when its field is left. */
  readonly type: (draft: LibraryDraft) => void;
  /** Takes what was typed. */
  readonly settle: () => void;
  /** Takes a changed draft at once: a choice, or something added or taken away. */
  readonly take: (draft: LibraryDraft, chosen?: SelectedEntry, named?: string) => void;
  readonly lookAt: (chosen: SelectedEntry) => void;
  /** A reading of this printer is being written; none once it was added or given up. */
  readonly write: (printer: string, reading: DraftReading | undefined) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** `save` answers with what went wrong, if anything did. `asked` is the name of the printer to begin with. */
export function openEditor(
  library: Library,
  save: (library: Library) => Promise<Fault | undefined>,
  asked?: string,
): Editor {
  const state = createStore<EditorState>(() => ({
    editing: beginEditing(library, asked),
    unsaved: undefined,
  }));
  const now = () => state.getState().editing;
  const go = (editing: Editing) => {
    if (editing === now()) return;
    const { library: before } = now().kept;
    state.setState({ editing });
    const { library: after } = editing.kept;
    if (after !== before) void save(after).then((unsaved) => state.setState({ unsaved }));
  };
  return {
    state,
    type: (typed) => state.setState({ editing: { ...now(), typed } }),
    settle: () => go(settle(now())),
    take: (typed, chosen, named) => {
      const settled = settle({ ...settle(now()), typed }, named);
      go(chosen === undefined ? settled : lookAt(settled, chosen));
    },
    lookAt: (chosen) => go(lookAt(settle(now()), chosen)),
    write: (printer, reading) => {
      const { [printer]: _, ...others } = now().started;
      const started = reading === undefined ? others : { ...others, [printer]: reading };
      state.setState({ editing: { ...now(), started } });
    },
    undo: () => go(walk(now(), stepBack)),
    redo: () => go(walk(now(), stepOn)),
  };
}
