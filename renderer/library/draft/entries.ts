// The entries of the library: adding a printer or a paper, copying and removing one.
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import type { DraftPaper, DraftPrinter, LibraryDraft } from './draft.ts';
import { draftPaperOf, draftPrinterOf } from './draftOf.ts';

/** What is looked at in the editor: the rates, or one printer or paper by its key. */
export type SelectedEntry =
  | { readonly is: 'rates' }
  | { readonly is: 'printer' | 'paper'; readonly key: string };

/** A draft that was changed, and what to look at in it. */
interface Entered {
  readonly draft: LibraryDraft;
  readonly chosen: SelectedEntry;
}

/** Adds a printer like the first of those that every studio begins with. `key` is one of its own. */
export function addPrinter(draft: LibraryDraft, key: string): Entered {
  const [model] = startingLibrary().printers;
  if (model === undefined) throw new Error('The starting library has no printer');
  const name = freeName('New printer', draft.printers);
  const added = { ...draftPrinterOf(model), key, name };
  return {
    draft: { ...draft, printers: [...draft.printers, added] },
    chosen: { is: 'printer', key },
  };
}

/** Adds a paper like the first of those that every studio begins with. `key` is one of its own. */
export function addPaper(draft: LibraryDraft, key: string): Entered {
  const [model] = startingLibrary().papers;
  if (model === undefined) throw new Error('The starting library has no paper');
  const name = freeName('New paper', draft.papers);
  const added = { ...draftPaperOf(model), key, name };
  return { draft: { ...draft, papers: [...draft.papers, added] }, chosen: { is: 'paper', key } };
}

/** Copies what is chosen and puts the copy behind it; the rates are not copied. A printer's readings stay its own. */
export function copyEntry(draft: LibraryDraft, chosen: SelectedEntry, key: string): Entered {
  switch (chosen.is) {
    case 'rates':
      return { draft, chosen };
    case 'printer': {
      const copied = (printer: DraftPrinter, name: string) => ({
        ...printer,
        key,
        name,
        ink: { ...printer.ink, fitted: undefined, readings: [] },
      });
      const printers = copyIn(draft.printers, chosen.key, copied);
      return { draft: { ...draft, printers }, chosen: { is: 'printer', key } };
    }
    case 'paper': {
      const papers = copyIn(draft.papers, chosen.key, (paper, name) => ({ ...paper, key, name }));
      return { draft: { ...draft, papers }, chosen: { is: 'paper', key } };
    }
  }
}

/** Removes what is chosen, and looks at the one that takes its place, or at the rates where none is left. */
export function removeEntry(draft: LibraryDraft, chosen: SelectedEntry): Entered {
  switch (chosen.is) {
    case 'rates':
      return { draft, chosen };
    case 'printer': {
      const { left, next } = removeFrom(draft.printers, chosen.key);
      return { draft: { ...draft, printers: left }, chosen: next ? { ...chosen, key: next } : RATES };
    }
    case 'paper': {
      const { left, next } = removeFrom(draft.papers, chosen.key);
      return { draft: { ...draft, papers: left }, chosen: next ? { ...chosen, key: next } : RATES };
    }
  }
}

const RATES: SelectedEntry = { is: 'rates' };

/** The entry that is chosen; none for the rates, and none once it is gone. */
export function entryOf(draft: LibraryDraft, chosen: SelectedEntry): DraftPrinter | DraftPaper | undefined {
  if (chosen.is === 'rates') return undefined;
  const entries = chosen.is === 'printer' ? draft.printers : draft.papers;
  return entries.find(({ key }) => key === chosen.key);
}

interface Named {
  readonly key: string;
  readonly name: string;
}

function copyIn<T extends Named>(
  entries: readonly T[],
  key: string,
  copied: (entry: T, name: string) => T,
): readonly T[] {
  return entries.flatMap((entry) =>
    entry.key === key ? [entry, copied(entry, freeName(`${entry.name} copy`, entries))] : [entry],
  );
}

function removeFrom<T extends Named>(
  entries: readonly T[],
  key: string,
): { readonly left: readonly T[]; readonly next: string | undefined } {
  const at = entries.findIndex((entry) => entry.key === key);
  const left = entries.filter((entry) => entry.key !== key);
  return { left, next: (left[at] ?? left.at(-1))?.key };
}

/** The name itself, or the name with the first number that makes it unlike the others. */
export function freeName(name: string, others: readonly { readonly name: string }[]): string {
  const taken = new Set(others.map((other) => other.name));
  for (let n = 1; ; n += 1) {
    const tried = n === 1 ? name : `${name} ${n}`;
    if (!taken.has(tried)) return tried;
  }
}
