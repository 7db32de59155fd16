// Taking in a library from a file: in place of what there is, or beside it.
import type { Library } from '../../shared/library/library.ts';
import { ask } from '../desk/ask.ts';
import type { LibraryDraft } from './draft/draft.ts';
import { libraryDraftOf } from './draft/draftOf.ts';
import { freeName } from './draft/entries.ts';
import type { Editor } from './editor.ts';
import { newKey } from './withOneMore.ts';

/** Asks how the library is meant, and takes it in as one edit. Says whether it was taken. */
export async function takeIn(
  editor: Editor,
  { library, name }: { readonly library: Library; readonly name: string },
): Promise<boolean> {
  const answer = await ask({
    title: `Take in ${name}?`,
    says: `It holds ${count(library.printers.length, 'printer')} and ${count(library.papers.length, 'paper')}. Replacing takes its rates and units too. Either can be undone.`,
    answers: [
      { is: 'leave', label: 'Cancel' },
      { is: 'replace', label: 'Replace what there is' },
      { is: 'add', label: 'Add them to what there is' },
    ],
  });
  if (answer === 'leave') return false;
  const now = editor.state.getState().editing.typed;
  const taken = libraryDraftOf(library);
  editor.take(
    answer === 'add' ? addTo(now, taken) : { ...taken, ...apart(taken) },
    { is: 'rates' },
    `Import ${name}`,
  );
  return true;
}

/** The printers and papers added; names that are there already get a number. */
export function addTo(draft: LibraryDraft, added: LibraryDraft): LibraryDraft {
  const { printers, papers } = apart(added);
  return {
    ...draft,
    printers: printers.reduce(withFreeName, draft.printers),
    papers: papers.reduce(withFreeName, draft.papers),
  };
}

/** Printers and papers with keys of their own, so that none is taken for one that is there already. */
function apart({ printers, papers }: LibraryDraft): Pick<LibraryDraft, 'printers' | 'papers'> {
  return {
    printers: printers.map((printer) => ({ ...printer, key: newKey() })),
    papers: papers.map((paper) => ({ ...paper, key: newKey() })),
  };
}

function withFreeName<T extends { readonly name: string }>(entries: readonly T[], entry: T): readonly T[] {
  return [...entries, { ...entry, name: freeName(entry.name, entries) }];
}

function count(n: number, what: string): string {
  return n === 1 ? `one ${what}` : `${n} ${what}s`;
}
